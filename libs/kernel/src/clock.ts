/**
 * Time is a port: nothing else in the product asks what time it is or waits.
 * Instants are milliseconds since 1970 UTC, in plant time; a `plantSeconds` wait is one of the plant, not of the wall.
 */
export type Instant = number;

export interface Clock {
  now(): Instant;
  /** Runs `task` once after so many plant seconds; the returned function calls it off. */
  after(plantSeconds: number, task: () => void | Promise<void>): () => void;
  /** Plant seconds that pass in one real second: 1 in production. */
  readonly factor: number;
}

/** How a plant clock was set: at real instant `realStart` it was `plantStart`, and runs `factor` times as fast. */
export interface ClockSetting {
  readonly plantStart: Instant;
  readonly realStart: Instant;
  readonly factor: number;
}

/** The world's own time source, replaceable so that a plant clock can itself be tested. */
export interface WallClock {
  now(): number;
  setTimeout(task: () => void, ms: number): () => void;
}

export const wallClock: WallClock = {
  now: () => Date.now(),
  setTimeout: (task, ms) => {
    const timer = setTimeout(task, ms);
    return () => clearTimeout(timer);
  },
};

// setTimeout silently fires at once above 2^31-1 ms: a longer wait is made of several.
const LONGEST_TIMEOUT_MS = 2_000_000_000;

/** A clock that follows the wall clock, shifted and sped up by `setting`. */
export function plantClock(setting: ClockSetting, wall: WallClock = wallClock): Clock {
  const { plantStart, realStart, factor } = setting;
  const now = (): Instant => Math.floor(plantStart + (wall.now() - realStart) * factor);
  return {
    now,
    factor,
    after(plantSeconds, task) {
      const due = now() + plantSeconds * 1000;
      let cancel = (): void => undefined;
      const arm = (): void => {
        const waitMs = Math.max(0, (due - now()) / factor);
        cancel =
          waitMs > LONGEST_TIMEOUT_MS
            ? wall.setTimeout(arm, LONGEST_TIMEOUT_MS)
            : wall.setTimeout(() => void task(), waitMs);
      };
      arm();
      return () => cancel();
    },
  };
}

/** Real UTC, for production. */
export function realClock(wall: WallClock = wallClock): Clock {
  return plantClock({ plantStart: 0, realStart: 0, factor: 1 }, wall);
}

/** RFC 3339 UTC with milliseconds. */
export function isoTime(instant: Instant): string {
  return new Date(instant).toISOString();
}
