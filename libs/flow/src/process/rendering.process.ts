import type { ProcessType } from './process-type.js';

/** Turns the pages that were read into pixels, one channel for each separation. */
export const rendering: ProcessType = {
  name: 'Rendering',
  takes: (name) => (name === 'RunList' ? {} : undefined),
  makes: 'RunList',
  resources: () => [
    {
      resource: {
        key: 'rendering',
        name: 'RenderingParams',
        class: 'Parameter',
        shared: false,
        attributes: { Interleaved: false },
      },
      usage: 'Input',
    },
  ],
  checks: () => [],
};
