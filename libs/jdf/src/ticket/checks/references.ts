import { type Findings, splitTokens } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { isVisible } from '../links.js';
import { nodeAround } from '../node.js';
import type { Ticket, TicketCheck } from './ticket-check.js';

/**
 * Standard reference, section 9, checks 1, 3 and 4: each reference leads somewhere, link and resource go by the same
 * name, and the resource lies in the pool of the node or of one around it.
 */
export const references: TicketCheck = {
  number: 1,
  name: 'references',
  run(ticket, findings) {
    for (const el of ticket.elements) {
      if (findings.full) return;
      checkElement(ticket, el, findings);
    }
  },
};

function checkElement(ticket: Ticket, el: XmlElement, findings: Findings): void {
  const single = attributeOf(el, 'rRef');
  if (single !== undefined) {
    const target = resolve(ticket, el, 'rRef', single, findings);
    if (target !== undefined) checkTarget(ticket, el, target, findings);
  }
  const subReference = attributeOf(el, 'rSubRef');
  if (subReference !== undefined) resolve(ticket, el, 'rSubRef', subReference, findings);
  for (const id of splitTokens(attributeOf(el, 'rRefs') ?? '')) resolve(ticket, el, 'rRefs', id, findings);
  // The node that an audit of a spawned part names may be left behind in the ticket that it came from.
  const node = attributeOf(el, 'jRef');
  if (node !== undefined && !ticket.spawned) resolve(ticket, el, 'jRef', node, findings);
}

function resolve(
  ticket: Ticket,
  el: XmlElement,
  attribute: string,
  id: string,
  findings: Findings,
): XmlElement | undefined {
  const target = ticket.ids.get(id);
  if (target === undefined) {
    const hint = `Nothing has the ID "${id}".`;
    findings.error('JDF_DANGLING', el, `${attribute}="${id}" of ${el.name} leads nowhere.`, hint);
  }
  return target;
}

function checkTarget({ doc }: Ticket, el: XmlElement, target: XmlElement, findings: Findings): void {
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
