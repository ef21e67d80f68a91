import { attributeOf } from '../../xml/index.js';
import { minorVersion, versionOfNode } from './look-up/versions.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * The root states the version that the ticket was written for (JDF/@Version); the schema cannot tell the root from other
 * nodes. And no node allows less than its own version (JDF/@MaxVersion).
 */
export const statedVersion: TicketCheck = {
  number: 13,
  name: 'stated version',
  run({ doc, nodes }, findings) {
    if (attributeOf(doc.root, 'Version') === undefined) findings.missing(doc.root, 'attribute Version');
    for (const node of nodes) {
      const { element } = node;
      if (!(minorVersion(attributeOf(element, 'MaxVersion')) < versionOfNode(node))) continue;
      const message = `MaxVersion of ${element.name} is lower than its Version.`;
      findings.warning('JDF_VERSION', element, message, 'Raise MaxVersion, or write for that version.');
    }
  },
};
