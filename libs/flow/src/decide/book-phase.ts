import type { Instant } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import type { NodeStatus, Phase, Source } from '../state/ticket.js';
import { type FileDraft, samePhase } from './draft.js';
import { correctEnded, endStep } from './settle.js';

/** One phase as a device or a person reports it. */
export interface PhaseReport {
  readonly stepId: string;
  readonly deviceId: string;
  /** When the phase began: with device and step the key of the phase. */
  readonly start: Instant;
  /** When this was said, in the sayer's own time; the end of the work where the status is final. */
  readonly at: Instant;
  readonly status: NodeStatus;
  readonly statusDetails: string | null;
  /** Counts of the phase; null when the report has none. */
  readonly good: number | null;
  readonly waste: number | null;
  /** Counts since the job began, of a device that does not count by phase. */
  readonly totalGood?: number | null;
  readonly totalWaste?: number | null;
  /** QueueEntryID in the device's own queue, where it says so. */
  readonly deviceEntryId?: string | null;
  readonly source: Source;
}

/**
 * Books a phase. Repeats change nothing: the key is (device, step, start), and counts only ever grow within a phase. A
 * report that comes late (its phase began before one that is known) corrects the amounts and moves no status back.
 */
export function bookPhase(draft: FileDraft, report: PhaseReport): void {
  const step = draft.step(report.stepId);
  const known = ownPhases(draft, report).find((phase) => samePhase(phase, report));
  if (report.status === 'Completed' || report.status === 'Aborted') {
    bookEnd(draft, report, known);
    return;
  }
  if (known !== undefined) {
    countInto(draft, known, report);
    draft.setPhase(known, { statusDetails: report.statusDetails ?? known.statusDetails });
  } else {
    insertPhase(draft, report, report.status, isFinal(nodeStatus, step.status) ? step.end : null);
  }
  recount(draft, report.stepId);
  followLatest(draft, report.stepId, report.deviceEntryId ?? null);
}

function ownPhases(draft: FileDraft, report: PhaseReport): readonly Phase[] {
  return draft.phases.filter((phase) => phase.deviceId === report.deviceId && phase.stepId === report.stepId);
}

/** The last word on a step. The counts go into the phase named, else into the last one, else into one of their own. */
function bookEnd(draft: FileDraft, report: PhaseReport, known: Phase | undefined): void {
  const { status } = draft.step(report.stepId);
  const latest = ownPhases(draft, report).at(-1);
  const into = known ?? latest;
  if (into !== undefined)
    countInto(draft, into, {
      ...report,
      good: known ? report.good : null,
      waste: known ? report.waste : null,
    });
  else insertPhase(draft, report, 'InProgress', report.at);
  const end = Math.max(report.at, latest?.start ?? 0);
  if (latest !== undefined && latest.end === null) draft.setPhase(latest, { end });
  recount(draft, report.stepId);
  if (!isFinal(nodeStatus, status))
    endStep(draft, report.stepId, report.status as 'Completed' | 'Aborted', end);
}

/** A new phase ends the one before it: between the phases of one device on one step there is no gap. */
function insertPhase(
  draft: FileDraft,
  report: PhaseReport,
  status: NodeStatus,
  openEnd: Instant | null,
): void {
  const own = ownPhases(draft, report);
  const before = own.filter((phase) => phase.start < report.start).at(-1);
  const next = own.find((phase) => phase.start > report.start);
  if (before !== undefined && (before.end === null || before.end > report.start))
    draft.setPhase(before, { end: report.start });
  const counts = countsOf(draft, report);
  draft.addPhase({
    ticketId: draft.ticket.id,
    stepId: report.stepId,
    deviceId: report.deviceId,
    start: report.start,
    end: next?.start ?? openEnd,
    status,
    statusDetails: report.statusDetails,
    good: counts.good,
    waste: counts.waste,
    source: report.source,
  });
}

