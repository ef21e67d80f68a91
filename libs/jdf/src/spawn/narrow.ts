import { keysOf, type PartKeys } from '../elements/part.js';
import { partsNamed } from '../partition/index.js';
import { isNode } from '../ticket/node.js';
import { attributeOf, childElements, withAttributes, type XmlElement } from '../xml/index.js';
import { elementsIn } from './inventory.js';
import { withExchanged, withoutChildren } from './layout.js';
import { fitsOne } from './scope.js';

/**
 * A node as it concerns some partitions only: without links, amounts and audits of others, and without the nodes inside
 * that concern only others. The nodes inside have the token as their SpawnID, which tells them from nodes made later.
 */
export function narrowed(node: XmlElement, parts: readonly PartKeys[], token: string): XmlElement {
  const other = (el: XmlElement): boolean => concernsOthers(el, parts);
  return withExchanged(
    withoutChildren(node, (child) => isNode(child) && other(child)),
    (child) => {
      if (isNode(child)) return withAttributes(narrowed(child, parts, token), { SpawnID: token });
      if (child.uri !== node.uri) return child;
      if (child.local === 'AuditPool') return withoutChildren(child, (audit) => auditOfOthers(audit, parts));
      if (child.local !== 'ResourceLinkPool') return child;
      return withExchanged(
        withoutChildren(child, (link) => !selects(link, parts)),
        (link) => narrowedLink(link, parts),
      );
    },
  );
}

function selects(el: XmlElement, parts: readonly PartKeys[]): boolean {
  const named = partsNamed(el);
  return named.length === 0 || named.some((part) => fitsOne(part, parts));
}

function narrowedLink(link: XmlElement, parts: readonly PartKeys[]): XmlElement {
  const fitting = withoutChildren(
    link,
    (child) => child.local === 'Part' && child.uri === link.uri && !fitsOne(keysOf(child), parts),
  );
  return withExchanged(fitting, (child) =>
    child.local === 'AmountPool' && child.uri === link.uri
      ? withoutChildren(child, (amount) => !selects(amount, parts))
      : child,
  );
}

function auditOfOthers(audit: XmlElement, parts: readonly PartKeys[]): boolean {
  if (!selects(audit, parts)) return true;
  return childElements(audit).some(
    (child) => attributeOf(child, 'rRef') !== undefined && !selects(child, parts),
  );
}

/** Whether some of a node's links are for other partitions and none names one of these. */
function concernsOthers(node: XmlElement, parts: readonly PartKeys[]): boolean {
  const links = elementsIn(node, 'ResourceLinkPool').filter((link) => partsNamed(link).length > 0);
  return links.length > 0 && !links.some((link) => selects(link, parts));
}
