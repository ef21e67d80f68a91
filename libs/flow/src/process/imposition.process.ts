import { layout } from './build/layout.js';
import { documentPages } from './build/run-lists.js';
import type { ProcessType } from './process-type.js';

/** Puts the pages on the sheets of the layout. */
export const imposition: ProcessType = {
  name: 'Imposition',
  takes: () => undefined,
  makes: 'RunList',
  resources: (scope) => [
    { resource: layout(scope.plan), usage: 'Input' },
    {
      resource: documentPages(scope),
      usage: 'Input',
      role: 'Document',
      minStatus: scope.files.length === 0 ? 'Incomplete' : undefined,
    },
  ],
  checks: () => [],
};
