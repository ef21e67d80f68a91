import { ticksOf, windowFor, xOf } from './time-axis.js';

const HOUR = 3_600_000;
const NOON = Date.UTC(2026, 2, 12, 12);

describe('time axis', () => {
  it('shows the chosen hours with a quarter of them behind now', () => {
    const { fromMs, toMs } = windowFor('4', NOON, NOON);
    expect([(fromMs - NOON) / HOUR, (toMs - NOON) / HOUR]).toEqual([-1, 3]);
  });

  it('fits the shortest window that still shows the last end', () => {
    const width = (lastEndMs: number): number => {
      const { fromMs, toMs } = windowFor('fit', NOON, lastEndMs);
      return (toMs - fromMs) / HOUR;
    };
    expect(width(NOON)).toBe(1);
    expect(width(NOON + 2 * HOUR)).toBe(4);
    expect(width(NOON + 500 * HOUR)).toBe(72);
  });

  it('puts now at a quarter of the width', () => {
    expect(xOf(windowFor('12', NOON, NOON), 800, NOON)).toBeCloseTo(200);
  });

  it('ticks at round times of day, no closer than asked', () => {
    const window = { fromMs: NOON - 0.4 * HOUR, toMs: NOON + 3.6 * HOUR };
    const ticks = ticksOf(window, 800, 120, 0);
    expect(ticks.map(({ atMs }) => (atMs - NOON) / HOUR)).toEqual([0, 1, 2, 3]);
  });

  it('rounds by the local clock, half-hour zones too, and names midnight as a day', () => {
    const offsetMs = 5.5 * HOUR;
    const window = { fromMs: Date.UTC(2026, 2, 12, 16), toMs: Date.UTC(2026, 2, 12, 20) };
    const ticks = ticksOf(window, 400, 100, offsetMs);
    expect(ticks.every(({ atMs }) => (atMs + offsetMs) % HOUR === 0)).toBe(true);
    expect(ticks.filter(({ day }) => day).map(({ atMs }) => atMs)).toEqual([Date.UTC(2026, 2, 12, 18, 30)]);
  });
});
