import { attributeOf } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** JDF/@Template: a template is there to make jobs from, never to be executed. */
export const template: TicketCheck = {
  number: 13,
  name: 'template',
  run({ nodes }, findings) {
    for (const { element } of nodes) {
      if (attributeOf(element, 'Template')?.trim() !== 'true') continue;
      findings.error('JDF_TEMPLATE', element, `${element.name} is a template: it must not be executed.`);
    }
  },
};
