/** What the server said the plant's time was, when the browser heard it, and how fast it runs. */
export interface ClockFix {
  /** Milliseconds since 1970 UTC, plant time. */
  readonly plantMs: number;
  /** The browser clock at that moment, in milliseconds. */
  readonly heardMs: number;
  /** Plant seconds in one real second. */
  readonly factor: number;
}

/** Plant time in milliseconds when the browser clock shows `wallMs`: a wrong clock in a phone does not matter. */
export function plantMsAt(fix: ClockFix, wallMs: number): number {
  return Math.floor(fix.plantMs + (wallMs - fix.heardMs) * fix.factor);
}
