import type { Plan, PlanCell, PlanStep } from '#libs/craft';
import { bookletPlan } from './booklet-plan.js';

/**
 * Two sections of eight pages (page order of two right-angle folds, sample strippingComplexExample, B2x2), each on its own
 * sheet, printed sheetwise in two passes with a spot ink on the fronts, folded with a lip, one collected into the other.
 */
export function sectionsPlan(): Plan {
  const plan = bookletPlan();
  const [prepress, plates, print, fold, stitch] = plan.steps as [
    PlanStep,
    PlanStep,
    PlanStep,
    PlanStep,
    PlanStep,
  ];
  const spot = 'Festival Green';
  const numbers = [1, 2];
  // The outer section has the first and the last pages.
  const outer = [1, 2, 3, 4, 13, 14, 15, 16];
  const inner = [5, 6, 7, 8, 9, 10, 11, 12];
  const sheets = numbers.map((n) => ({
    ...plan.sheets[0]!,
    name: `S${n}`,
    press: 'press-half',
    workStyle: 'WorkAndBack' as const,
    turn: 'sideways' as const,
    sheetWidthMm: 480,
    front: eightPages(n === 1 ? outer : inner, `body-${n}`, [7, 0, 4, 3]),
    back: eightPages(n === 1 ? outer : inner, `body-${n}`, [1, 6, 2, 5]),
    units: [...plan.sheets[0]!.units.slice(0, 4), { unit: 5, side: 'front' as const, ink: spot }],
    marks: [],
  }));
  return {
    ...plan,
    product: { ...plan.product, inksFront: [...plan.product.inksFront, spot] },
    signatures: numbers.map((n) => ({
      name: `body-${n}`,
      part: 'body',
      pages: n === 1 ? outer : inner,
      foldCatalog: 'F8-7',
      creepMm: 0.1,
    })),
    sheets,
    steps: [
      prepress,
      ...numbers.flatMap((n): PlanStep[] => {
        const of = { sheet: `S${n}` };
        const platesFrom = { from: `plates-${n}`, amount: 4, unit: 'plates' as const };
        return [
          { ...plates, ...of, id: `plates-${n}` },
          {
            ...print,
            ...of,
            id: `print-${n}-front`,
            side: 'front',
            pass: 1,
            after: [`plates-${n}`],
            inputs: [platesFrom],
          },
          {
            ...print,
            ...of,
            id: `print-${n}-back`,
            side: 'back',
            pass: 2,
            after: [`plates-${n}`, `print-${n}-front`],
            inputs: [platesFrom, { from: `print-${n}-front`, amount: 311, unit: 'sheets' }],
          },
          {
            ...fold,
            ...of,
            id: `fold-${n}`,
            signature: `body-${n}`,
            after: [`print-${n}-back`],
            inputs: [{ from: `print-${n}-back`, amount: 311, unit: 'sheets' }],
          },
        ];
      }),
      {
        ...stitch,
        after: ['fold-1', 'fold-2'],
        inputs: numbers.map((n) => ({ from: `fold-${n}`, amount: 305, unit: 'signatures' })),
      },
    ],
    plateList: numbers.flatMap((n) => [
      ...plan.plateList.map((plate) => ({
        ...plate,
        id: `S${n}-${plate.side}-${plate.ink}`,
        sheet: `S${n}`,
      })),
      { id: `S${n}-front-green`, sheet: `S${n}`, side: 'front' as const, ink: spot, version: '', unit: 5 },
    ]),
    blocks: numbers.map((n) => ({
      ...plan.blocks[0]!,
      name: `S${n}`,
      sheet: `S${n}`,
      widthMm: 480,
      signature: `body-${n}`,
      next: `fold-${n}`,
    })),
    folding: numbers.map((n) => ({
      ...plan.folding[0]!,
      signature: `body-${n}`,
      block: `S${n}`,
      sheetInMm: [480, 640],
      lipMm: 8,
      lipOn: 'high',
      folds: plan.folding[0]!.folds.slice(1),
    })),
    binding: { ...plan.binding, signatureOrder: ['body-1', 'body-2'] },
    totals: { ...plan.totals, inkG: { ...plan.totals.inkG, [spot]: 120 } },
  };
}

function eightPages(pages: readonly number[], signature: string, order: readonly number[]): PlanCell[] {
  return order.map((at, n) => ({
    part: 'body',
    page: pages[at]!,
    xMm: 30 + (n % 2) * 210,
    yMm: 20 + Math.floor(n / 2) * 305,
    widthMm: 210,
    heightMm: 297,
    rotation: n < 2 ? 0 : 180,
    signature,
  }));
}
