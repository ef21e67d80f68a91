import { JDF_NAMESPACE, type XmlElement } from '../../xml/index.js';

// Descriptions of what a device can do use the words of tickets, but are none: their references follow other rules.
const NOT_TICKET = new Set([
  'ActionPool',
  'DevCap',
  'DevCapPool',
  'DevCaps',
  'DeviceCap',
  'FeaturePool',
  'MacroPool',
  'ModulePool',
  'PreflightReportRulePool',
  'TestPool',
]);

/** The elements of the standard below one, itself included: no foreign ones and no capability descriptions. */
export function* ticketElements(el: XmlElement): Generator<XmlElement> {
  const waiting = isTicket(el) ? [el] : [];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    yield at;
    for (let i = at.children.length - 1; i >= 0; i--) {
      const child = at.children[i]!;
      if (child.kind === 'element' && isTicket(child)) waiting.push(child);
    }
  }
}

/** Whether it is an element of the standard that belongs to a ticket. */
export const isTicket = (el: XmlElement): boolean => el.uri === JDF_NAMESPACE && !NOT_TICKET.has(el.local);
