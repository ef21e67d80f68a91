import fc from 'fast-check';
import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { cutByPlan, foldByPlan, pageBehind } from '../../../../test/kit/read-plan.js';
import { valueIn } from '../../../../test/kit/value-in.js';
import { leafletByCode, leafletByFolds, leafletCodes } from '../imposition/leaflet.js';
import type { FoldStep, Order } from '../order.js';
import type { Plan } from '../plan.js';
import { planJob } from './plan-job.js';

const plant = demoPlant();
const inks = ['Cyan', 'Magenta', 'Yellow', 'Black'];
const workshops: Order = {
  jobId: 'L',
  name: 'Workshops',
  quantity: 2500,
  trimWidthMm: 99.5,
  trimHeightMm: 210,
  pages: 6,
  binding: 'None',
  foldCatalog: 'F6-1',
  stock: 'silk-135-half-lg',
  inksFront: inks,
  inksBack: inks,
};
const menu: Order = {
  ...workshops,
  quantity: 200,
  trimWidthMm: 148,
  pages: 4,
  foldCatalog: 'F4-1',
  stock: 'silk-250-half-lg',
};
const map: Order = { ...workshops, trimWidthMm: 148.5, pages: 8, foldCatalog: 'F8-7' };

function plan(order: Order): Plan {
  return valueIn(planJob(order, plant));
}

function faults(order: Order): [code: string, path: string | null][] {
  const planned = planJob(order, plant);
  return planned.ok ? [] : planned.problems.map((p) => [p.code, p.path]);
}

/** Folds every leaflet of a plan by its own numbers. */
function checkFolding(order: Order, planned: Plan): void {
  const [sheet] = planned.sheets;
  expect(planned.folding).toHaveLength(sheet!.copiesUp);
  for (const folding of planned.folding) {
    const folded = foldByPlan(planned, folding);
    expect(folded.pages).toEqual(Array.from({ length: order.pages }, (_, i) => i + 1));
    expect(folded.startsAt.map((mm) => mm.toFixed(3))).toEqual(folding.sheetInMm.map((mm) => mm.toFixed(3)));
  }
  for (const cell of sheet!.front) {
    expect(pageBehind(cell, sheet!)).toBe(cell.page % 2 === 1 ? cell.page + 1 : cell.page - 1);
  }
  const good = [...cutByPlan(planned, sheet!)].filter(([name]) => !name.startsWith('waste'));
  expect(good.map(([name]) => name).toSorted()).toEqual(planned.blocks.map((b) => b.name).toSorted());
}

describe('plan of a leaflet', () => {
  // Source: own invented demo oracle, D1-08, D2-08 and D2-11 (the first good to a sheet: 640 and 770 there).
  it.each<[string, Order, number, number, number]>([
    ['a wrap fold', workshops, 4, 641, 771],
    ['one fold', menu, 2, 116, 238],
    ['two folds at right angles', map, 2, 1276, 1416],
  ])('%s: %#', (_what, order, up, good, toPress) => {
    const planned = plan(order);
    expect(planned.sheets).toMatchObject([
      { press: 'press-full', copiesUp: up, goodSheets: good, sheetsToPress: toPress, plates: 8 },
    ]);
    checkFolding(order, planned);
  });

  // Source: handbook t07-panels: letter fold, outer panel (flat + difference) ÷ 3; 297 mm flat and 1.5 mm: 99.5, 99.5, 98.
  it('has an inner panel that is shorter', () => {
    const scheme = leafletByCode('F6-1', 99.5, 210)!;
    expect(scheme.columnsMm).toEqual([98, 99.5, 99.5]);
    expect(scheme.columnsMm.reduce((a, b) => a + b, 0)).toBe(297);
  });

  // Source: standard reference 6.3, verified: 4 × 1, Left ½ up twice, front 3 6 7 2 (bottom row first).
  it('numbers its panels by folding', () => {
    const order: Order = { ...map, trimWidthMm: 105, foldCatalog: 'F8-1' };
    const planned = plan(order);
    const [first] = planned.blocks;
    const upright = planned.sheets[0]!.front.slice(0, 4).map((cell) => cell.page);
    expect(first?.widthMm).toBeDefined();
    expect(upright).toEqual(expect.arrayContaining([3, 6, 7, 2]));
    checkFolding(order, planned);
  });

  it('of heavy paper is creased in the folder that can, with the fold along the grain', () => {
    const planned = plan(menu);
    const fold = planned.steps.find((s) => s.id === 'fold-1');
    expect([fold?.types, fold?.device]).toEqual([['Creasing', 'Folding'], 'folder-small']);
    expect(planned.cautions.join('\n')).toContain('creased');
    expect(planned.alternatives.some((a) => a.what.includes('across the grain'))).toBe(true);
  });

  it.each<[string, Order, [string, string]]>([
    [
      'a code that is not planned',
      { ...workshops, foldCatalog: 'F12-9' },
      ['PLAN_IMPOSSIBLE', '/foldCatalog'],
    ],
    ['pages that the fold does not have', { ...workshops, pages: 8 }, ['PLAN_IMPOSSIBLE', '/pages']],
    [
      'a fold over more than there is',
      { ...workshops, folds: [{ from: 'Left', to: 'Up', travelMm: 200 }], pages: 4 },
      ['PLAN_IMPOSSIBLE', '/folds'],
    ],
    [
      'bound work with a fold',
      { ...workshops, binding: 'SaddleStitch', pages: 8 },
      ['ORDER_FIELD', '/foldCatalog'],
    ],
    ['heavy paper folded twice', { ...map, stock: 'silk-250-half-lg' }, ['PLAN_IMPOSSIBLE', '/stock']],
  ])('is refused with its place: %s', (_what, order, expected) => {
    expect(faults(order)).toContainEqual(expected);
  });

  it('of every code that is planned folds to its pages in order', () => {
    for (const code of leafletCodes) {
      const pages = Number(/^F(\d+)/.exec(code)![1]);
      const order: Order = { ...workshops, trimWidthMm: 74, trimHeightMm: 105, pages, foldCatalog: code };
      checkFolding(order, plan({ ...order, stock: 'silk-115-full-sg' }));
    }
  });
});

