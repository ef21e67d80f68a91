import { pointsFromMm } from '#libs/kernel';
import type { ProcessType } from './process-type.js';

/** Trims head, foot and face to the finished size. */
export const trimming: ProcessType = {
  name: 'Trimming',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: ({ plan }) => [
    {
      resource: {
        key: 'trimming',
        name: 'TrimmingParams',
        class: 'Parameter',
        shared: false,
        attributes: {
          TrimmingType: 'Detailed',
          Width: pointsFromMm(plan.product.trimWidthMm),
          Height: pointsFromMm(plan.product.trimHeightMm),
        },
      },
      usage: 'Input',
    },
  ],
  checks: () => [],
};
