import fc from 'fast-check';
import { demoPlant } from '../../../../test/kit/demo-plant.js';
import {
  cutByPlan,
  foldByPlan,
  largestOverlapMm,
  pageBehind,
  seenFromFront,
} from '../../../../test/kit/read-plan.js';
import { leafletCodes } from '../imposition/leaflet.js';
import type { CoverOrder, Order } from '../order.js';
import type { Plan, PlanSheet } from '../plan.js';
import { devicesOf } from '../plant.js';
import { planJob } from './plan-job.js';

const plant = demoPlant();
const process = ['Cyan', 'Magenta', 'Yellow', 'Black'];

const shape = fc.record({
  quantity: fc.integer({ min: 1, max: 20000 }),
  trimWidthMm: fc.integer({ min: 90, max: 300 }),
  trimHeightMm: fc.integer({ min: 140, max: 420 }),
  stock: fc.constantFrom(...plant.stocks.map((s) => s.id)),
  bleedMm: fc.constantFrom(0, 2, 3),
});
const inks = fc.constantFrom(process, process, ['Black'], ['Black', 'Festival Green']);

/** Formats and papers as booklets have them; many of the others are rightly refused. */
const bookShape = fc.record({
  quantity: fc.integer({ min: 1, max: 20000 }),
  trimWidthMm: fc.integer({ min: 105, max: 220 }),
  trimHeightMm: fc.integer({ min: 148, max: 300 }),
  stock: fc.constantFrom('silk-115-full-sg', 'offset-100-full-lg', 'silk-135-half-lg', 'book-80-full-lg'),
  bleedMm: fc.constantFrom(0, 2, 3),
});

const booklet: fc.Arbitrary<Order> = fc
  .record({ shape: bookShape, leaves: fc.integer({ min: 1, max: 16 }), front: inks, back: inks })
  .map(({ shape: s, leaves, front, back }) => ({
    jobId: 'P1',
    name: 'a booklet',
    ...s,
    pages: 4 * leaves,
    binding: 'SaddleStitch',
    inksFront: front,
    inksBack: back,
  }));

const cover: fc.Arbitrary<CoverOrder> = fc.record({
  stock: fc.constantFrom('silk-250-half-lg', 'offset-240-half-sg'),
  pages: fc.constant(4 as const),
  inksFront: fc.constantFrom(process, ['Black', 'Festival Green']),
  inksBack: fc.constantFrom([], ['Black']),
});

/** Books with a cover: stitched through the fold, or glued. */
const covered: fc.Arbitrary<Order> = fc
  .record({ booklet, cover, leaves: fc.integer({ min: 1, max: 60 }), glued: fc.boolean() })
  .map(({ booklet: order, cover: own, leaves, glued }) =>
    glued
      ? { ...order, cover: own, binding: 'SoftCover', pages: 4 * leaves, stock: 'book-80-full-lg' }
      : { ...order, cover: own },
  );

const flat: fc.Arbitrary<Order> = fc
  .record({ shape, back: fc.boolean(), front: inks })
  .map(({ shape: s, back, front }) => ({
    jobId: 'P2',
    name: 'a flat piece',
    ...s,
    pages: back ? 2 : 1,
    binding: 'None',
    inksFront: front,
    inksBack: back ? front : [],
  }));

/** Flat work in versions that share some plates, and leaflets of the codes that are planned. */
const versioned: fc.Arbitrary<Order> = fc
  .record({ order: flat, shares: fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 2, maxLength: 5 }) })
  .map(({ order, shares }) => ({
    ...order,
    quantity: shares.reduce((a, b) => a + b, 0),
    versions: shares.map((quantity, i) => ({ name: `V ${i + 1}`, quantity, changes: ['Black'] })),
  }));
const leaflet: fc.Arbitrary<Order> = fc
  .record({ order: flat, code: fc.constantFrom(...leafletCodes), narrow: fc.integer({ min: 60, max: 150 }) })
  .map(({ order, code, narrow }) => ({
    ...order,
    trimWidthMm: narrow,
    trimHeightMm: Math.round(narrow * 1.4),
    pages: Number(/^F(\d+)/.exec(code)?.[1]),
    foldCatalog: code,
    inksBack: process,
  }));

