import { demoPlant } from '../../../../test/kit/demo-plant.js';
import type { Order } from '../order.js';
import { compareOrders } from './compare-orders.js';

const plant = demoPlant();
const letter: Order = {
  jobId: 'plain',
  name: 'Letter',
  quantity: 500,
  trimWidthMm: 210,
  trimHeightMm: 100,
  pages: 1,
  binding: 'None',
  stock: 'board-280-half-sg',
  inksFront: ['Black'],
  inksBack: [],
};
const green: Order = { ...letter, jobId: 'green', inksFront: ['Black', 'Festival Green'] };
const gold: Order = { ...letter, jobId: 'gold', inksFront: ['Black', 'Festival Gold'] };

describe('orders of jobs on a press', () => {
  // Source: the demo plant's own tasks: a dark ink is washed out of the fifth unit for 840 s before a light one goes in,
  // after a light one for 480 s (the difference is common practice, no source).
  it('cost more where a light ink follows a dark one', () => {
    const [best, worst] = compareOrders([green, gold], plant);
    expect([best?.jobs, worst?.jobs]).toEqual([
      ['gold', 'green'],
      ['green', 'gold'],
    ]);
    expect((worst?.changeoverS ?? 0) - (best?.changeoverS ?? 0)).toBe(840 - 480);
  });

  it('are all tried for three jobs, the given one and its reverse for more', () => {
    expect(compareOrders([letter, green, gold], plant)).toHaveLength(6);
    const four = [letter, green, gold, { ...letter, jobId: 'last' }];
    expect(compareOrders(four, plant).map(({ jobs }) => jobs.length)).toEqual([4, 4]);
  });

  it('are none for one job, or where one cannot be planned', () => {
    expect(compareOrders([letter], plant)).toEqual([]);
    expect(compareOrders([letter, { ...letter, stock: 'none' }], plant)).toEqual([]);
  });
});
