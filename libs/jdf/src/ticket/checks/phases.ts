import type { Findings } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { type Phase, phasesOf, runsOf } from './look-up/phases.js';
import type { TicketCheck } from './ticket-check.js';

/** What no phase can follow (JDF/@Status). Other states may have come in between unrecorded. */
const FINAL: ReadonlySet<string> = new Set(['Aborted', 'Completed']);

/**
 * A device does one thing at a time with a part of a node (PhaseTime Start and End, Device, Part); a run lasts as long as
 * its phases (ProcessRun Start and End); and nothing is done after the end (ProcessRun EndStatus).
 */
export const phases: TicketCheck = {
  number: 15,
  name: 'phases of work',
  run({ nodes }, findings) {
    for (const { element } of nodes) {
      checkOverlap(phasesOf(element), findings);
      checkRuns(runsOf(element), phasesOf(element), findings);
    }
  },
};

function checkOverlap(worked: readonly Phase[], findings: Findings): void {
  const latest = new Map<string, Phase>();
  for (const phase of worked) {
    for (const who of phase.doneBy) {
      const before = latest.get(who);
      if (before !== undefined && phase.start < before.end) {
        const message = `${phase.el.name} begins before the one before it on this device has ended.`;
        findings.warning('JDF_AUDIT', phase.el, message, 'Let each phase begin where the last one ends.');
      }
      if (before === undefined || before.end <= phase.end) latest.set(who, phase);
    }
  }
}

/** A phase belongs to the runs of its parts, or else to those of the whole node. */
function checkRuns(runs: readonly Phase[], worked: readonly Phase[], findings: Findings): void {
  const runsByParts = grouped(runs, ({ parts }) => parts);
  const phasesByParts = grouped(worked, ({ parts }) => (runsByParts.has(parts) ? parts : ''));
  for (const [parts, those] of phasesByParts) compare(runsByParts.get(parts) ?? [], those, findings);
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

const isFinal = (run: XmlElement): boolean => FINAL.has(attributeOf(run, 'EndStatus')?.trim() ?? '');
