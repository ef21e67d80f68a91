import { error, type Problem } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import { bookPhase } from './book-phase.js';
import type { FileDraft } from './draft.js';
import { endStep } from './settle.js';

export type BenchCommand = 'start' | 'pause' | 'finish';

/** Pieces since the last call. */
export interface BenchCounts {
  readonly good: number;
  readonly waste: number;
}

/**
 * A person works a step at a bench: starts, pauses with what was done so far, finishes with the rest. Machines that
 * report for themselves are not worked this way.
 */
export function benchWork(
  draft: FileDraft,
  stepId: string,
  command: BenchCommand,
  counts: BenchCounts,
): Problem | null {
  const step = draft.steps.find((row) => row.id === stepId);
  if (step === undefined) return error('STEP_UNKNOWN', `The ticket has no step "${stepId}".`);
  if (isFinal(nodeStatus, step.status)) return error('ENTRY_FINAL', `The step is ${step.status}.`);
  const entry = draft.liveEntry(stepId);
  if (entry === null) return error('STATE_FORBIDS', 'The step still waits for what it needs.');
  if (entry.status === 'Held' || step.activation === 'Held')
    return error('STATE_FORBIDS', 'The step is held; resume it first.');
  const running = step.status === 'InProgress';
  if (command === 'start' && running) return error('ENTRY_SAME_STATE', 'The step is being worked already.');
  if (command !== 'start' && step.status === 'Waiting')
    return error('STATE_FORBIDS', 'The step was not started.');
  if (command === 'pause' && !running) return error('ENTRY_SAME_STATE', 'The step is paused already.');

  const deviceId = entry.deviceId;
  const current = draft.phases.filter((phase) => phase.stepId === stepId).at(-1) ?? null;
  if (current !== null && (counts.good > 0 || counts.waste > 0)) {
    const { start, status, statusDetails } = current;
    const good = current.good + counts.good;
    const waste = current.waste + counts.waste;
    bookPhase(draft, {
      stepId,
      deviceId,
      start,
      at: draft.now,
      status,
      statusDetails,
      good,
      waste,
      source: 'person',
    });
  }
  if (command === 'finish') {
    endStep(draft, stepId, 'Completed', draft.now);
    const ended = draft.entries.find((row) => row.id === entry.id)!;
    // Nothing comes back from a bench: the entry is done with the work.
    if (ended.status === 'PendingReturn') draft.setEntry(entry.id, { status: 'Completed' });
    return null;
  }
  const status = command === 'start' ? 'InProgress' : 'Stopped';
  // Two calls within one millisecond must not share a phase.
  const start = Math.max(draft.now, (current?.start ?? 0) + 1);
  const statusDetails = command === 'pause' ? 'Pause' : null;
  bookPhase(draft, {
    stepId,
    deviceId,
    start,
    at: start,
    status,
    statusDetails,
    good: null,
    waste: null,
    source: 'person',
  });
  return null;
}
