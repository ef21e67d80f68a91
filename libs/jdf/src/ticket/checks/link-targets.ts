import type { Findings } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { isVisible, resourceAround } from '../links.js';
import { nodeAround } from '../node.js';
import type { Ticket, TicketCheck } from './ticket-check.js';

/**
 * JDF ResourceLink rRef, ResourcePool: link and resource go by the same name, and the resource lies in the pool
 * of the node or of one around it.
 */
export const linkTargets: TicketCheck = {
  number: 4,
  name: 'what links lead to',
  run(ticket, findings) {
    for (const el of ticket.elements) {
      if (findings.full) return;
      const id = attributeOf(el, 'rRef');
      if (id === undefined) continue;
      const target = ticket.ids.get(id.trim());
      const expected = /^(.+)(?:Link|Ref)$/.exec(el.local)?.[1];
      if (target !== undefined && expected !== undefined) checkTarget(ticket, el, expected, target, findings);
    }
  },
};

function checkTarget(
  { doc }: Ticket,
  el: XmlElement,
  expected: string,
  target: XmlElement,
  findings: Findings,
): void {
  if (expected !== target.local) {
    const hint = `A ${el.local} leads to a ${expected}; line ${target.line} is a ${target.local}.`;
    findings.error('JDF_LINK', el, `${el.name} leads to a ${target.name}.`, hint);
    return;
  }
  if (resourceAround(doc, target) !== target) {
    const hint = `Make ${target.local} a resource of its own in a ResourcePool, or select a part by Part.`;
    findings.error('JDF_LINK', el, `${el.name} leads into a resource, not to one.`, hint);
    return;
  }
  const node = nodeAround(doc, el);
  if (node === undefined || isVisible(doc, node, target)) return;
  const owner = nodeAround(doc, target);
  const where = owner === undefined ? 'outside' : `in the node ${attributeOf(owner, 'ID') ?? ''}`;
  findings.error(
    'JDF_DANGLING',
    el,
    `${el.name} leads to a resource ${where}, which this node can't see.`,
    'Move the resource to a node around all that use it.',
  );
}
