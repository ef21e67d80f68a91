import type { Instant } from '#libs/kernel';
import { dateTime, type Findings, percent, splitTokens, time, type ValueType } from '../codec/index.js';
import { effectivePart, selectPart, subElements } from '../partition/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import { intentsOf, spanOf } from './intents.js';
import { linksOf } from './links.js';
import { lineageOf } from './node.js';
import { type Placed, placed } from './placed.js';
import { timeSpan } from './product-intents/span-types.js';

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

/** When the product must be there: DeliveryIntent, else the last or planned end of NodeInfo. */
function readDue(doc: XmlDocument, node: XmlElement, findings: Findings): Placed<Instant> | undefined {
  for (const intent of intentsOf(doc, node, 'DeliveryIntent', findings)) {
    const required = spanOf(doc, intent, 'Required', timeSpan, findings);
    if (required === undefined || !Number.isFinite(required.value.at)) continue;
    if (required.value.offsetMin !== undefined) return { ...required, value: required.value.at };
    findings.wrong(intent.resource, 'Required', dateTime.write(required.value), time.expects);
  }
  return (
    nodeInfoValue(doc, node, 'LastEnd', time, findings) ?? nodeInfoValue(doc, node, 'End', time, findings)
  );
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

/** Who ordered a product, when it must be there and how urgent it is. */
export interface Administration {
  readonly due?: Placed<Instant>;
  /** NodeInfo's JobPriority, 0 to 100. */
  readonly jobPriority?: Placed<number>;
  readonly customerName?: Placed<string>;
  readonly customerJobName?: Placed<string>;
}

/** What a node itself says; what it leaves open is as in the nodes `around` it. */
export function readAdministration(
  doc: XmlDocument,
  node: XmlElement,
  around: Administration,
  findings: Findings,
): Administration {
  const info = singleInput(doc, node, 'CustomerInfo');
  const jobName = info && attributeOf(info.view, 'CustomerJobName');
  return {
    due: readDue(doc, node, findings) ?? around.due,
    jobPriority: nodeInfoValue(doc, node, 'JobPriority', percent, findings) ?? around.jobPriority,
    customerName: (info && companyOf(doc, info.view)) ?? around.customerName,
    customerJobName: jobName === undefined ? around.customerJobName : placed(doc, info!.at, jobName),
  };
}

/** The same of a node with all that is around it. */
export function readAllAdministration(
  doc: XmlDocument,
  node: XmlElement,
  findings: Findings,
): Administration {
  return lineageOf(doc, node)
    .reverse()
    .reduce<Administration>((around, at) => readAdministration(doc, at, around, findings), {});
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
