import type { XmlAttribute, XmlElement, XmlNode } from '../xml/index.js';
import { XMLNS_NAMESPACE } from '../xml/namespaces.js';

/**
 * Whether two elements say the same: names with their namespaces, attributes in any order, children in order. Prefixes,
 * white space between elements and comments are no matter, nor are the attributes left out.
 */
export function sameContent(a: XmlElement, b: XmlElement, leftOut: readonly string[] = []): boolean {
  if (a === b) return true;
  if (a.local !== b.local || a.uri !== b.uri) return false;
  const attributes = stated(a, leftOut);
  const others = stated(b, leftOut);
  if (attributes.length !== others.length) return false;
  const equal = attributes.every((one) =>
    others.some((other) => one.local === other.local && one.uri === other.uri && one.value === other.value),
  );
  if (!equal) return false;
  const children = told(a);
  const otherChildren = told(b);
  return (
    children.length === otherChildren.length &&
    children.every((child, i) => sameNode(child, otherChildren[i]!, leftOut))
  );
}

function sameNode(a: XmlNode, b: XmlNode, leftOut: readonly string[]): boolean {
  if (a.kind === 'element') return b.kind === 'element' && sameContent(a, b, leftOut);
  return b.kind !== 'element' && a.value.trim() === b.value.trim();
}

function stated(el: XmlElement, leftOut: readonly string[]): XmlAttribute[] {
  return el.attributes.filter(
    ({ uri, local }) => uri !== XMLNS_NAMESPACE && !(uri === '' && leftOut.includes(local)),
  );
}

function told(el: XmlElement): XmlNode[] {
  return el.children.filter(
    (node) => node.kind === 'element' || (node.kind !== 'comment' && node.value.trim() !== ''),
  );
}