describe('a leaflet with folds of its own', () => {
  // Source: the trade's Z fold: three equal panels, the second fold the other way (common practice, no source).
  it('is laid out by unfolding it', () => {
    const folds: FoldStep[] = [
      { from: 'Left', to: 'Up', travelMm: 99 },
      { from: 'Left', to: 'Down', travelMm: 99 },
    ];
    expect(leafletByFolds(folds, 99, 210)).toMatchObject({ columnsMm: [99, 99, 99], rowsMm: [210] });
    const { foldCatalog: _code, ...rest } = workshops;
    const order: Order = { ...rest, trimWidthMm: 99, folds };
    checkFolding(order, plan(order));
  });

  const list = fc.array(
    fc.record({
      from: fc.constantFrom('Left' as const, 'Front' as const),
      to: fc.constantFrom('Up' as const, 'Down' as const),
      share: fc.constantFrom(0.6, 0.9, 1),
    }),
    { minLength: 1, maxLength: 4 },
  );

  it('has a crease through every layer under a fold, and closes to the ordered size', () => {
    fc.assert(
      fc.property(list, (drawn) => {
        // From the last fold back: no fold lays over more than the piece is long then.
        const lengths = { Left: 60, Front: 80 };
        const folds = drawn
          .toReversed()
          .map(({ from, to, share }): FoldStep => {
            const travelMm = Math.round(lengths[from] * share);
            lengths[from] += travelMm;
            return { from, to, travelMm };
          })
          .toReversed();
        const scheme = leafletByFolds(folds, 60, 80)!;
        const sum = (sizes: number[]): number => sizes.reduce((a, b) => a + b, 0);
        expect(sum(scheme.columnsMm)).toBeCloseTo(lengths.Left, 6);
        expect(sum(scheme.rowsMm)).toBeCloseTo(lengths.Front, 6);
        expect([...scheme.columnsMm, ...scheme.rowsMm].every((mm) => mm > 0)).toBe(true);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it('folds to its pages in order whenever it can be made', () => {
    let made = 0;
    fc.assert(
      fc.property(list, (drawn) => {
        const lengths = { Left: 105, Front: 148 };
        const folds = drawn
          .toReversed()
          .map(({ from, to }): FoldStep => {
            const travelMm = lengths[from];
            lengths[from] *= 2;
            return { from, to, travelMm };
          })
          .toReversed();
        const { foldCatalog: _code, ...rest } = workshops;
        const order: Order = {
          ...rest,
          trimWidthMm: 105,
          trimHeightMm: 148,
          stock: 'silk-115-full-sg',
          pages: 2 * 2 ** folds.length,
          folds,
        };
        const planned = planJob(order, plant);
        if (!planned.ok) return;
        made += 1;
        checkFolding(order, planned.value);
      }),
      { seed: 20261125, numRuns: 60 },
    );
    expect(made).toBeGreaterThan(20);
  });
});
