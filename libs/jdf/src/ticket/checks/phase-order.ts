import type { Findings } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { type Phase, phasesOf, runsOf } from './look-up/phases.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * What cannot follow a status at once, of what PhaseTime records and of what ends a run. Waiting and Ready are no phases,
 * so what those lead to is possible without a gap too. The standard's text gives meanings and no table: derived from
 * them. That a press washes up in the run and goes on is common practice, no source.
 */
const CANNOT_FOLLOW: Readonly<Record<string, readonly string[]>> = {
  TestRunInProgress: ['Cleanup', 'Suspended', 'Completed'],
  Setup: ['TestRunInProgress', 'Spawned'],
  InProgress: ['TestRunInProgress', 'Spawned'],
  Cleanup: ['TestRunInProgress', 'Spawned', 'Suspended'],
  Stopped: ['TestRunInProgress', 'Spawned'],
  Suspended: ['Cleanup', 'Completed'],
};

/**
 * A phase that begins where the one before it ends (PhaseTime Start and End) has a Status that can follow, and so has the
 * run that ends with it (ProcessRun EndStatus). Where time lies in between, anything may have happened.
 */
export const phaseOrder: TicketCheck = {
  number: 12,
  name: 'order of phases',
  run({ nodes }, findings) {
    for (const { element } of nodes) {
      checkPhases(phasesOf(element), findings);
      checkEnds(runsOf(element), phasesOf(element), findings);
    }
  },
};

function checkPhases(worked: readonly Phase[], findings: Findings): void {
  const latest = new Map<string, Phase>();
  const told = new Set<Phase>();
  for (const phase of worked) {
    for (const who of phase.doneBy) {
      const before = latest.get(who);
      latest.set(who, phase);
      if (before === undefined || before.end !== phase.start || told.has(phase)) continue;
      if (canFollow(statusOf(before.el), statusOf(phase.el))) continue;
      told.add(phase);
      const message = `${phase.el.name} of Status="${statusOf(phase.el)}" follows one of "${statusOf(before.el)}" at once.`;
      findings.warning('JDF_STATUS', phase.el, message, hintAfter(statusOf(before.el)));
    }
  }
}

/** The phases that end with a run; of several that end together one that fits is enough. */
function checkEnds(runs: readonly Phase[], worked: readonly Phase[], findings: Findings): void {
  const byEnd = new Map<string, Phase[]>();
  for (const phase of worked) {
    const key = `${phase.end} ${phase.parts}`;
    const there = byEnd.get(key);
    if (there === undefined) byEnd.set(key, [phase]);
    else there.push(phase);
  }
  for (const run of runs) {
    const last = byEnd.get(`${run.end} ${run.parts}`) ?? [];
    const ended = attributeOf(run.el, 'EndStatus')?.trim() ?? '';
    if (last.length === 0 || last.some(({ el }) => canFollow(statusOf(el), ended))) continue;
    const before = statusOf(last[0]!.el);
    const message = `${run.el.name} of EndStatus="${ended}" ends with a phase of "${before}".`;
    findings.warning('JDF_STATUS', run.el, message, hintAfter(before));
  }
}

const statusOf = (audit: XmlElement): string => attributeOf(audit, 'Status')?.trim() ?? '';

const canFollow = (before: string, after: string): boolean =>
  !(Object.hasOwn(CANNOT_FOLLOW, before) && CANNOT_FOLLOW[before]!.includes(after));

const hintAfter = (before: string): string =>
  `Record what came in between, or correct the Status: ${CANNOT_FOLLOW[before]!.join(', ')} can't follow ${before}.`;
