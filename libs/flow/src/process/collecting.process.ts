import { assembly } from './build/assembly.js';
import type { ProcessType } from './process-type.js';

/** Lays the signatures of a saddle over each other, the innermost first. */
export const collecting: ProcessType = {
  name: 'Collecting',
  takes: (name) => (name === 'Component' ? {} : undefined),
  makes: 'Component',
  resources: ({ plan }) => [
    {
      resource: { key: 'collecting', name: 'CollectingParams', class: 'Parameter', shared: false },
      usage: 'Input',
    },
    { resource: assembly(plan), usage: 'Input' },
  ],
  checks: () => [],
};
