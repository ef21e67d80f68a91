import { assembly } from './build/assembly.js';
import type { ProcessType } from './process-type.js';

/** Lays signatures one behind the other into a block. */
export const gathering: ProcessType = {
  name: 'Gathering',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: ({ plan }) => [
    {
      resource: { key: 'gathering', name: 'GatheringParams', class: 'Parameter', shared: false },
      usage: 'Input',
    },
    { resource: assembly(plan), usage: 'Input' },
  ],
  checks: () => [],
};
