import { auditStamp, element, formatDuration, type XmlElement } from '#libs/jdf';
import { type Instant, isoTime } from '#libs/kernel';
import type { NodeStatus, Phase, TicketFile, Use } from '../../state/ticket.js';
import { usedAmount } from '../build/amounts.js';
import { inkOf } from '../build/inks.js';
import { shortText } from '../build/values.js';
import type { PartKeys } from '../process-type.js';
import type { NodeDraft } from './describe-node.js';
import { amountPool, type IndexedLink } from './write-link.js';

export interface Agent {
  readonly name: string;
  readonly version?: string;
}

interface TimedAudit {
  readonly at: Instant;
  readonly audit: XmlElement;
}

/** Phases that the standard's PhaseTime can name. */
const PHASES: readonly NodeStatus[] = ['Setup', 'InProgress', 'Cleanup', 'Suspended', 'Stopped'];
/** Phases that count as work: breaks and stops do not. */
const WORKING: readonly NodeStatus[] = ['Setup', 'InProgress', 'Cleanup'];

/** What happened to a step, in the order of time: created, its phases, what it used, its run. */
export function stepAudits(
  file: TicketFile,
  node: NodeDraft,
  idOf: (key: string) => string,
  agent: Agent,
  now: Instant,
): readonly XmlElement[] {
  const stamp = (at: Instant) => auditStamp({ at, agent });
  const { step } = node;
  const phases = file.phases
    .filter((phase) => phase.stepId === step.id && PHASES.includes(phase.status))
    .toSorted((a, b) => a.start - b.start);
  const output = node.links.find((link) => link.usage === 'Output' && link.resource.key.startsWith('made-'));
  const audits: TimedAudit[] = [
    { at: file.ticket.createdAt, audit: element('Created', stamp(file.ticket.createdAt)) },
    ...phases.map((phase) => {
      const at = phase.end ?? Math.max(now, phase.start);
      return { at, audit: phaseTime(phase, stamp(at), output, idOf) };
    }),
  ];
  const last = step.end ?? phases.at(-1)?.end ?? now;
  for (const use of file.uses.filter((row) => row.stepId === step.id && row.actual > 0)) {
    const audit = resourceAudit(use, node, stamp(last), idOf);
    if (audit !== null) audits.push({ at: last, audit });
  }
  if (step.end !== null && (step.status === 'Completed' || step.status === 'Aborted')) {
    const run = element('ProcessRun', {
      ...stamp(step.end),
      Start: isoTime(step.start ?? step.end),
      End: isoTime(step.end),
      EndStatus: step.status,
      Duration: formatDuration(workedS(phases, step.end)),
    });
    audits.push({ at: step.end, audit: run });
  }
  return audits.toSorted((a, b) => a.at - b.at).map(({ audit }) => audit);
}

function phaseTime(
  phase: Phase,
  stamp: Record<string, string | undefined>,
  output: IndexedLink | undefined,
  idOf: (key: string) => string,
): XmlElement {
  const counted = phase.good > 0 || phase.waste > 0;
  const amounts =
    output === undefined || output.resource.name === 'RunList' || !counted
      ? []
      : [
          element(
            `${output.resource.name}Link`,
            { rRef: idOf(output.resource.key), Usage: 'Output' },
            amountPool([{ good: phase.good, waste: phase.waste }]),
          ),
        ];
  return element(
    'PhaseTime',
    {
      ...stamp,
      Start: isoTime(phase.start),
      End: phase.end === null ? undefined : isoTime(phase.end),
      Status: phase.status,
      StatusDetails: phase.statusDetails === null ? undefined : shortText(phase.statusDetails),
    },
    [element('Device', { DeviceID: phase.deviceId }), ...amounts],
  );
}

/** First what was really used, then what was planned, as the standard orders the two links. */
function resourceAudit(
  use: Use,
  node: NodeDraft,
  stamp: Record<string, string | undefined>,
  idOf: (key: string) => string,
): XmlElement | null {
  const link = linkOfUse(use, node);
  if (link === undefined) return null;
  const kg = use.unit === 'kg';
  const part: PartKeys = kg ? { Separation: inkOf(use.item) } : {};
  const { good, waste, planned } = usedAmount(use);
  const name = `${link.resource.name}Link`;
  const attributes = { rRef: idOf(link.resource.key), Usage: 'Input' };
  const parts = kg ? [element('Part', part)] : [];
  return element('ResourceAudit', { ...stamp, Reason: 'ProcessResult' }, [
    element(name, attributes, [...amountPool([{ good, waste }], part), ...parts]),
    element(name, { ...attributes, Amount: planned }, parts),
  ]);
}

/** The link to what the books call `use.item`: ink by separation, paper and plates by their kind of Media. */
function linkOfUse(use: Use, node: NodeDraft): IndexedLink | undefined {
  if (use.unit === 'kg') return node.links.find(({ resource }) => resource.name === 'Ink');
  const kind = use.unit === 'plates' ? 'Plate' : 'Paper';
  const media = node.links.filter(
    ({ resource }) => resource.name === 'Media' && resource.attributes?.MediaType === kind,
  );
  return media.find(({ resource }) => resource.attributes?.ProductID === use.item) ?? media[0];
}

/** Seconds of work in the phases; an open one ends with the step. */
function workedS(phases: readonly Phase[], end: Instant): number {
  return phases
    .filter((phase) => WORKING.includes(phase.status))
    .reduce((sum, phase) => sum + Math.max(0, (phase.end ?? end) - phase.start) / 1000, 0);
}
