import { attributeOf } from '../../../xml/index.js';
import type { TicketNode } from '../ticket-check.js';

/** What stands behind "1.", the only major version; not a number where none is stated. */
export function minorVersion(stated: string | undefined | null): number {
  const [, minor] = /^1\.([0-9]+)$/.exec(stated?.trim() ?? '') ?? [];
  return minor === undefined ? Number.NaN : Number(minor);
}

/** The minor version that holds for a node: its own, else that of the nearest node around that states one. */
export function versionOfNode(node: TicketNode): number {
  for (let at: TicketNode | undefined = node; at !== undefined; at = at.parent) {
    const own = minorVersion(attributeOf(at.element, 'Version'));
    if (!Number.isNaN(own)) return own;
  }
  return Number.NaN;
}