/** Counts of this phase; where only totals are given, what the totals have beyond the other phases. */
function countsOf(draft: FileDraft, report: PhaseReport): { good: number; waste: number } {
  const others = ownPhases(draft, report).filter((phase) => phase.start !== report.start);
  const rest = (total: number | null | undefined, key: 'good' | 'waste'): number =>
    total == null ? 0 : Math.max(0, total - others.reduce((sum, phase) => sum + phase[key], 0));
  return {
    good: report.good ?? rest(report.totalGood, 'good'),
    waste: report.waste ?? rest(report.totalWaste, 'waste'),
  };
}

function countInto(draft: FileDraft, known: Phase, report: PhaseReport): void {
  const counts = countsOf(draft, { ...report, start: known.start });
  draft.setPhase(known, {
    good: Math.max(known.good, counts.good),
    waste: Math.max(known.waste, counts.waste),
  });
}

/** Step counts are the sums of its phases, so a repeated or late report can never count a sheet twice. */
function recount(draft: FileDraft, stepId: string): void {
  const step = draft.step(stepId);
  const phases = draft.phases.filter((phase) => phase.stepId === stepId);
  const good = phases.reduce((sum, phase) => sum + phase.good, 0);
  const waste = phases.reduce((sum, phase) => sum + phase.waste, 0);
  const start = phases[0]?.start ?? step.start;
  draft.setStep(stepId, { start });
  // Nothing was ever counted: what was assumed at the end stands.
  if (good === 0 && waste === 0) return;
  if (good === step.good && waste === step.waste) return;
  draft.setStep(stepId, { good, waste });
  if (isFinal(nodeStatus, step.status)) correctEnded(draft, stepId);
  draft.event(
    'step.counted',
    { good, waste, unit: step.unit, planned: step.outAmount },
    { stepId, deviceId: step.deviceId },
  );
}

/** The step has the status of its latest phase, its start is that of the first. */
function followLatest(draft: FileDraft, stepId: string, deviceEntryId: string | null): void {
  const step = draft.step(stepId);
  if (isFinal(nodeStatus, step.status)) return;
  const phases = draft.phases.filter((phase) => phase.stepId === stepId);
  const latest = phases.at(-1);
  if (latest === undefined) return;
  const start = phases[0]!.start;
  const entry = draft.liveEntry(stepId);
  if (entry !== null) {
    const running = latest.status === 'Suspended' ? 'Suspended' : 'Running';
    // A device that reports work has the entry, whatever became of the answer to our delivery.
    draft.setEntry(entry.id, {
      status: running,
      delivery: 'delivered',
      deviceEntryId: entry.deviceEntryId ?? deviceEntryId,
      start: entry.start ?? start,
      wanted: entry.wanted === 'Aborted' ? 'Aborted' : null,
    });
  }
  if (step.status !== latest.status || step.statusDetails !== latest.statusDetails) {
    draft.event(
      'step.statusChanged',
      { from: step.status, to: latest.status, statusDetails: latest.statusDetails, source: latest.source },
      { stepId, deviceId: latest.deviceId, time: latest.start },
    );
  }
  draft.setStep(stepId, {
    status: latest.status,
    statusDetails: latest.statusDetails,
    start,
    deviceId: latest.deviceId,
  });
  markInputsInUse(draft, stepId);
  setTicketStatus(draft);
}

function markInputsInUse(draft: FileDraft, stepId: string): void {
  for (const id of draft.step(stepId).inputs) {
    const resource = draft.resources.find((row) => row.id === id);
    if (resource?.status === 'Available') draft.setResource(id, { status: 'InUse' });
  }
}

function setTicketStatus(draft: FileDraft): void {
  if (draft.ticket.status !== 'Waiting') return;
  draft.setTicket({ status: 'InProgress' });
  draft.event('ticket.statusChanged', { from: 'Waiting', to: 'InProgress' });
}
