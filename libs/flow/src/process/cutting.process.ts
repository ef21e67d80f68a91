import type { PlanBlock } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import { error, type Problem } from '#libs/kernel';
import { blocksOf } from './build/components.js';
import { cutLines } from './build/cut-lines.js';
import { sheetsOf } from './build/lookup.js';
import { points, token } from './build/values.js';
import type { ProcessType } from './process-type.js';

/** Cuts printed sheets into blocks, by the programme of the plan. */
export const cutting: ProcessType = {
  name: 'Cutting',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: (scope) => [
    {
      resource: {
        key: 'cutting',
        name: 'CuttingParams',
        class: 'Parameter',
        shared: false,
        children: [
          ...blocksOf(scope.plan, scope.step).map(cutBlock),
          ...sheetsOf(scope.plan, scope.step).flatMap((sheet) => cutLines(scope.plan, sheet)),
        ],
      },
      usage: 'Input',
    },
  ],
  checks: (plan, step): Problem[] => {
    const sheets = sheetsOf(plan, step);
    if (!plan.cuts.some((cut) => sheets.some(({ name }) => name === cut.sheet))) {
      return [error('PLAN_MISSING', `The plan has no cuts for ${step.id}.`, { path: '/cuts' })];
    }
    return blocksOf(plan, step)
      .filter((block) => {
        const sheet = sheets.find(({ name }) => name === block.sheet)!;
        return !fits(block, sheet.sheetWidthMm, sheet.sheetHeightMm);
      })
      .map((block) =>
        error('PLAN_IMPOSSIBLE', `Block ${block.name} lies outside its sheet.`, { path: '/blocks' }),
      );
  },
};

// Positions come from sums of millimetres: a block that ends at the edge may miss it in the last binary digit.
const SLACK_MM = 0.01;

function fits({ xMm, yMm, widthMm, heightMm }: PlanBlock, width: number, height: number): boolean {
  const inside = xMm >= -SLACK_MM && yMm >= -SLACK_MM;
  return inside && xMm + widthMm <= width + SLACK_MM && yMm + heightMm <= height + SLACK_MM;
}

function cutBlock(block: PlanBlock): XmlElement {
  return element('CutBlock', {
    BlockName: token(block.name),
    BlockType: 'CutBlock',
    BlockSize: points(block.widthMm, block.heightMm),
    BlockTrf: `1 0 0 1 ${points(block.xMm, block.yMm)}`,
  });
}
