import type { Plant } from '#libs/craft';
import { devicesOf } from '#libs/craft';
import { pointsFromMm } from '#libs/kernel';
import { isCover } from './build/components.js';
import type { ProcessType } from './process-type.js';

/** Grinds the folds off a gathered block, so that glue reaches every leaf. */
export const spinePreparation: ProcessType = {
  name: 'SpinePreparation',
  takes: (name, { plan }, from) => (name === 'Component' && !isCover(plan, from) ? {} : undefined),
  makes: 'Component',
  resources: ({ plan, step, plant }) => {
    const depth = millingMm(plant, step.device);
    return [
      {
        resource: {
          key: 'spine',
          name: 'SpinePreparationParams',
          class: 'Parameter',
          shared: false,
          attributes: {
            Operations: 'Milling',
            MillingDepth: depth === undefined ? undefined : pointsFromMm(depth),
            WorkingLength: pointsFromMm(
              plan.product.trimHeightMm + plan.binding.trim.headMm + plan.binding.trim.footMm,
            ),
          },
        },
        usage: 'Input',
      },
    ];
  },
  checks: () => [],
};

function millingMm(plant: Plant | null, device: string): number | undefined {
  return plant === null ? undefined : devicesOf(plant, 'binder').find(({ id }) => id === device)?.millMm;
}
