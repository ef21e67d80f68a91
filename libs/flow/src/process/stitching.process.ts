import { error, type Problem } from '#libs/kernel';
import { points } from './build/values.js';
import type { ProcessType } from './process-type.js';

/** Wire stitches: through the saddle, or from the side through a block. */
export const stitching: ProcessType = {
  name: 'Stitching',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: ({ plan }) => {
    const positions = plan.binding.stitchPositionsMm ?? [];
    return [
      {
        resource: {
          key: 'stitching',
          name: 'StitchingParams',
          class: 'Parameter',
          shared: false,
          attributes: {
            StitchType: plan.binding.kind === 'SideStitch' ? 'Side' : 'Saddle',
            NumberOfStitches: positions.length,
            StitchPositions: points(...positions),
            // The plan counts from the foot of the trimmed copy, and the assembly is jogged at the foot.
            StitchOrigin: 'TrimBoxJogSide',
          },
        },
        usage: 'Input',
      },
    ];
  },
  checks: (plan): Problem[] =>
    (plan.binding.stitchPositionsMm ?? []).length > 0
      ? []
      : [error('PLAN_MISSING', 'The plan does not say where the stitches are.', { path: '/binding' })],
};
