import type { Instant } from '#libs/kernel';
import { type Findings, percent, splitTokens, time, type ValueType } from '../codec/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import { intentsOf, spanOf } from './intents.js';
import { linksOf, subElements } from './links.js';
import { lineageOf } from './node.js';
import { effectivePart, selectPart } from './partition.js';
import { type Placed, placed } from './span.js';

/**
 * A resource of which a node has at most one as input, such as NodeInfo: linked, or inline in the node as until version
 * 1.2. Its parts are passed over unless the link names one.
 */
export function singleInput(
  doc: XmlDocument,
  node: XmlElement,
  name: string,
): { readonly view: XmlElement; readonly at: XmlElement } | undefined {
  const link = linksOf(doc, node).find((one) => one.name === name && one.usage === 'Input');
  if (link !== undefined) {
    const selected = selectPart(link.resource, link.parts[0] ?? {});
    return { view: selected ? effectivePart(selected) : link.resource, at: link.resource };
  }
  const inline = childElements(node, name)[0];
  return inline && { view: inline, at: inline };
}

/** When the product must be there: DeliveryIntent, else the last or planned end of NodeInfo, of the node or one around it. */
export function readDue(doc: XmlDocument, node: XmlElement, findings: Findings): Placed<Instant> | undefined {
  for (const at of lineageOf(doc, node)) {
    const delivery = intentsOf(doc, at, 'DeliveryIntent', findings);
    for (const intent of delivery) {
      const required = spanOf(doc, intent, 'Required', time, findings);
      if (required !== undefined) return required;
    }
    const due =
      nodeInfoValue(doc, at, 'LastEnd', time, findings) ?? nodeInfoValue(doc, at, 'End', time, findings);
    if (due !== undefined) return due;
  }
  return undefined;
}

/** NodeInfo's JobPriority, 0 to 100, of the node or the nearest around it that states one. */
export function readJobPriority(
  doc: XmlDocument,
  node: XmlElement,
  findings: Findings,
): Placed<number> | undefined {
  for (const at of lineageOf(doc, node)) {
    const priority = nodeInfoValue(doc, at, 'JobPriority', percent, findings);
    if (priority !== undefined) return priority;
  }
  return undefined;
}

function nodeInfoValue<T>(
  doc: XmlDocument,
  node: XmlElement,
  name: string,
  type: ValueType<T>,
  findings: Findings,
): Placed<T> | undefined {
  const info = singleInput(doc, node, 'NodeInfo');
  const value = info && attributeOf(info.view, name);
  // The standard writes INF for "whenever".
  if (info === undefined || value === undefined || value === 'INF' || value === '-INF') return undefined;
  const read = type.read(value);
  if (read === undefined) findings.wrong(info.at, name, value, type.expects);
  return read === undefined ? undefined : placed(doc, info.at, read);
}

export interface Customer {
  readonly customerName?: Placed<string>;
  readonly customerJobName?: Placed<string>;
}

/** Who ordered it and what they call it: CustomerInfo of the node or the nearest around it. */
export function readCustomer(doc: XmlDocument, node: XmlElement): Customer {
  for (const at of lineageOf(doc, node)) {
    const info = singleInput(doc, at, 'CustomerInfo');
    if (info === undefined) continue;
    const jobName = attributeOf(info.view, 'CustomerJobName');
    return {
      customerName: companyOf(doc, info.view),
      customerJobName: jobName === undefined ? undefined : placed(doc, info.at, jobName),
    };
  }
  return {};
}

function companyOf(doc: XmlDocument, info: XmlElement): Placed<string> | undefined {
  const contacts = subElements(doc, info, 'Contact');
  const isCustomer = (contact: XmlElement): boolean =>
    splitTokens(attributeOf(contact, 'ContactTypes') ?? '').includes('Customer');
  const companies = [info, ...contacts.filter(isCustomer), ...contacts].flatMap((el) =>
    subElements(doc, el, 'Company'),
  );
  for (const company of companies) {
    const name = attributeOf(company, 'OrganizationName');
    if (name !== undefined) return placed(doc, company, name);
  }
  return undefined;
}
