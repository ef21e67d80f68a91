import type { Plan, PlanStep } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import { pointsFromMm } from '#libs/kernel';
import { points } from './build/values.js';
import type { ProcessType } from './process-type.js';

/** Presses a line into paper that would break at a fold. */
export const creasing: ProcessType = {
  name: 'Creasing',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: ({ plan, step }) => [
    {
      resource: {
        key: 'creasing',
        name: 'CreasingParams',
        class: 'Parameter',
        shared: false,
        children: creases(plan, step),
      },
      usage: 'Input',
    },
  ],
  checks: () => [],
};

/** A crease for each fold: only what is folded once is creased, so that the piece lies open for it. */
function creases(plan: Plan, step: PlanStep): readonly XmlElement[] {
  const folding = plan.folding.find((row) => row.signature === step.signature);
  if (folding === undefined) return [];
  const [width, height] = folding.sheetInMm;
  return folding.folds.map(({ axis, positionMm }) =>
    element('Crease', {
      StartPosition: axis === 'y' ? points(positionMm, 0) : points(0, positionMm),
      WorkingPath: axis === 'y' ? points(0, height) : points(width, 0),
      WorkingDirection: 'Top',
      Travel: pointsFromMm(positionMm),
    }),
  );
}
