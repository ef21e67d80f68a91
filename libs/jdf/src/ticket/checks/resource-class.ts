import type { Findings } from '../../codec/index.js';
import { physicalClasses } from '../../enumerations.js';
import { partsOf } from '../../partition/index.js';
import { jdfDictionary } from '../../standard/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import type { TicketCheck, TicketLink } from './ticket-check.js';

const PHYSICAL: ReadonlySet<string> = new Set(physicalClasses);
const STOCK = ['Amount', 'AmountProduced', 'AmountRequired'] as const;
const USED = ['Amount', 'ActualAmount', 'MinAmount', 'MaxAmount'] as const;

/** JDF Resource Class, Amount: Class is that of the kind, and only what can be counted has amounts. */
export const resourceClass: TicketCheck = {
  number: 8,
  name: 'class of resources',
  run({ nodes }, findings) {
    for (const { resources, links } of nodes) {
      for (const resource of resources) checkResource(resource, findings);
      for (const link of links) checkLink(link, findings);
    }
  },
};

function checkResource(resource: XmlElement, findings: Findings): void {
  const kind = jdfDictionary().classOf(resource.local);
  const stated = attributeOf(resource, 'Class')?.trim();
  if (kind === undefined) return;
  if (stated !== undefined && stated !== kind) {
    const hint = `Class of ${resource.local} is ${kind}.`;
    findings.warning('JDF_RESOURCE', resource, `Class="${stated}" does not fit ${resource.name}.`, hint);
  }
  if (!PHYSICAL.has(kind)) checkAmounts(resource, resource, kind, findings);
}

function checkAmounts(root: XmlElement, part: XmlElement, kind: string, findings: Findings): void {
  for (const name of STOCK) {
    if (attributeOf(part, name) === undefined) continue;
    const message = `${root.name} has ${name}, but a resource of Class="${kind}" can't be counted.`;
    findings.warning('JDF_RESOURCE', part, message, `Leave out ${name}.`);
  }
  for (const inner of partsOf(part)) checkAmounts(root, inner, kind, findings);
}

function checkLink({ element, name, resource }: TicketLink, findings: Findings): void {
  const kind = jdfDictionary().classOf(name);
  // People and machines are not counted either, but their time is.
  if (resource === undefined || kind === undefined || PHYSICAL.has(kind) || kind === 'Implementation') return;
  for (const amount of USED) {
    if (attributeOf(element, amount) === undefined) continue;
    const message = `${element.name} has ${amount}, but a resource of Class="${kind}" can't be counted.`;
    findings.warning('JDF_RESOURCE', element, message, `Leave out ${amount}.`);
  }
}
