import { attributeOf, descendants } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** Standard reference, section 9, check 2: no ID is used twice in a document. */
export const uniqueIds: TicketCheck = {
  number: 2,
  name: 'unique IDs',
  run({ doc, ids }, findings) {
    for (const el of descendants(doc.root)) {
      const id = el.uri === doc.root.uri ? attributeOf(el, 'ID') : undefined;
      const first = id === undefined ? undefined : ids.get(id);
      if (first === undefined || first === el) continue;
      const hint = `The first is the ${first.name} of line ${first.line}.`;
      findings.error('JDF_ID_DOUBLE', el, `The ID "${id}" of ${el.name} occurs before.`, hint);
    }
  },
};
