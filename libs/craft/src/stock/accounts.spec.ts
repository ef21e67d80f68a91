import fc from 'fast-check';
import { type Account, accounts, balance, drawMoves, type StockMove } from './accounts.js';

const want = { item: 'paper', lot: null, unit: 'sheets', amount: 540 };

describe('book of materials', () => {
  it('books a draw beyond the book against difference', () => {
    expect(drawMoves(want, 380, 100).map((m) => [m.from, m.amount])).toEqual([
      ['reserved', 380],
      ['store', 100],
      ['difference', 60],
    ]);
  });

  it('draws what is reserved first', () => {
    expect(drawMoves(want, 600, 100).map((m) => [m.from, m.to])).toEqual([['reserved', 'process']]);
  });

  it('never makes or loses material', () => {
    const move: fc.Arbitrary<StockMove> = fc.record({
      item: fc.constantFrom('paper', 'plates'),
      lot: fc.constant(null),
      unit: fc.constant('sheets'),
      amount: fc.integer({ min: 1, max: 1000 }),
      from: fc.constantFrom<Account>(...accounts),
      to: fc.constantFrom<Account>(...accounts),
    });
    fc.assert(
      fc.property(fc.array(move), (moves) => {
        expect(Object.values(balance(moves, 'paper')).reduce((a, b) => a + b, 0)).toBe(0);
      }),
    );
  });
});
