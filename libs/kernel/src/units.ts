/**
 * Lengths inside are millimetres, thickness micrometres, mass grams or kilograms, time seconds: always in the name.
 * Points (1/72 inch) exist only at the standard's edge; these two functions are the only place that converts them.
 */
const MM_PER_POINT = 25.4 / 72;

/** Points of the standard (1/72 inch) to millimetres. */
export function mmFromPoints(points: number): number {
  return points * MM_PER_POINT;
}

/** Millimetres to points, rounded to 0.001 pt so that documents stay readable (0.35 µm, far below any press). */
export function pointsFromMm(mm: number): number {
  return roundTo(mm / MM_PER_POINT, 3);
}

/** Rounds half away from zero to `digits` decimals. */
export function roundTo(value: number, digits: number): number {
  const factor = 10 ** digits;
  const scaled = Math.abs(value) * factor;
  // 1.005 * 100 is 100.49999…: nudge by a few units in the last place before rounding.
  return (Math.sign(value) * Math.round(scaled * (1 + Number.EPSILON * 4))) / factor;
}

/**
 * Whole pieces to feed so that `good` come out, when a share of what is fed is lost and some are spent on setting up:
 * ceil(good / (1 - share)) + setup. The convention "onInput": losses are shares of what is fed. Source: trade handbook, spoilage chain (t03).
 */
export function piecesToFeed(good: number, runningSharePct: number, setup: number): number {
  // 5000 / (1 - 0.02) must not become one more sheet for a rounding error in the last binary digit.
  return Math.ceil(roundTo(good / (1 - runningSharePct / 100), 9)) + setup;
}
