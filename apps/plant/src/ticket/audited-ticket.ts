import {
  type Audit,
  type AuditLink,
  appendAudits,
  attributeOf,
  childElements,
  findById,
  firstChild,
  parseXml,
  replaceElements,
  withAttributes,
  writeXml,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { Fault, type Instant } from '#libs/kernel';
import { totalsWith } from '../device/progress.js';
import type { Entry, Run } from '../device/state.js';
import { usedOf, type Work } from './work.js';

const AGENT = 'Sidelay simulated device';

/**
 * The ticket as it goes back: PhaseTime for every phase, what was said, ResourceAudit for what was used, ProcessRun;
 * actual amounts in the links, the outputs Available, the node Completed or Aborted. Source: JDF 1.4 specification,
 * audits, and "which node may run, status and audit".
 */
export function auditedTicket(entry: Entry, deviceId: string, at: Instant): string {
  const parsed = parseXml(entry.ticket ?? '');
  if (!parsed.ok) throw new Fault('BROKEN', 'A ticket that was accepted can no longer be read.');
  const { work } = entry;
  const status = entry.endStatus ?? 'Completed';
  const counted = withAmounts(parsed.value, work, entry.run, status);
  const settled = withStatus(counted, work, status);
  const audits = auditsOf(entry, deviceId, status, at);
  return writeXml(appendAudits(settled, audits, nodeOf(settled, work)));
}

function nodeOf(doc: XmlDocument, work: Work): XmlElement {
  const node = work.nodeId === '' ? doc.root : findById(doc, work.nodeId);
  if (node === undefined) throw new Fault('BROKEN', 'The node that was executed is not in its ticket.');
  return node;
}

function withStatus(doc: XmlDocument, work: Work, status: 'Completed' | 'Aborted'): XmlDocument {
  const node = nodeOf(doc, work);
  return replaceElements(doc, new Map([[node, withAttributes(node, { Status: status })]]));
}

function withAmounts(
  doc: XmlDocument,
  work: Work,
  run: Run | null,
  status: 'Completed' | 'Aborted',
): XmlDocument {
  if (run === null) return doc;
  const totals = totalsWith(run, null);
  const changed = new Map<XmlElement, XmlElement>();
  const pool = firstChild(nodeOf(doc, work), 'ResourceLinkPool');
  for (const link of pool === undefined ? [] : childElements(pool)) {
    const rRef = attributeOf(link, 'rRef') ?? '';
    if (attributeOf(link, 'Usage') === 'Output') {
      if (work.outAmount !== null) changed.set(link, withAttributes(link, { ActualAmount: totals.good }));
      const resource = findById(doc, rRef);
      if (resource !== undefined && status === 'Completed') {
        changed.set(resource, withAttributes(resource, { Status: 'Available' }));
      }
      continue;
    }
    const input = work.inputs.find(({ resourceId }) => resourceId === rRef);
    if (input !== undefined && (input.fed || input.amount !== null)) {
      changed.set(link, withAttributes(link, { ActualAmount: usedOf(input, totals).actual }));
    }
  }
  return replaceElements(doc, changed);
}

function auditsOf(
  entry: Entry,
  deviceId: string,
  endStatus: 'Completed' | 'Aborted',
  at: Instant,
): readonly Audit[] {
  const { run, work } = entry;
  const common = { agentName: AGENT, queueEntryId: entry.id };
  if (run === null) {
    const stopped = { start: at, end: at, endStatus, durationS: 0, submissionTime: entry.submitted };
    return [{ kind: 'ProcessRun', timeStamp: at, ...common, ...stopped }];
  }
  const phases = run.phases.map(
    (phase): Audit => ({
      kind: 'PhaseTime',
      timeStamp: phase.end,
      ...common,
      start: phase.start,
      end: phase.end,
      status: phase.status,
      statusDetails: phase.statusDetails ?? undefined,
      devices: [{ deviceId }],
      links: outputLinks(work, phase),
    }),
  );
  const said = run.notices.map(
    (notice): Audit => ({
      kind: 'Notification',
      timeStamp: notice.time,
      ...common,
      class: notice.class,
      type: notice.class === 'Event' ? 'Event' : 'Error',
      comment: notice.text,
    }),
  );
  const end = run.phases.at(-1)?.end ?? at;
  return [
    ...phases,
    ...said,
    ...usedAudits(entry, run, common, end),
    {
      kind: 'ProcessRun',
      timeStamp: end,
      ...common,
      start: run.start,
      end,
      endStatus,
      durationS: workingS(run),
      submissionTime: entry.submitted,
      returnTime: at,
    },
  ];
}

/** Good and waste of one phase, at the first output. */
function outputLinks(
  work: Work,
  counts: { readonly good: number; readonly waste: number },
): readonly AuditLink[] | undefined {
  const output = work.outputs[0];
  if (output === undefined || work.outAmount === null) return undefined;
  return [
    {
      name: output.name,
      rRef: output.resourceId,
      usage: 'Output',
      partAmounts: [
        { actualAmount: counts.good, parts: [{ Condition: 'Good' }] },
        { actualAmount: counts.waste, parts: [{ Condition: 'Waste' }] },
      ],
    },
  ];
}

function usedAudits(
  entry: Entry,
  run: Run,
  common: { readonly agentName: string; readonly queueEntryId: string },
  at: Instant,
): readonly Audit[] {
  const totals = totalsWith(run, null);
  return entry.work.inputs.flatMap((input): Audit[] => {
    if (!input.fed && input.amount === null) return [];
    const used = usedOf(input, totals);
    const link: AuditLink = {
      name: input.name,
      rRef: input.resourceId,
      usage: 'Input',
      processUsage: input.processUsage ?? undefined,
      amount: input.amount ?? undefined,
      actualAmount: used.actual,
      partAmounts: [
        { actualAmount: used.actual - used.waste, parts: [{ Condition: 'Good' }] },
        { actualAmount: used.waste, parts: [{ Condition: 'Waste' }] },
      ],
    };
    return [{ kind: 'ResourceAudit', timeStamp: at, ...common, reason: 'ProcessResult', links: [link] }];
  });
}

/** Net time: phases in which the machine neither stood nor was taken by another job. */
function workingS(run: Run): number {
  return run.phases
    .filter(({ status }) => status !== 'Stopped' && status !== 'Suspended')
    .reduce((sum, { start, end }) => sum + (end - start) / 1000, 0);
}
