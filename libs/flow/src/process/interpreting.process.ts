import { colorantControl } from './build/colorants.js';
import type { ProcessType } from './process-type.js';

/** Reads the imposed pages; what it makes is only handed on inside the node. */
export const interpreting: ProcessType = {
  name: 'Interpreting',
  takes: (name) => (name === 'RunList' ? {} : undefined),
  makes: null,
  resources: ({ plan }) => [
    {
      resource: {
        key: 'interpreting',
        name: 'InterpretingParams',
        class: 'Parameter',
        shared: false,
        attributes: { Polarity: 'Positive' },
      },
      usage: 'Input',
    },
    { resource: colorantControl(plan), usage: 'Input' },
  ],
  checks: () => [],
};
