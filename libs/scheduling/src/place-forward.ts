import type { Instant } from '#libs/kernel';

/** One piece of work on one machine. Set-up and run follow each other without a break. */
export interface Task {
  readonly id: string;
  readonly device: string;
  /** Ids of tasks that must have ended, with their wait, before this one begins. */
  readonly after: readonly string[];
  readonly setupS: number;
  readonly runS: number;
  /** What must pass after it before its successors begin (drying). */
  readonly waitAfterS: number;
}

/** A stretch in which a machine is open, from and to. */
export type OpenInterval = readonly [Instant, Instant];

export interface PlantState {
  readonly now: Instant;
  /** When each machine is done with what it has already; machines without work may be left out. */
  readonly horizons: ReadonlyMap<string, Instant>;
  /** Opening hours in order; a machine that is not in the map is always open. */
  readonly calendars: ReadonlyMap<string, readonly OpenInterval[]>;
}

export interface Placement {
  /** Set-up begins. */
  readonly start: Instant;
  readonly end: Instant;
}

/**
 * Places the tasks of one job one after another, each as early as its machine, its predecessors and the opening hours
 * allow, in the order given (predecessors first). A task lies inside one open interval; one that is longer than any of
 * them begins when its machine opens and is taken to run on. Finite capacity: a machine does one thing at a time.
 */
export function placeForward(tasks: readonly Task[], plant: PlantState): ReadonlyMap<string, Placement> {
  const placed = new Map<string, Placement>();
  const free = new Map(plant.horizons);
  for (const task of tasks) {
    const ready = Math.max(
      plant.now,
      free.get(task.device) ?? plant.now,
      ...task.after.map((id) => endWithWait(tasks, placed, id)),
    );
    const lengthMs = (task.setupS + task.runS) * 1000;
    const start = firstOpening(ready, lengthMs, plant.calendars.get(task.device));
    const end = start + lengthMs;
    placed.set(task.id, { start, end });
    free.set(task.device, end);
  }
  return placed;
}

function endWithWait(tasks: readonly Task[], placed: ReadonlyMap<string, Placement>, id: string): Instant {
  const before = tasks.find((task) => task.id === id);
  return (placed.get(id)?.end ?? 0) + (before?.waitAfterS ?? 0) * 1000;
}

function firstOpening(ready: Instant, lengthMs: number, open: readonly OpenInterval[] | undefined): Instant {
  if (open === undefined || open.length === 0) return ready;
  const fitting = open.find(([from, to]) => Math.max(from, ready) + lengthMs <= to);
  if (fitting !== undefined) return Math.max(fitting[0], ready);
  const next =
    open.find(([from, to]) => to - from < lengthMs && to > ready) ?? open.find(([, to]) => to > ready);
  return next === undefined ? ready : Math.max(next[0], ready);
}
