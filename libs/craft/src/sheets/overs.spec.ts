import fc from 'fast-check';
import { type OversStep, oversChain } from './overs.js';

const step = (name: string, setupSheets: number, runningPct: number, outPerIn = 1): OversStep => ({
  step: name,
  setupSheets,
  runningPct,
  outPerIn,
});

describe('overs from the input', () => {
  // Source: handbook t03-chain, the four worked jobs (rates from t03 tables, convention onInput).
  it('carries 5000 stitched brochures of one section back to 5601 sheets', () => {
    const chain = oversChain(5000, [
      step('stitch and trim', 25, 1),
      step('fold 3', 40, 1),
      step('press 4/4', 300, 2.5),
    ]);
    expect(chain.map((c) => c.in)).toEqual([5076, 5168, 5601]);
  });

  it('carries 10000 flyers four-up back to 2761 sheets', () => {
    const chain = oversChain(10000, [step('cut', 5, 0.3), step('4-up', 0, 0, 4), step('press', 200, 2)]);
    expect(chain.map((c) => c.in)).toEqual([10036, 2509, 2761]);
  });

  it('carries 1200 bound books back to 1450 sheets', () => {
    const chain = oversChain(1200, [
      step('bind and trim', 35, 1.5),
      step('gather', 15, 0.5),
      step('fold', 40, 1),
      step('press', 100, 1.5),
    ]);
    expect(chain.map((c) => c.in)).toEqual([1254, 1276, 1329, 1450]);
  });

  it('never needs fewer sheets for more copies or more waste', () => {
    const rate = fc.record({
      setup: fc.integer({ min: 0, max: 300 }),
      pct: fc.double({ min: 0, max: 20, noNaN: true }),
      up: fc.integer({ min: 1, max: 24 }),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100000 }),
        fc.integer({ min: 0, max: 1000 }),
        fc.array(rate, { minLength: 1, maxLength: 5 }),
        (wanted, more, rates) => {
          const steps = rates.map((r, i) => step(`${i}`, r.setup, r.pct, r.up));
          const last = (n: number, s: OversStep[]) => oversChain(n, s).at(-1)?.in ?? 0;
          expect(last(wanted + more, steps)).toBeGreaterThanOrEqual(last(wanted, steps));
          const worse = steps.map((s) => ({ ...s, runningPct: s.runningPct + 1 }));
          expect(last(wanted, worse)).toBeGreaterThanOrEqual(last(wanted, steps));
        },
      ),
    );
  });
});
