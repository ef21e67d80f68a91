import type { Plan, PlanBlock, PlanSheet, PlanStep } from '#libs/craft';
import { element } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { isLast, sheetsOf } from './lookup.js';
import { points, shortText, token } from './values.js';

/** The blocks that a step cuts its sheet into. */
export function blocksOf(plan: Plan, step: PlanStep): readonly PlanBlock[] {
  const sheets = sheetsOf(plan, step).map((sheet) => sheet.name);
  return plan.blocks.filter((block) => sheets.includes(block.sheet));
}

/** Whether a step makes the open covers of the job. */
export function isCover(plan: Plan, step: PlanStep): boolean {
  return (
    step.types.includes('Cutting') && blocksOf(plan, step).some(({ signature }) => signature === 'cover')
  );
}

/** Whether what a step makes is told apart by block. */
export function isDivided(plan: Plan, step: PlanStep): boolean {
  return step.types.includes('Cutting') && blocksOf(plan, step).length > 1;
}

const FOLDED = [
  'Folding',
  'Collecting',
  'Stitching',
  'Gathering',
  'SpinePreparation',
  'CoverApplication',
  'Trimming',
];

/** Sheets, blocks, signatures or copies that a step makes; lengths in points, the third dimension is the thickness. */
export function madeComponent(plan: Plan, step: PlanStep): Pick<ResourceDraft, 'attributes' | 'children'> {
  const folded = step.types.some((type) => FOLDED.includes(type));
  const last = isLast(plan, step);
  const [sheet] = sheetsOf(plan, step);
  return {
    attributes: {
      ComponentType: `${folded ? 'Block' : 'Sheet'} ${last ? 'FinalProduct' : 'PartialProduct'}`,
      DescriptiveName: shortText(last ? plan.name : (step.signature ?? step.sheet ?? step.id)),
      Unit: step.unit,
      SourceSheet: step.sheet,
      Dimensions: dimensions(plan, step, sheet, folded),
      PartIDKeys: isDivided(plan, step) ? 'BlockName' : undefined,
    },
    children: isDivided(plan, step)
      ? blocksOf(plan, step).map((block) =>
          element('Component', {
            BlockName: token(block.name),
            Dimensions: `${points(block.widthMm, block.heightMm)} ${points(thickness(plan))}`,
          }),
        )
      : [],
  };
}

const thickness = (plan: Plan): number => plan.product.stockCaliperUm / 1000;

function dimensions(
  plan: Plan,
  step: PlanStep,
  sheet: PlanSheet | undefined,
  folded: boolean,
): string | undefined {
  const { trimWidthMm, trimHeightMm, pages } = plan.product;
  if (step.types.includes('Trimming')) {
    return points(trimWidthMm, trimHeightMm, thickness(plan) * Math.ceil(pages / 2));
  }
  const [block] = step.types.includes('Cutting') ? blocksOf(plan, step) : [];
  if (block) return points(block.widthMm, block.heightMm, thickness(plan));
  return folded || !sheet ? undefined : points(sheet.sheetWidthMm, sheet.sheetHeightMm, thickness(plan));
}
