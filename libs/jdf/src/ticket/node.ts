import { splitTokens } from '../codec/index.js';
import { type Activation, activations } from '../enumerations.js';
import {
  attributeOf,
  childElements,
  JDF_NAMESPACE,
  parentOf,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';

/** Whether an element is a JDF node of the standard. */
export function isNode(el: XmlElement): boolean {
  return el.local === 'JDF' && el.uri === JDF_NAMESPACE;
}

/** The node and all nodes below it, in document order. */
export function* nodesOf(node: XmlElement): Generator<XmlElement> {
  yield node;
  for (const child of childElements(node, 'JDF')) yield* nodesOf(child);
}

/** The node and the nodes around it, innermost first. */
export function lineageOf(doc: XmlDocument, node: XmlElement): XmlElement[] {
  const lineage: XmlElement[] = [];
  for (let at: XmlElement | undefined = node; at !== undefined; at = parentOf(doc, at)) {
    if (isNode(at)) lineage.push(at);
  }
  return lineage;
}

/** An attribute of the node or, if it has none, of the nearest node around it; with the node that states it. */
export function inheritedAttribute(
  doc: XmlDocument,
  node: XmlElement,
  name: string,
): { readonly value: string; readonly at: XmlElement } | undefined {
  for (const at of lineageOf(doc, node)) {
    const value = attributeOf(at, name);
    if (value !== undefined) return { value, at };
  }
  return undefined;
}

/** The processes a node stands for: those in Types of a Combined node or ProcessGroup, else its own Type. */
export function processesOf(node: XmlElement): readonly string[] {
  const type = attributeOf(node, 'Type') ?? '';
  if (type === 'Combined' || type === 'ProcessGroup') return splitTokens(attributeOf(node, 'Types') ?? '');
  return type === 'Product' || type === '' ? [] : [type];
}

// From what forbids most to what forbids least; Active and the two test runs do not restrict one another.
const RESTRICTS: readonly Activation[] = ['Informative', 'Inactive', 'Held'];

/** What may be done with a node: the most restrictive of its own Activation and of those around it. */
export function activationOf(
  doc: XmlDocument,
  node: XmlElement,
): { readonly value: Activation; readonly at: XmlElement } {
  const stated = lineageOf(doc, node).flatMap((at) => {
    const value = activations.find((known) => known === attributeOf(at, 'Activation'));
    return value === undefined ? [] : [{ value, at }];
  });
  for (const value of RESTRICTS) {
    const found = stated.find((one) => one.value === value);
    if (found !== undefined) return found;
  }
  return stated[0] ?? { value: 'Active', at: node };
}
