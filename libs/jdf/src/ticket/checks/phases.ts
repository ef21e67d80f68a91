import { type Findings, parseDateTime } from '../../codec/index.js';
import { partsNamed } from '../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** What no phase can follow: the standard reference, section 2.1. Other states may have come in between unrecorded. */
const FINAL: ReadonlySet<string> = new Set(['Aborted', 'Completed']);

interface Phase {
  readonly el: XmlElement;
  readonly start: number;
  readonly end: number;
}

/**
 * Standard reference, section 9, checks 12 and 15: a device does one thing at a time with a part of a node; a run lasts
 * as long as its phases; nothing is done after the end; and a record of use tells first of what is new.
 */
export const phases: TicketCheck = {
  number: 15,
  name: 'phases of work',
  run({ nodes }, findings) {
    for (const { element } of nodes) {
      const audits = childElements(element, 'AuditPool').flatMap((pool) => childElements(pool));
      const corrected = new Set(audits.flatMap((audit) => attributeOf(audit, 'refID')?.trim() ?? []));
      const valid = audits.filter((audit) => !corrected.has(attributeOf(audit, 'ID') ?? ''));
      const worked = valid.filter(({ local }) => local === 'PhaseTime').flatMap(phaseOf);
      checkOverlap(worked, findings);
      const runs = valid.filter(({ local }) => local === 'ProcessRun').flatMap(phaseOf);
      checkRuns(runs, worked, findings);
      for (const audit of valid) if (audit.local === 'ResourceAudit') checkResource(audit, findings);
    }
  },
};

function phaseOf(el: XmlElement): Phase[] {
  const start = parseDateTime(attributeOf(el, 'Start') ?? '');
  // A phase without an end is the one going on.
  const end = parseDateTime(attributeOf(el, 'End') ?? '') ?? Number.POSITIVE_INFINITY;
  return start === undefined ? [] : [{ el, start, end }];
}

function checkOverlap(worked: readonly Phase[], findings: Findings): void {
  const latest = new Map<string, Phase>();
  for (const phase of byStart(worked)) {
    for (const who of doneBy(phase.el)) {
      const before = latest.get(who);
      if (before !== undefined && phase.start < before.end) {
        const message = `${phase.el.name} begins before the one before it on this device has ended.`;
        findings.warning('JDF_AUDIT', phase.el, message, 'Let each phase begin where the last one ends.');
      }
      if (before === undefined || before.end <= phase.end) latest.set(who, phase);
    }
  }
}

/** Each device with each part; several devices of one phase work together. */
function doneBy(el: XmlElement): string[] {
  const devices = childElements(el, 'Device').map((device) => attributeOf(device, 'DeviceID') ?? '');
  const parts = partsNamed(el).map((part) => JSON.stringify(Object.entries(part).sort()));
  const [whom, what] = [devices.length > 0 ? devices : [''], parts.length > 0 ? parts : ['']];
  return [...new Set(whom.flatMap((device) => what.map((part) => `${device} ${part}`)))];
}

/** A phase belongs to the runs of its parts, or else to those of the whole node. */
function checkRuns(runs: readonly Phase[], worked: readonly Phase[], findings: Findings): void {
  const runsOf = grouped(byStart(runs), ({ el }) => partsOfAudit(el));
  const phasesOf = grouped(byStart(worked), ({ el }) => {
    const own = partsOfAudit(el);
    return runsOf.has(own) ? own : '';
  });
  for (const [parts, those] of phasesOf) compare(runsOf.get(parts) ?? [], those, findings);
}

/** A run lasts as long as each phase that it shares time with, and none begins after the run that ended the work. */
function compare(runs: readonly Phase[], worked: readonly Phase[], findings: Findings): void {
  const told = new Set<Phase>();
  let [next, ended] = [0, false];
  for (const { el, start, end } of worked) {
    for (; next < runs.length && runs[next]!.start <= start; next++) ended ||= isFinal(runs[next]!.el);
    const [run, later] = [runs[next - 1], runs[next]];
    const inside = run !== undefined && start < run.end;
    const faulty = inside && end > run.end ? run : !inside && later && end > later.start ? later : undefined;
    if (faulty !== undefined && !told.has(faulty)) {
      told.add(faulty);
      const message = `${faulty.el.name} does not last as long as the phases in it.`;
      findings.warning('JDF_AUDIT', faulty.el, message, 'Start with the first phase and end with the last.');
    }
    if (!ended || inside) continue;
    const message = `${el.name} begins after the work has ended.`;
    findings.warning('JDF_STATUS', el, message, 'Ended work begins again only by a change of plan.');
  }
}

function grouped(those: readonly Phase[], by: (phase: Phase) => string): ReadonlyMap<string, Phase[]> {
  const groups = new Map<string, Phase[]>();
  for (const phase of those) {
    const group = groups.get(by(phase));
    if (group === undefined) groups.set(by(phase), [phase]);
    else group.push(phase);
  }
  return groups;
}

const byStart = (those: readonly Phase[]): Phase[] =>
  [...those].sort((one, other) => one.start - other.start);

function partsOfAudit(audit: XmlElement): string {
  return partsNamed(audit)
    .map((part) => JSON.stringify(Object.entries(part).sort()))
    .sort()
    .join(' ');
}

const isFinal = (run: XmlElement): boolean => FINAL.has(attributeOf(run, 'EndStatus')?.trim() ?? '');

/** Its first link is what was really used or made, the second what was planned: only the first has an actual amount. */
function checkResource(audit: XmlElement, findings: Findings): void {
  const [first, second] = childElements(audit).filter(({ local }) => local.endsWith('Link'));
  if (first === undefined || second === undefined) return;
  const isActual = (link: XmlElement) => attributeOf(link, 'ActualAmount') !== undefined;
  if (isActual(first) || !isActual(second)) return;
  const message = `${audit.name} tells of the old resource before the new one.`;
  findings.warning('JDF_AUDIT', audit, message, 'Put the link with ActualAmount first.');
}
