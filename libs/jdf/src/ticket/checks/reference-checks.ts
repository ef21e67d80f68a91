import { type Findings, splitTokens } from '../../codec/index.js';
import { attributeOf, firstChild, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { isVisible } from '../links.js';
import { nodeAround } from '../node.js';

/** All IDs of the ticket; a second use of one is a finding (standard reference, section 9, check 2). */
export function collectIds(elements: Iterable<XmlElement>, findings: Findings): Map<string, XmlElement> {
  const ids = new Map<string, XmlElement>();
  for (const el of elements) {
    const id = attributeOf(el, 'ID');
    if (id === undefined) continue;
    const first = ids.get(id);
    if (first === undefined) ids.set(id, el);
    else {
      const hint = `The first is the ${first.name} of line ${first.line}.`;
      findings.error('JDF_ID_DOUBLE', el, `The ID "${id}" of ${el.name} occurs before.`, hint);
    }
  }
  return ids;
}

/**
 * References of one element: that each leads somewhere, that link and resource go by the same name, and that the
 * resource lies in the pool of the node or of one around it (standard reference, section 9, checks 1, 3 and 4).
 */
export function checkReferences(
  doc: XmlDocument,
  el: XmlElement,
  ids: ReadonlyMap<string, XmlElement>,
  findings: Findings,
): void {
  const single = attributeOf(el, 'rRef');
  if (single !== undefined) {
    const target = resolve(el, 'rRef', single, ids, findings);
    if (target !== undefined) checkTarget(doc, el, target, findings);
  }
  const subReference = attributeOf(el, 'rSubRef');
  if (subReference !== undefined) resolve(el, 'rSubRef', subReference, ids, findings);
  for (const id of splitTokens(attributeOf(el, 'rRefs') ?? '')) resolve(el, 'rRefs', id, ids, findings);
  // The node that an audit of a spawned part names may be left behind in the ticket that it came from.
  const node = attributeOf(el, 'jRef');
  if (node !== undefined && firstChild(doc.root, 'AncestorPool') === undefined) {
    resolve(el, 'jRef', node, ids, findings);
  }
}

function resolve(
  el: XmlElement,
  attribute: string,
  id: string,
  ids: ReadonlyMap<string, XmlElement>,
  findings: Findings,
): XmlElement | undefined {
  const target = ids.get(id);
  if (target === undefined) {
    findings.error(
      'JDF_DANGLING',
      el,
      `${attribute}="${id}" of ${el.name} leads nowhere.`,
      `Nothing has the ID "${id}".`,
    );
  }
  return target;
}

function checkTarget(doc: XmlDocument, el: XmlElement, target: XmlElement, findings: Findings): void {
  const expected = /^(.+)(Link|Ref)$/.exec(el.local)?.[1];
  if (expected === undefined) return;
  if (expected !== target.local) {
    const hint = `A ${el.local} leads to a ${expected}; line ${target.line} is a ${target.local}.`;
    findings.error('JDF_LINK', el, `${el.name} leads to a ${target.name}.`, hint);
    return;
  }
  const node = nodeAround(doc, el);
  if (node !== undefined && !isVisible(doc, node, target)) {
    const owner = nodeAround(doc, target);
    const where = owner === undefined ? 'outside' : `in the node ${attributeOf(owner, 'ID') ?? ''}`;
    findings.error(
      'JDF_DANGLING',
      el,
      `${el.name} leads to a resource ${where}, which this node can't see.`,
      'Move the resource to a node around all that use it.',
    );
  }
}
