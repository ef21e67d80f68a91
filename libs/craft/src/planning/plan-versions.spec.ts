import fc from 'fast-check';
import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { valueIn } from '../../../../test/kit/value-in.js';
import { sharePlaces } from '../layouts/share-places.js';
import type { Order, VersionOrder } from '../order.js';
import type { Plan } from '../plan.js';
import { planJob } from './plan-job.js';

const plant = demoPlant();
const inks = ['Cyan', 'Magenta', 'Yellow', 'Black'];
const versions = (changes: string[], rows: [string, number][]): VersionOrder[] =>
  rows.map(([name, quantity]) => ({ name, quantity, changes }));

const tickets: Order = {
  jobId: 'T',
  name: 'Tickets',
  quantity: 1200,
  trimWidthMm: 150,
  trimHeightMm: 60,
  pages: 1,
  binding: 'None',
  stock: 'board-280-half-sg',
  inksFront: inks,
  inksBack: [],
  versions: versions(
    ['Black'],
    [
      ['Fri', 300],
      ['Sat matinee', 300],
      ['Sat', 300],
      ['Sun', 300],
    ],
  ),
};
const flyers: Order = {
  ...tickets,
  quantity: 6500,
  trimWidthMm: 105,
  trimHeightMm: 148,
  pages: 2,
  inksBack: inks,
  stock: 'silk-135-half-lg',
  versions: versions(inks, [
    ['Salt Harbour', 500],
    ['Nine Umbrellas', 500],
    ['Goose Committee', 800],
    ['Ferry Songs', 1200],
    ['Kettle for the King', 1500],
    ['Paper Moonrise', 2000],
  ]),
};

function plan(order: Order): Plan {
  return valueIn(planJob(order, plant));
}

function faults(order: Order): [code: string, path: string | null][] {
  const planned = planJob(order, plant);
  return planned.ok ? [] : planned.problems.map((p) => [p.code, p.path]);
}

const placesOf = (planned: Plan): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const block of planned.blocks) counts[block.pileLabel!] = (counts[block.pileLabel!] ?? 0) + 1;
  return counts;
};

