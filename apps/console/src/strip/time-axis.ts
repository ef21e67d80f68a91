/** The common time line of the board. All instants are plant time in milliseconds. */

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

export interface TimeWindow {
  readonly fromMs: number;
  readonly toMs: number;
}

/** What the reader chose: hours to show, or `fit` for as many as the live work needs. */
export type SpanChoice = 'fit' | '4' | '12' | '72';
export const spanChoices: readonly SpanChoice[] = ['fit', '4', '12', '72'];

/** A quarter of the window lies behind now: what has just happened is needed to understand what waits. */
const PAST_SHARE = 0.25;
const FITTING_H = [1, 2, 4, 8, 12, 24, 48, 72];

/** The window around now; `fit` takes the shortest that still shows `lastEndMs`. */
export function windowFor(choice: SpanChoice, nowMs: number, lastEndMs: number): TimeWindow {
  const fits = (hours: number): boolean => nowMs + hours * HOUR_MS * (1 - PAST_SHARE) >= lastEndMs;
  const hours = choice === 'fit' ? (FITTING_H.find(fits) ?? FITTING_H.at(-1)!) : Number(choice);
  const fromMs = nowMs - hours * HOUR_MS * PAST_SHARE;
  return { fromMs, toMs: fromMs + hours * HOUR_MS };
}

/** Pixels from the left edge of a drawing `widthPx` wide. Not clipped. */
export function xOf(window: TimeWindow, widthPx: number, atMs: number): number {
  return ((atMs - window.fromMs) / (window.toMs - window.fromMs)) * widthPx;
}

const STEPS_MS = [5, 10, 15, 30, 60, 120, 180, 360, 720, 1440].map((minutes) => minutes * MINUTE_MS);

export interface Tick {
  readonly atMs: number;
  /** Midnight: the label names the day. */
  readonly day: boolean;
}

/**
 * Round times of day within the window, at least `leastPx` apart. `offsetMs` is what local time is ahead of UTC, so
 * that six o'clock is six on the hall's own clock.
 */
export function ticksOf(window: TimeWindow, widthPx: number, leastPx: number, offsetMs: number): Tick[] {
  const perPx = (window.toMs - window.fromMs) / Math.max(1, widthPx);
  const step = STEPS_MS.find((ms) => ms >= perPx * leastPx) ?? STEPS_MS.at(-1)!;
  const ticks: Tick[] = [];
  const first = Math.ceil((window.fromMs + offsetMs) / step) * step;
  for (let local = first; local - offsetMs <= window.toMs; local += step) {
    ticks.push({ atMs: local - offsetMs, day: local % (24 * HOUR_MS) === 0 });
  }
  return ticks;
}
