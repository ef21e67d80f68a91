import { attributeOf } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** The root states the version that the ticket was written for; the schema cannot tell the root from other nodes. */
export const statedVersion: TicketCheck = {
  number: null,
  name: 'stated version',
  run({ doc }, findings) {
    if (attributeOf(doc.root, 'Version') === undefined) findings.missing(doc.root, 'attribute Version');
  },
};
