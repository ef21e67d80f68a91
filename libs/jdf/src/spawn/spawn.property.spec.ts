import fc from 'fast-check';
import { marksLeft, saidBy, ticketPlans, ticketText, workOf } from '../../../../test/kit/random-tickets.js';
import { backwards, forwards, workedOutside } from '../../../../test/kit/spawned-work.js';
import { workedInPlace } from '../../../../test/kit/ticket-edits.js';
import { parsedXml } from '../../../../test/kit/value-in.js';

const runs = { seed: 20260512, numRuns: 60 };

describe('spawning and merging any ticket', () => {
  // The expectation is made without the code under test: the same edits in the ticket as it was.
  it('gives the ticket that working in place gives, whatever comes back first', () => {
    const pieces = { whole: 0, partial: 0, nested: 0 };
    fc.assert(
      fc.property(ticketPlans, (plan) => {
        const work = workOf(plan);
        pieces.whole += work.filter(({ parts }) => parts.length === 0).length;
        pieces.partial += work.filter(({ parts }) => parts.length > 0).length;
        pieces.nested += work.flatMap(({ inner }) => inner).length;
        const doc = parsedXml(ticketText(plan));
        const expected = saidBy(workedInPlace(doc, work).root);
        for (const order of [forwards, backwards]) {
          const merged = workedOutside(plan, doc, work, order, () => undefined);
          expect(saidBy(merged.root)).toBe(expected);
          expect(marksLeft(merged)).toEqual([]);
        }
      }),
      runs,
    );
    // The plans really were of every kind.
    expect(Math.min(...Object.values(pieces))).toBeGreaterThan(15);
  });
});