/** Plans that can be made; how many orders were refused is counted, so that the properties do not hold of nothing. */
function plans(orders: fc.Arbitrary<Order>, check: (plan: Plan, order: Order) => void): number {
  let made = 0;
  fc.assert(
    fc.property(orders, (order) => {
      const planned = planJob(order, plant);
      if (!planned.ok) {
        expect(planned.problems.every((p) => p.path !== null || p.code === 'PLANT_DEFINITION')).toBe(true);
        return;
      }
      made += 1;
      check(planned.value, order);
    }),
    { numRuns: 100, seed: 20261125 },
  );
  return made;
}

const creepOf = (plan: Plan): number => Math.max(...plan.signatures.map((s) => s.creepMm));

function printableFaults(plan: Plan, sheet: PlanSheet): string[] {
  const press = devicesOf(plant, 'press').find((p) => p.id === sheet.press)!;
  const bleed = sheet.bleedMm;
  const least = Math.min(bleed, plant.defaults.minBleedMm);
  const creep = creepOf(plan);
  return [...sheet.front, ...sheet.back].flatMap((c) => {
    const right = sheet.sheetWidthMm - c.xMm - c.widthMm;
    const above = sheet.sheetHeightMm - c.yMm - c.heightMm;
    const ok =
      c.xMm - bleed >= press.freeEdgeMm - creep - 1e-6 &&
      right - bleed >= press.freeEdgeMm - creep - 1e-6 &&
      c.yMm - bleed >= press.gripperMm - creep - 1e-6 &&
      above - least >= press.freeEdgeMm + press.colourBarMm - creep - 1e-6;
    return ok ? [] : [`page ${c.page} at ${c.xMm}, ${c.yMm}`];
  });
}

// Each property is what the plan document promises its readers (plan.ts); the reader here shares no code with the planner.
describe('every plan of a book', () => {
  it.each([
    ['of one stock', booklet],
    ['with a cover', covered],
  ])(
    '%s folds to its pages in order, heads up, inside the printable area, backs behind fronts',
    (_what, orders) => {
      const made = plans(orders, (plan) => {
        for (const sheet of plan.sheets) {
          for (const cell of sheet.back.length === 0 ? [] : sheet.front) {
            const behind = pageBehind({ ...cell }, sheet);
            expect(behind).toBe(cell.page % 2 === 1 ? cell.page + 1 : cell.page - 1);
          }
          expect(largestOverlapMm(sheet.front)).toBeLessThanOrEqual(2 * creepOf(plan) + 1e-6);
          expect(largestOverlapMm(sheet.back)).toBeLessThanOrEqual(2 * creepOf(plan) + 1e-6);
          expect(printableFaults(plan, sheet)).toEqual([]);
        }
        for (const folding of plan.folding) {
          const signature = plan.signatures.find((s) => s.name === folding.signature)!;
          const folded = foldByPlan(plan, folding);
          expect(folded.pages).toEqual(signature.pages);
          expect(folded.headsUp).toBe(true);
          expect(folded.apartMm).toBeLessThanOrEqual(2 * signature.creepMm + 1e-3);
          expect(folded.startsAt.map((mm) => mm.toFixed(3))).toEqual(
            folding.sheetInMm.map((mm) => mm.toFixed(3)),
          );
          if (folding.lipMm !== undefined) expect(folding.lipMm).toBeGreaterThanOrEqual(8);
        }
        const cells = plan.sheets.flatMap((s) => [...s.front, ...s.back]);
        const printed = cells.filter((c) => c.part === 'body').map((c) => c.page);
        expect([...new Set(printed)].toSorted((a, b) => a - b)).toEqual(
          Array.from({ length: plan.product.pages }, (_, i) => i + 1),
        );
        const names = plan.signatures.map((s) => s.name);
        expect(plan.binding.signatureOrder.toSorted()).toEqual(names.toSorted());
        for (const block of plan.blocks.filter((b) => b.signature === 'cover')) {
          const { headMm, footMm, faceMm } = plan.binding.trim;
          const sides = [
            2 * plan.product.trimWidthMm + (plan.binding.spineMm ?? 0) + 2 * faceMm,
            plan.product.trimHeightMm + headMm + footMm,
          ];
          const own = [block.widthMm, block.heightMm].map((mm) => mm.toFixed(3));
          expect(own.toSorted()).toEqual(sides.map((mm) => mm.toFixed(3)).toSorted());
        }
      });
      expect(made).toBeGreaterThan(20);
    },
  );
});

