import type { NodeStatus } from '#libs/jdf';
import type { Instant } from '#libs/kernel';
import type { Run, Segment } from './state.js';

export interface Counts {
  readonly good: number;
  readonly waste: number;
}

const NONE: Counts = { good: 0, waste: 0 };

/** Pieces of the present phase at an instant; at its end exactly what the segment says. Never goes down. */
export function countsAt(current: Run['current'], at: Instant): Counts {
  if (current === null) return NONE;
  const { good, waste } = current.segment;
  const all = good + waste;
  const end = endOf(current);
  // Against the rounded end, so that there all are out.
  const share = end === null || at >= end ? 1 : Math.max(0, at - current.anchor) / (end - current.anchor);
  if (all === 0) return NONE;
  const out = Math.floor(share * all);
  const wasted = Math.floor((out * waste) / all);
  return { good: out - wasted, waste: wasted };
}

/** A phase as it is told: its name is its start. */
export interface SaidPhase extends Counts {
  readonly status: NodeStatus;
  readonly statusDetails: string | null;
  readonly start: Instant;
}

/** The present phase as it stands at an instant. */
export function saidNow(run: Run, at: Instant): SaidPhase | null {
  if (run.current === null) return null;
  const { segment, start } = run.current;
  return {
    status: segment.status,
    statusDetails: segment.statusDetails,
    start,
    ...countsAt(run.current, at),
  };
}

/** All that came out of a run: its closed phases and the open one, if it is given. */
export function totalsWith(run: Run, open: Counts | null): Counts {
  return run.phases.reduce(
    (sum, phase) => ({ good: sum.good + phase.good, waste: sum.waste + phase.waste }),
    open ?? NONE,
  );
}

/** When the present phase ends by itself; null when it waits for somebody. */
export function endOf(current: Run['current']): Instant | null {
  if (current === null || current.segment.durationS === null) return null;
  return current.anchor + Math.round(current.segment.durationS * 1000);
}

/** What is left of the present segment when it is interrupted at an instant. */
export function remainder(current: NonNullable<Run['current']>, at: Instant): Segment {
  const { segment } = current;
  const made = countsAt(current, at);
  const passedS = Math.max(0, (at - current.anchor) / 1000);
  return {
    ...segment,
    durationS: segment.durationS === null ? null : Math.max(0, segment.durationS - passedS),
    good: segment.good - made.good,
    waste: segment.waste - made.waste,
    notice: null,
  };
}

/** Pieces an hour at which the machine runs in the present phase. */
export function speedOf(current: Run['current']): number {
  if (current === null || !current.segment.durationS) return 0;
  const { good, waste, durationS } = current.segment;
  return Math.round(((good + waste) / durationS) * 3600);
}
