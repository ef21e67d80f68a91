import fc from 'fast-check';
import { type NetworkTask, shortestSchedule } from './shortest.js';

const task = (name: string, durationS: number, after: string[] = [], needs: string[] = []): NetworkTask => ({
  name,
  durationS,
  after,
  needs,
});

const hands = [
  task('stop', 5),
  task('plates', 105, ['stop']),
  task('blanket wash', 118, ['stop']),
  task('cylinder wash', 100, ['stop']),
  task('presetting', 70, ['stop']),
  task('format', 90, ['stop']),
  task('start', 10, ['plates', 'blanket wash', 'cylinder wash', 'presetting', 'format']),
];

describe('shortest change-over', () => {
  // Source: handbook t06-changeover (critical path method; the 133 s total is common practice, no source).
  it('takes 133 s to the first sheet when all tasks run side by side', () => {
    const found = shortestSchedule(hands);
    expect(found.durationS).toBe(133);
    expect(found.criticalPath).toEqual(['stop', 'blanket wash', 'start']);
  });

  // Source: handbook t06-changeover: one wash, then plates, on a press with a common drive = 238 s.
  it('takes 238 s when the common drive lets only one of washing and plating run', () => {
    const washed = shortestSchedule([
      task('stop', 5),
      task('wash', 118, ['stop'], ['drive']),
      task('plates', 105, ['stop'], ['drive']),
      task('ink', 70, ['stop']),
      task('start', 10, ['plates', 'wash', 'ink']),
    ]);
    expect(washed.durationS).toBe(238);
  });

  it('lets one person do one task after the other', () => {
    const found = shortestSchedule([
      task('a', 30, [], ['helper']),
      task('b', 40, [], ['helper']),
      task('c', 50),
      task('end', 10, ['a', 'b', 'c']),
    ]);
    expect(found.durationS).toBe(80);
    expect(found.criticalPath).toHaveLength(3);
  });

  it('is never shorter than the longest way nor longer than one after the other', () => {
    const random = fc.array(
      fc.record({
        s: fc.integer({ min: 1, max: 60 }),
        back: fc.integer({ min: 0, max: 3 }),
        who: fc.constantFrom('minder', 'helper', ''),
      }),
      { minLength: 1, maxLength: 7 },
    );
    fc.assert(
      fc.property(random, (rows) => {
        const tasks = rows.map((r, i) =>
          task(`${i}`, r.s, r.back > 0 && i >= r.back ? [`${i - r.back}`] : [], r.who ? [r.who] : []),
        );
        const found = shortestSchedule(tasks);
        const free = shortestSchedule(tasks.map((t) => ({ ...t, needs: [] })));
        expect(found.durationS).toBeGreaterThanOrEqual(free.durationS);
        expect(found.durationS).toBeLessThanOrEqual(rows.reduce((sum, r) => sum + r.s, 0));
        for (const t of tasks) {
          const start = found.startS.get(t.name) ?? -1;
          for (const name of t.after) {
            const before = tasks.find((x) => x.name === name);
            expect(start).toBeGreaterThanOrEqual((found.startS.get(name) ?? 0) + (before?.durationS ?? 0));
          }
        }
        const path = found.criticalPath.map((name) => tasks.find((t) => t.name === name)?.durationS ?? 0);
        expect(path.reduce((a, b) => a + b, 0)).toBe(found.durationS);
      }),
    );
  });
});
