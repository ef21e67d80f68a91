import {
  codes,
  piecesToFeed,
  plantClock,
  roundTo,
  seededRandom,
  uuidV7Source,
  VirtualClock,
} from './index.js';

describe('overs counted from the input', () => {
  // Trade handbook, t03-chain, convention onInput: 10000 flyers 4-up, 5000 copies of 16 pages, 1200 books.
  it.each([
    [10000, 0.3, 5, 10036],
    [2509, 2, 200, 2761],
    [5000, 1, 25, 5076],
  ])('%d good at %d %% and %d to set up need %d', (good, pct, setup, fed) => {
    expect(piecesToFeed(good, pct, setup)).toBe(fed);
  });

  it('does not feed one more sheet for a binary rounding error', () => {
    expect(piecesToFeed(98, 2, 0)).toBe(100);
  });
});

describe('rounding', () => {
  it('rounds half away from zero, also where binary fractions fall short', () => {
    expect([roundTo(1.005, 2), roundTo(-1.005, 2), roundTo(2.5, 0)]).toEqual([1.01, -1.01, 3]);
  });
});

describe('the virtual clock', () => {
  it('runs appointments in order of time, then in the order made, and awaits each', async () => {
    const clock = new VirtualClock(0);
    const seen: string[] = [];
    clock.after(2, () => void seen.push('late'));
    clock.after(1, async () => {
      await Promise.resolve();
      seen.push('first');
      clock.after(1, () => void seen.push('made at one, due at two'));
    });
    clock.after(1, () => void seen.push('second'));
    await clock.runUntil(5000);
    expect(seen).toEqual(['first', 'second', 'late', 'made at one, due at two']);
    expect(clock.now()).toBe(5000);
  });

  it('does not run what was called off', async () => {
    const clock = new VirtualClock(0);
    let ran = false;
    clock.after(1, () => {
      ran = true;
    })();
    await clock.runUntil(2000);
    expect(ran).toBe(false);
  });
});

describe('the plant clock', () => {
  it('runs so many times as fast as the wall and waits so much shorter', () => {
    let wallNow = 1000;
    const waits: number[] = [];
    const clock = plantClock(
      { plantStart: 500_000, realStart: 1000, factor: 60 },
      {
        now: () => wallNow,
        setTimeout: (_task, ms) => {
          waits.push(ms);
          return () => undefined;
        },
      },
    );
    wallNow += 1000;
    expect(clock.now()).toBe(560_000);
    clock.after(120, () => undefined);
    expect(waits).toEqual([2000]);
  });
});

describe('identifiers', () => {
  it('are UUIDs of version 7 in ascending order even within one millisecond and past the counter', () => {
    const ids = uuidV7Source({ now: () => 1_700_000_000_000 }, seededRandom(1));
    const made = Array.from({ length: 10_000 }, () => ids.next());
    expect([...made].sort()).toEqual(made);
    expect(new Set(made).size).toBe(made.length);
    expect(made[0]).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });
});

describe('the code table', () => {
  it('answers refusals with a status that HTTP and the standard know', () => {
    for (const [code, row] of Object.entries(codes)) {
      expect({ code, ok: row.http >= 200 && row.http < 600 && row.jmf >= 0 && row.jmf <= 307 }).toEqual({
        code,
        ok: true,
      });
    }
  });
});
