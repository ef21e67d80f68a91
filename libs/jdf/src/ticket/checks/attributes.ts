import { type Findings, integers, oneOf, tokens, type ValueType } from '../../codec/index.js';
import {
  activations,
  nodeStatuses,
  partUsages,
  resourceClasses,
  resourceStatuses,
  usages,
  versions,
} from '../../enumerations.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** Required attributes and closed lists of nodes, resources and links. */
export const attributes: TicketCheck = {
  number: null,
  name: 'attributes',
  run({ doc, nodes }, findings) {
    for (const { element, resources } of nodes) {
      need(element, ['ID', 'Type', 'Status'], findings);
      if (element === doc.root) need(element, ['Version'], findings);
      allowed(element, 'Status', oneOf(nodeStatuses), findings);
      allowed(element, 'Activation', oneOf(activations), findings);
      allowed(element, 'Version', oneOf(versions), findings);
      allowed(element, 'MaxVersion', oneOf(versions), findings);
      for (const resource of resources) checkResource(resource, findings);
      for (const pool of childElements(element, 'ResourceLinkPool')) {
        for (const link of childElements(pool)) checkLink(link, findings);
      }
    }
  },
};

function checkResource(resource: XmlElement, findings: Findings): void {
  need(resource, ['ID', 'Class', 'Status'], findings);
  allowed(resource, 'Class', oneOf(resourceClasses), findings);
  allowed(resource, 'Status', oneOf(resourceStatuses), findings);
  allowed(resource, 'PartUsage', oneOf(partUsages), findings);
}

function checkLink(link: XmlElement, findings: Findings): void {
  need(link, ['rRef', 'Usage'], findings);
  allowed(link, 'Usage', oneOf(usages), findings);
  allowed(link, 'CombinedProcessIndex', integers, findings);
}

function need(el: XmlElement, names: readonly string[], findings: Findings): void {
  for (const name of names) {
    const value = attributeOf(el, name);
    if (value === undefined || tokens.read(value)?.length === 0) findings.missing(el, `attribute ${name}`);
  }
}

function allowed<T>(el: XmlElement, name: string, type: ValueType<T>, findings: Findings): void {
  const value = attributeOf(el, name);
  if (value !== undefined && type.read(value) === undefined) findings.wrong(el, name, value, type.expects);
}
