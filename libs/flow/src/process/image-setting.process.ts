import { error, type Problem } from '#libs/kernel';
import { usedAmount } from './build/amounts.js';
import { platesOf, sheetsOf } from './build/lookup.js';
import { plateMedia } from './build/media.js';
import { partsOf } from './build/run-lists.js';
import { distinct } from './build/values.js';
import type { LinkDraft, ProcessType, StepScope } from './process-type.js';

/** Images the plates of a sheet: one for each side and separation. */
export const imageSetting: ProcessType = {
  name: 'ImageSetting',
  takes: (name, { plan, step }) => (name === 'RunList' ? { parts: partsOf(plan, step) } : undefined),
  makes: 'ExposedMedia',
  resources: (scope) => [params(scope), ...rawPlates(scope)],
  checks: (plan, step): Problem[] =>
    platesOf(plan, step).length > 0
      ? []
      : [error('PLAN_MISSING', `The plan lists no plates for ${step.id}.`, { path: '/plateList' })],
};

function params({ plan, step }: StepScope): LinkDraft {
  const [sheet] = sheetsOf(plan, step);
  return {
    resource: {
      key: 'image-setting',
      name: 'ImageSetterParams',
      class: 'Parameter',
      shared: false,
      attributes: { Polarity: 'Positive', SourceWorkStyle: sheet?.workStyle },
    },
    usage: 'Input',
  };
}

function rawPlates({ plan, step, plant, uses }: StepScope): readonly LinkDraft[] {
  const presses = distinct(sheetsOf(plan, step).map((sheet) => sheet.press));
  return presses.map((press): LinkDraft => {
    const media = plateMedia(press, plant);
    const own = platesOf(plan, step).filter(
      (plate) => plan.sheets.find(({ name }) => name === plate.sheet)?.press === press,
    );
    const sameUnit = uses.filter((row) => row.unit === 'plates');
    const use =
      sameUnit.find((row) => row.item === media.attributes?.ProductID) ??
      (presses.length === 1 ? sameUnit[0] : undefined);
    return {
      resource: media,
      usage: 'Input',
      amounts: [use === undefined ? { planned: own.length } : usedAmount(use)],
    };
  });
}