describe('every plan of flat work', () => {
  it('cuts to the ordered pieces and waste that together are the sheet', () => {
    const made = plans(flat, (plan, order) => {
      for (const sheet of plan.sheets) {
        const table = cutByPlan(plan, sheet);
        const area = [...table.values()].reduce((sum, b) => sum + b.w * b.h, 0);
        expect(area).toBeCloseTo(sheet.sheetWidthMm * sheet.sheetHeightMm, 2);
        const good = [...table].filter(([name]) => !name.startsWith('waste'));
        expect(good.map(([name]) => name).toSorted()).toEqual(plan.blocks.map((b) => b.name).toSorted());
        for (const [, box] of good) {
          const sizes = [box.w, box.h].toSorted((a, b) => a - b);
          const wanted = [order.trimWidthMm, order.trimHeightMm].toSorted((a, b) => a - b);
          expect(sizes.map((mm) => mm.toFixed(3))).toEqual(wanted.map((mm) => mm.toFixed(3)));
        }
        for (const cell of sheet.back) {
          const own = seenFromFront(cell, sheet);
          expect(
            sheet.front.some((f) => Math.abs(f.xMm - own.x) < 1e-3 && Math.abs(f.yMm - own.y) < 1e-3),
          ).toBe(true);
        }
        expect(plan.cuts.every((cut) => cut.gaugeMm >= 30)).toBe(true);
        expect(largestOverlapMm(sheet.front)).toBeLessThanOrEqual(1e-6);
        expect(printableFaults(plan, sheet)).toEqual([]);
      }
    });
    expect(made).toBeGreaterThan(30);
  });
});

describe('amounts of every plan', () => {
  it('come out of one step as they go into the next', () => {
    const made = plans(fc.oneof(booklet, flat, covered, versioned, leaflet), (plan) => {
      for (const sheet of plan.sheets) {
        const parts = sheet.goodSheets + sheet.makereadySheets + sheet.runningWasteSheets;
        expect(sheet.sheetsToPress).toBe(parts);
        const passes = plan.steps.filter(
          (s) => s.sheet === sheet.name && s.types.includes('ConventionalPrinting'),
        );
        expect(sheet.impressions).toBe(sheet.sheetsToPress * passes.length);
      }
      for (const step of plan.steps) {
        for (const input of step.inputs) {
          const from = plan.steps.find((s) => s.id === input.from)!;
          expect(from.unit).toBe(input.unit);
          const takers = plan.steps.flatMap((s) => s.inputs.filter((i) => i.from === from.id));
          expect(takers.reduce((sum, i) => sum + i.amount, 0)).toBe(from.outAmount);
          expect(step.after).toContain(from.id);
        }
        const overs = plan.overs.lines.find((l) => l.step === step.id);
        if (overs !== undefined && step.inUnit === step.unit) {
          const share = 1 - overs.runningPct / 100;
          expect(step.inAmount).toBe(Math.ceil(step.outAmount / share - 1e-9) + overs.setupSheets);
        }
        expect(plant.devices.some((d) => d.id === step.device)).toBe(true);
      }
      const { lines, amount } = plan.totals.cost;
      expect(Math.round(lines.reduce((sum, l) => sum + l.amount, 0) * 100)).toBe(Math.round(amount * 100));
      expect(plan.plateList).toHaveLength(plan.totals.plates);
      for (const change of plan.changeovers) {
        const ends = change.tasks.map((t) => t.startS + t.durationS);
        expect(Math.max(...ends)).toBe(change.durationS);
        const minder = change.tasks.filter((t) => t.who === 'press minder');
        for (const a of minder) {
          for (const b of minder.filter((t) => t !== a && t.durationS > 0 && a.durationS > 0)) {
            expect(a.startS + a.durationS <= b.startS || b.startS + b.durationS <= a.startS).toBe(true);
          }
        }
      }
    });
    expect(made).toBeGreaterThan(30);
  });
});
