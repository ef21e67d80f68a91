import type { Findings } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { resourceAround } from '../links.js';
import type { Ticket, TicketCheck, TicketNode, TicketReference } from './ticket-check.js';

/**
 * JDF ResourceLink rRef, ResourcePool: link and resource go by the same name, and the resource lies in the pool
 * of the node or of one around it.
 */
export const linkTargets: TicketCheck = {
  number: 4,
  name: 'what links lead to',
  run(ticket, findings) {
    for (const reference of ticket.references) {
      if (findings.full) return;
      const { element, target } = reference;
      const expected = /^(.+)(?:Link|Ref)$/.exec(element.local)?.[1];
      if (target !== undefined && expected !== undefined)
        checkTarget(ticket, reference, expected, target, findings);
    }
  },
};

function checkTarget(
  { doc, owners }: Ticket,
  { element: el, node }: TicketReference,
  expected: string,
  target: XmlElement,
  findings: Findings,
): void {
  if (expected !== target.local) {
    const hint = `A ${el.local} leads to a ${expected}; line ${target.line} is a ${target.local}.`;
    findings.error('JDF_LINK', el, `${el.name} leads to a ${target.name}.`, hint);
    return;
  }
  const owner = owners.get(target);
  if (owner === undefined && resourceAround(doc, target) !== target) {
    const hint = `Make ${target.local} a resource of its own in a ResourcePool, or select a part by Part.`;
    findings.error('JDF_LINK', el, `${el.name} leads into a resource, not to one.`, hint);
    return;
  }
  for (let at: TicketNode | undefined = node; at !== undefined; at = at.parent) if (at === owner) return;
  const where = owner === undefined ? 'outside' : `in the node ${attributeOf(owner.element, 'ID') ?? ''}`;
  findings.error(
    'JDF_DANGLING',
    el,
    `${el.name} leads to a resource ${where}, which this node can't see.`,
    'Move the resource to a node around all that use it.',
  );
}