describe('flat work in versions', () => {
  // Source: own invented demo oracle, D1-06: the four evenings six times each on one form, not four changes of black.
  it('stands side by side on one form where that is cheaper than changing plates', () => {
    const planned = plan(tickets);
    expect(planned.sheets).toMatchObject([
      { press: 'press-half', copiesUp: 24, goodSheets: 55, sheetsToPress: 197 },
    ]);
    expect(placesOf(planned)).toEqual({ Fri: 6, 'Sat matinee': 6, Sat: 6, Sun: 6 });
    expect(planned.totals.plates).toBe(4);
    const other = planned.alternatives.find((a) => a.what.includes('one version after the other'));
    expect(other?.amount).toBeGreaterThan(planned.totals.cost.amount);
    expect(planned.cautions.join('\n')).toContain('label each pile');
  });

  // Source: own invented demo oracle, D2-04: brute force over the places of twelve gives 667 sheets.
  it('shares the places out so that the worst served sets the fewest sheets', () => {
    const planned = plan(flyers);
    expect(planned.sheets).toMatchObject([{ copiesUp: 12, goodSheets: 673, sheetsToPress: 804, plates: 8 }]);
    expect(Object.values(placesOf(planned))).toEqual([1, 1, 2, 2, 3, 3].toSorted((a, b) => b - a));
    const parts = new Set(planned.sheets[0]!.front.map((cell) => cell.part));
    expect([...parts].toSorted()).toEqual(flyers.versions!.map((v) => v.name).toSorted());
  });

  // Source: own invented demo oracle, D2-05: five plays do not fit four places; four side by side, then the fifth alone.
  it('is spread over forms where the places do not suffice', () => {
    const planned = plan({
      ...tickets,
      quantity: 300,
      trimWidthMm: 297,
      trimHeightMm: 420,
      stock: 'silk-150-full-lg',
      versions: versions(inks, [
        ['A', 60],
        ['B', 60],
        ['C', 60],
        ['D', 60],
        ['E', 60],
      ]),
    });
    expect(planned.sheets.map((s) => [s.goodSheets, s.sheetsToPress, s.plates])).toEqual([
      [65, 166, 4],
      [20, 121, 4],
    ]);
    expect(planned.totals.plates).toBe(8);
  });

  // Source: own invented demo order D1-05, in two versions: one A1 poster fills the sheet.
  it('changes only the plates that differ where a sheet holds one version only', () => {
    const planned = plan({
      ...tickets,
      quantity: 180,
      trimWidthMm: 841,
      trimHeightMm: 594,
      stock: 'silk-150-full-lg',
      versions: versions(
        ['Black'],
        [
          ['A', 90],
          ['B', 90],
        ],
      ),
    });
    expect(planned.sheets.map((s) => s.plates)).toEqual([4, 1]);
    expect(planned.plateList.map((p) => [p.sheet, p.ink, p.version])).toEqual([
      ['S1', 'Black', 'A'],
      ['S1', 'Cyan', ''],
      ['S1', 'Magenta', ''],
      ['S1', 'Yellow', ''],
      ['S2', 'Black', 'B'],
    ]);
    const plates = planned.changeovers[1]?.differs.find((d) => d.what === 'plates');
    expect(plates?.to).toContain('S1-front-Cyan');
    expect(plates?.to).toContain('S2-front-Black');
  });

  it('is priced for other quantities with the same shares', () => {
    const planned = plan({ ...tickets, runs: [1200, 2401] });
    expect(planned.totals.perRun?.[0]?.amount).toBe(planned.totals.cost.amount);
    expect(planned.totals.perRun?.[1]?.amount).toBeGreaterThan(planned.totals.cost.amount);
  });

  it.each<[string, Order, [string, string]]>([
    ['that do not add up', { ...tickets, quantity: 1000 }, ['ORDER_FIELD', '/versions']],
    [
      'of the same name',
      {
        ...tickets,
        quantity: 2,
        versions: versions(
          [],
          [
            ['A', 1],
            ['A', 1],
          ],
        ),
      },
      ['ORDER_FIELD', '/versions/1/name'],
    ],
    [
      'in an ink that is not printed',
      { ...tickets, quantity: 1, versions: versions(['Pink'], [['A', 1]]) },
      ['ORDER_FIELD', '/versions/0/changes/0'],
    ],
  ])('is refused with its place: versions %s', (_what, order, expected) => {
    expect(faults(order)).toContainEqual(expected);
  });
});

describe('places shared out', () => {
  /** The fewest sheets by trying every way to share the places out. */
  function byTrial(quantities: readonly number[], places: number): number {
    if (quantities.length === 1) return Math.ceil(quantities[0]! / places);
    const [first, ...rest] = quantities;
    let best = Infinity;
    for (let own = 1; own <= places - rest.length; own++) {
      best = Math.min(best, Math.max(Math.ceil(first! / own), byTrial(rest, places - own)));
    }
    return best;
  }

  it('take as few sheets as the best of all ways, use every place and serve every kind', () => {
    const wanted = fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(wanted, fc.integer({ min: 0, max: 8 }), (quantities, more) => {
        const places = quantities.length + more;
        const share = sharePlaces(quantities, places)!;
        expect(share.sheets).toBe(byTrial(quantities, places));
        expect(share.places.reduce((a, b) => a + b, 0)).toBe(places);
        for (const [i, q] of quantities.entries()) {
          expect(share.places[i]! * share.sheets).toBeGreaterThanOrEqual(q);
        }
      }),
      { seed: 20261125, numRuns: 200 },
    );
    expect(sharePlaces([1, 1, 1], 2)).toBeNull();
  });
});
