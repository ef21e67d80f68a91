import type { Plan } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import { error, type Problem, pointsFromMm } from '#libs/kernel';
import { isCover } from './build/components.js';
import type { ProcessType } from './process-type.js';

/** Glues the spine of a block and lays a scored cover round it. */
export const coverApplication: ProcessType = {
  name: 'CoverApplication',
  takes: (name, { plan }, from) => {
    if (name !== 'Component') return undefined;
    return isCover(plan, from) ? { role: 'Cover' } : {};
  },
  makes: 'Component',
  resources: ({ plan }) => [
    {
      resource: {
        key: 'cover',
        name: 'CoverApplicationParams',
        class: 'Parameter',
        shared: false,
        children: [
          element('GlueApplication', { GluingTechnique: 'SpineGluing' }, [
            element('GlueLine', { AreaGlue: true }),
          ]),
          ...scores(plan),
        ],
      },
      usage: 'Input',
    },
  ],
  checks: (plan): Problem[] =>
    (plan.binding.coverScoresMm ?? []).length > 0
      ? []
      : [error('PLAN_MISSING', 'The plan does not say where the cover is scored.', { path: '/binding' })],
};

/** Scores from the left edge of the open cover, pressed from its inside. */
function scores(plan: Plan): readonly XmlElement[] {
  return (plan.binding.coverScoresMm ?? []).map((mm) =>
    element('Score', { Offset: pointsFromMm(mm), Side: 'FromInside' }),
  );
}
