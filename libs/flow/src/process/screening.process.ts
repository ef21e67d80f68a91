import type { ProcessType } from './process-type.js';

/** Makes the halftone of each separation. Ruling and angles are the workstation's own setting until a ticket names them. */
export const screening: ProcessType = {
  name: 'Screening',
  takes: (name) => (name === 'RunList' ? {} : undefined),
  makes: 'RunList',
  resources: () => [
    {
      resource: { key: 'screening', name: 'ScreeningParams', class: 'Parameter', shared: false },
      usage: 'Input',
    },
  ],
  checks: () => [],
};
