import { attributeOf } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * The root states the version that the ticket was written for; the schema cannot tell the root from other nodes. And no
 * node allows less than its own version (standard reference, section 9, check 13).
 */
export const statedVersion: TicketCheck = {
  number: 13,
  name: 'stated version',
  run({ doc, nodes }, findings) {
    if (attributeOf(doc.root, 'Version') === undefined) findings.missing(doc.root, 'attribute Version');
    let around = Number.NaN;
    for (const { element, parent } of nodes) {
      const own = versionOf(attributeOf(element, 'Version'));
      if (parent === undefined) around = own;
      const version = Number.isNaN(own) ? around : own;
      if (!(versionOf(attributeOf(element, 'MaxVersion')) < version)) continue;
      const message = `MaxVersion of ${element.name} is lower than its Version.`;
      findings.warning('JDF_VERSION', element, message, 'Raise MaxVersion, or write for that version.');
    }
  },
};

/** What stands behind "1.", the only major version; not a number where none is stated. */
function versionOf(stated: string | undefined): number {
  const [, minor] = /^1\.([0-9]+)$/.exec(stated?.trim() ?? '') ?? [];
  return minor === undefined ? Number.NaN : Number(minor);
}
