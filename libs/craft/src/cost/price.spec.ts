import { hourRate, priceJob } from './price.js';

const rules = { materialHandlingPct: 5, overheadPct: 12, marginPct: 10, minimumOrder: 0 };

describe('price of a job', () => {
  // Source: handbook t08-hourrate.
  it('takes an hour rate from the yearly cost and the hours sold', () => {
    expect(hourRate(500000, 3200, 0.75)).toBeCloseTo(208.33, 2);
    expect(hourRate(82500, 1700, 0.7)).toBeCloseTo(69.33, 2);
  });

  // Source: handbook t08-jobcost, both worked jobs.
  it('adds work, material, handling, overhead and margin', () => {
    const first = priceJob(
      [
        { name: 'press', seconds: 1.5 * 3600, hourRate: 185 },
        { name: 'fold', seconds: 2 * 3600, hourRate: 62 },
        { name: 'stitch', seconds: 2.7 * 3600, hourRate: 88 },
      ],
      [
        { name: 'plates', price: 8 * 9.5 },
        { name: 'paper', price: 1210.5 },
        { name: 'ink', price: 14.2 * 12 },
      ],
      rules,
    );
    expect(first.amount).toBe(2699.01);
    const second = priceJob(
      [
        { name: 'press', seconds: 0.5 * 3600, hourRate: 185 },
        { name: 'cut', seconds: 0.7 * 3600, hourRate: 55 },
      ],
      [
        { name: 'plates', price: 38 },
        { name: 'paper', price: 310 },
        { name: 'ink', price: 25.2 },
      ],
      rules,
    );
    expect(second.amount).toBe(650.67);
  });

  it('lists lines that add up to the amount to the cent', () => {
    const price = priceJob([{ name: 'a', seconds: 37, hourRate: 33.3 }], [{ name: 'b', price: 0.005 }], {
      ...rules,
      minimumOrder: 65,
    });
    const cents = price.lines.reduce((sum, l) => sum + Math.round(l.amount * 100), 0);
    expect([price.amount, cents]).toEqual([65, 6500]);
  });
});
