import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { valueIn } from '../../../../test/kit/value-in.js';
import { gatheredSizes } from '../imposition/sections.js';
import type { Order } from '../order.js';
import type { Plan } from '../plan.js';
import { planJob } from './plan-job.js';

const plant = demoPlant();
const scripts: Order = {
  jobId: 'S',
  name: 'Ten short plays',
  quantity: 300,
  trimWidthMm: 148,
  trimHeightMm: 210,
  pages: 160,
  binding: 'SoftCover',
  stock: 'book-80-full-lg',
  inksFront: ['Black'],
  inksBack: ['Black'],
  cover: {
    stock: 'silk-250-half-lg',
    pages: 4,
    inksFront: ['Cyan', 'Magenta', 'Yellow', 'Black'],
    inksBack: [],
  },
};

function plan(order: Order): Plan {
  return valueIn(planJob(order, plant));
}

function faults(order: Order): [code: string, path: string | null][] {
  const planned = planJob(order, plant);
  return planned.ok ? [] : planned.problems.map((p) => [p.code, p.path]);
}

describe('plan of a book with a glued spine', () => {
  // Source: own invented demo oracle, D1-11 and D2-09 (covers there good to a few sheets: 163 and 307, 87 and 229).
  it.each([
    [300, 160, 5, 363, 437, 166, 310],
    [150, 96, 3, 208, 281, 90, 232],
  ])(
    '%i copies of %i pages: %i sections',
    (quantity, pages, sections, good, toPress, coverGood, coverToPress) => {
      const planned = plan({ ...scripts, quantity, pages });
      const bodies = planned.sheets.filter((s) => s.stock === scripts.stock);
      expect(bodies).toHaveLength(sections);
      expect(new Set(bodies.map((s) => `${s.goodSheets} ${s.sheetsToPress} ${s.plates}`))).toEqual(
        new Set([`${good} ${toPress} 2`]),
      );
      expect(planned.sheets.at(-1)).toMatchObject({
        goodSheets: coverGood,
        sheetsToPress: coverToPress,
        copiesUp: 2,
      });
    },
  );

  // Source: handbook t02-spine: half the pages × caliper + two covers: 80 × 0.120 + 2 × 0.238 = 10.076 mm.
  it('makes the spine as thick as its leaves and its cover', () => {
    const { binding } = plan(scripts);
    expect(binding.spineMm).toBeCloseTo(10.076, 3);
    const [a = 0, b = 0, c = 0, d = 0] = binding.coverScoresMm ?? [];
    expect([a, b, c, d].map((mm) => mm.toFixed(3))).toEqual(['146.000', '151.000', '161.076', '166.076']);
  });

  it('leaves room for the spine between the last page and the first, and for milling at the spine of every leaf', () => {
    const planned = plan(scripts);
    const [last, first] = planned.sheets.at(-1)!.front;
    expect([last?.page, first?.page]).toEqual([4, 1]);
    const [dx, dy] = [first!.xMm - last!.xMm, first!.yMm - last!.yMm];
    expect(Math.hypot(dx, dy)).toBeCloseTo(148 + 10.076, 3);
    // Pages that meet at a fold along their spines stand apart by what is ground off both.
    const cells = planned.sheets[0]!.front;
    const [one, other] = [cells.find((cell) => cell.page === 1)!, cells.find((cell) => cell.page === 32)!];
    const apart = one.rotation % 180 === 0 ? Math.abs(one.xMm - other.xMm) : Math.abs(one.yMm - other.yMm);
    expect(apart).toBeCloseTo(148 + 2 * 3, 6);
  });

  it('gathers in reading order, without creep, and binds, cools and trims after it', () => {
    const planned = plan(scripts);
    expect(planned.signatures.map((s) => [s.pages[0], s.creepMm])).toEqual([
      [1, 0],
      [33, 0],
      [65, 0],
      [97, 0],
      [129, 0],
      [1, 0],
    ]);
    expect(planned.binding.signatureOrder.at(-1)).toBe('cover');
    const [gather, bind, trim] = ['gather', 'bind', 'trim'].map((id) =>
      planned.steps.find((s) => s.id === id),
    );
    expect([gather?.device, bind?.device, trim?.device]).toEqual(['gather-bench', 'binder', 'guillotine']);
    expect(bind?.inputs.map((i) => [i.from, i.unit])).toEqual([
      ['gather', 'blocks'],
      ['cut-6', 'blocks'],
    ]);
    expect(bind?.waitAfterS).toBe(1200);
    expect([trim?.inUnit, trim?.outAmount, trim?.unit]).toEqual(['books', 300, 'copies']);
    expect(planned.cautions.join('\n')).toContain('blank dummy');
  });

  // Source: handbook, section 2: a section of 4 pages never lies first or last.
  it('lays small sections between large ones', () => {
    expect(gatheredSizes(52, [16, 8, 4])).toEqual([16, 16, 4, 16]);
    expect(gatheredSizes(28, [16, 8, 4])).toEqual([16, 4, 8]);
    expect(gatheredSizes(20, [16, 8, 4])).toBeNull();
  });

  it.each<[string, Order, [string, string]]>([
    ['without a cover', { ...scripts, cover: undefined as never }, ['ORDER_FIELD', '/cover']],
    ['thinner than the binder takes', { ...scripts, pages: 32 }, ['PLAN_IMPOSSIBLE', '/pages']],
    ['of pages that make no leaves', { ...scripts, pages: 162 }, ['PLAN_IMPOSSIBLE', '/pages']],
    [
      'sewn, for which nothing is there',
      { ...scripts, binding: 'ThreadSewing' },
      ['PLAN_NOT_YET', '/binding'],
    ],
  ])('is refused with its place: %s', (_what, order, expected) => {
    expect(faults(order)).toContainEqual(expected);
  });
});
