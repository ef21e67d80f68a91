import { inkMassG } from './ink-mass.js';

describe('ink mass', () => {
  // Source: handbook t04-ink-mass; films of 1.0 to 1.5 g/m² on coated paper are from memory.
  it.each([
    [900 * 640, 12, 1.5, 5000, 518.4],
    [1020 * 720, 100, 1.1, 1000, 807.84],
    [1000 * 700, 5, 1.8, 25000, 1575],
  ])('of %d mm² at %d %% and %d g/m² for %d impressions is %d g', (area, pct, film, n, grams) => {
    expect(inkMassG(area, pct, film, n)).toBeCloseTo(grams, 6);
  });
});
