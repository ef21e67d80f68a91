import { error, type Problem, pointsFromMm } from '#libs/kernel';
import { usedAmount } from './build/amounts.js';
import { colorantControl } from './build/colorants.js';
import { inkOf, inks } from './build/inks.js';
import { layout } from './build/layout.js';
import { passOf, platesOf, sheetsOf } from './build/lookup.js';
import { paper } from './build/media.js';
import { partsOf } from './build/run-lists.js';
import type { LinkDraft, ProcessType, ResourceDraft, StepScope } from './process-type.js';

/** Prints one pass of a sheet from plates. */
export const conventionalPrinting: ProcessType = {
  name: 'ConventionalPrinting',
  takes(name, { plan, step }) {
    if (name === 'ExposedMedia') return { role: 'Plate', parts: partsOf(plan, step) };
    return name === 'Component' ? {} : { parts: partsOf(plan, step) };
  },
  makes: 'Component',
  resources: (scope) => [
    { resource: printingParams(scope), usage: 'Input' },
    { resource: colorantControl(scope.plan, sheetsOf(scope.plan, scope.step)), usage: 'Input' },
    { resource: layout(scope.plan), usage: 'Input', parts: partsOf(scope.plan, scope.step) },
    ...fedPaper(scope),
    ...inkLinks(scope),
  ],
  checks: (plan, step): Problem[] => [
    ...(sheetsOf(plan, step).length === 1
      ? []
      : [error('PLAN_MISSING', `Printing step ${step.id} names no single sheet.`, { path: '/steps' })]),
    ...(platesOf(plan, step).length > 0
      ? []
      : [error('PLAN_MISSING', `The plan lists no plates for ${step.id}.`, { path: '/plateList' })]),
  ],
};

function printingParams({ plan, step }: StepScope): ResourceDraft {
  const [sheet] = sheetsOf(plan, step);
  return {
    key: 'printing',
    name: 'ConventionalPrintingParams',
    class: 'Parameter',
    shared: false,
    attributes: {
      PrintingType: 'SheetFed',
      PrintingTechnology: 'Offset',
      WorkStyle: sheet?.workStyle,
      FirstSurface: step.side === undefined ? undefined : step.side === 'front' ? 'Front' : 'Back',
      NonPrintableMarginBottom: sheet && pointsFromMm(sheet.gripperMm),
      NonPrintableMarginTop: sheet && sheet.tailMm > 0 ? pointsFromMm(sheet.tailMm) : undefined,
      // The speed that was planned with; the plan keeps amounts and seconds only.
      Speed: step.runS > 0 ? Math.round((step.inAmount / step.runS) * 3600) : undefined,
    },
  };
}

/** Paper is drawn once for each sheet; later passes are fed what the pass before has printed. */
function fedPaper({ plan, step, plant, uses }: StepScope): readonly LinkDraft[] {
  if (passOf(plan, step) > 1) return [];
  return sheetsOf(plan, step).map((sheet) => {
    const use = uses.find((row) => row.unit === 'sheets' && row.item === sheet.stock);
    return {
      resource: paper(plan, sheet, plant),
      usage: 'Input',
      amounts: [use === undefined ? { planned: sheet.sheetsToPress } : usedAmount(use)],
    };
  });
}

function inkLinks({ plan, step, uses }: StepScope): readonly LinkDraft[] {
  const own = platesOf(plan, step).map((plate) => plate.ink);
  if (own.length === 0) return [];
  const amounts = uses
    .filter((row) => row.unit === 'kg')
    .map((row) => ({ ...usedAmount(row), part: { Separation: inkOf(row.item) } }));
  return [
    {
      resource: inks(plan, sheetsOf(plan, step)),
      usage: 'Input',
      parts: [...new Set(own)].map((Separation) => ({ Separation })),
      amounts,
    },
  ];
}
