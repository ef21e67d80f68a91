import * as fc from 'fast-check';
import { type PlantState, placeForward, type Task } from './index.js';

const HOUR = 3_600_000;
const empty: PlantState = { now: 0, horizons: new Map(), calendars: new Map() };
const task = (id: string, device: string, after: string[], hours: number, waitAfterS = 0): Task => ({
  id,
  device,
  after,
  setupS: 0,
  runS: hours * 3600,
  waitAfterS,
});
const at = (placed: ReturnType<typeof placeForward>, id: string): number[] => {
  const { start, end } = placed.get(id)!;
  return [start / HOUR, end / HOUR];
};

describe('placing a job forward on machines of finite capacity', () => {
  it('waits for predecessors, their drying, and the machine', () => {
    const placed = placeForward([task('print', 'press', [], 1, 7200), task('fold', 'folder', ['print'], 1)], {
      ...empty,
      horizons: new Map([['press', 2 * HOUR]]),
    });
    expect([at(placed, 'print'), at(placed, 'fold')]).toEqual([
      [2, 3],
      [5, 6],
    ]);
  });

  it('does not begin what would not end before the machine closes', () => {
    const placed = placeForward([task('print', 'press', [], 3)], {
      ...empty,
      calendars: new Map([
        [
          'press',
          [
            [0, 2 * HOUR],
            [10 * HOUR, 18 * HOUR],
          ],
        ],
      ]),
    });
    expect(at(placed, 'print')).toEqual([10, 13]);
  });

  it('begins at the next opening what no shift is long enough for', () => {
    const placed = placeForward([task('print', 'press', [], 30)], {
      ...empty,
      now: 3 * HOUR,
      calendars: new Map([
        [
          'press',
          [
            [0, 2 * HOUR],
            [10 * HOUR, 18 * HOUR],
          ],
        ],
      ]),
    });
    expect(at(placed, 'print')).toEqual([10, 40]);
  });

  it('never lets two tasks overlap on a machine nor begins one before its predecessors', () => {
    const tasks = fc.array(
      fc.record({
        device: fc.constantFrom('a', 'b', 'c'),
        hours: fc.integer({ min: 1, max: 5 }),
        back: fc.nat(5),
      }),
      { minLength: 1, maxLength: 20 },
    );
    return fc.assert(
      fc.property(tasks, (rows) => {
        const list = rows.map((row, n) =>
          task(`t${n}`, row.device, n > row.back ? [`t${n - 1 - row.back}`] : [], row.hours),
        );
        const placed = placeForward(list, empty);
        for (const one of list) {
          for (const id of one.after)
            expect(placed.get(one.id)!.start).toBeGreaterThanOrEqual(placed.get(id)!.end);
          for (const other of list) {
            if (other === one || other.device !== one.device) continue;
            const [a, b] = [placed.get(one.id)!, placed.get(other.id)!];
            expect(a.end <= b.start || b.end <= a.start).toBe(true);
          }
        }
      }),
    );
  });
});
