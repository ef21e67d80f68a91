import type { Plan, PlanFolding, PlanStep } from '#libs/craft';
import { element } from '#libs/jdf';
import { error, type Problem, pointsFromMm } from '#libs/kernel';
import { blocksOf, isDivided } from './build/components.js';
import { points, token } from './build/values.js';
import type { PartKeys, ProcessType } from './process-type.js';

/** Folds a sheet or a block into a signature. */
export const folding: ProcessType = {
  name: 'Folding',
  takes(name, { plan, step }, from) {
    const fold = foldingOf(plan, step);
    if (name !== 'Component' || fold === undefined) return undefined;
    return {
      orientation: orientationOf(fold),
      parts: isDivided(plan, from) ? partsFor(plan, step, from) : [],
    };
  },
  makes: 'Component',
  resources({ plan, step }) {
    const fold = foldingOf(plan, step);
    const catalogue = plan.signatures.find(({ name }) => name === step.signature)?.foldCatalog;
    return [
      {
        resource: {
          key: 'folding',
          name: 'FoldingParams',
          class: 'Parameter',
          shared: false,
          attributes: {
            DescriptionType: 'FoldProc',
            // Any scheme of its page count: the older generation has no code for that, and the folds say it.
            FoldCatalog: catalogue?.endsWith('-X') ? undefined : catalogue || undefined,
            FoldSheetIn: fold && points(...fold.sheetInMm),
          },
          children: (fold?.folds ?? []).map(({ fold: { from, to, travelMm } }) =>
            element('Fold', { From: from, To: to, Travel: pointsFromMm(travelMm) }),
          ),
        },
        usage: 'Input',
      },
    ];
  },
  checks(plan, step): Problem[] {
    const fold = foldingOf(plan, step);
    if (fold === undefined) {
      return [error('PLAN_MISSING', `The plan does not say how ${step.id} folds.`, { path: '/folding' })];
    }
    const longest = Math.max(...fold.sheetInMm);
    return fold.folds
      .filter((row) => row.fold.travelMm <= 0 || row.fold.travelMm >= longest)
      .map((row) =>
        error('PLAN_IMPOSSIBLE', `Fold ${row.order} of ${fold.signature} lies outside the piece.`, {
          path: '/folding',
        }),
      );
  },
};

/** Every block that the signature is folded from: several where it is on the sheet more than once. */
function partsFor(plan: Plan, step: PlanStep, from: PlanStep): readonly PartKeys[] {
  return blocksOf(plan, from)
    .filter((block) => block.signature === step.signature)
    .map((block) => ({ BlockName: token(block.name) }));
}

function foldingOf(plan: Plan, step: PlanStep): PlanFolding | undefined {
  return plan.folding.find((row) => row.signature === step.signature);
}

// Turned over sideways, then turned counter-clockwise: the product of Flip180 and the rotation.
const TURNED_OVER = { 0: 'Flip180', 90: 'Flip90', 180: 'Flip0', 270: 'Flip270' } as const;

/** How the piece lies when it is fed, in the standard's orientation names. */
function orientationOf({ startSide, startRotationDeg }: PlanFolding): string {
  return startSide === 'front' ? `Rotate${startRotationDeg}` : TURNED_OVER[startRotationDeg];
}
