import { childElements, JDF_NAMESPACE, type XmlElement } from '../../xml/index.js';

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
  if (el.uri !== JDF_NAMESPACE || NOT_TICKET.has(el.local)) return;
  yield el;
  for (const child of childElements(el)) yield* ticketElements(child);
}
