/** Changes to the child elements of an element that leave everything around them, also its layout, as it is. */
import { childElements, withChildren, type XmlElement, type XmlNode } from '../xml/index.js';

/** The element with a child exchanged (null: taken out, with the line end and indent before it). */
export function replaceChild(el: XmlElement, old: XmlElement, fresh: XmlElement | null): XmlElement {
  const at = el.children.indexOf(old);
  if (fresh !== null) return withChildren(el, el.children.with(at, fresh));
  const from = isLayout(el.children[at - 1]) ? at - 1 : at;
  const children = [...el.children.slice(0, from), ...el.children.slice(at + 1)];
  // What is left of an element that only had this child is its empty layout.
  return withChildren(el, children.every(isLayout) ? [] : children);
}

/** The element with one more child, after `after` or after its last child element, with the same layout before it. */
export function addChild(el: XmlElement, fresh: XmlElement, after?: XmlElement): XmlElement {
  const neighbour = after ?? el.children.findLast((node): node is XmlElement => node.kind === 'element');
  if (neighbour === undefined) return withChildren(el, [...el.children, fresh]);
  const at = el.children.indexOf(neighbour);
  const before = el.children[at - 1];
  const added = before !== undefined && isLayout(before) ? [before, fresh] : [fresh];
  return withChildren(el, [...el.children.slice(0, at + 1), ...added, ...el.children.slice(at + 1)]);
}

/**
 * The element with others in the places of some of its children, in order: surplus places are taken out, surplus elements
 * come after the last place.
 */
export function replaceChildren(
  el: XmlElement,
  places: readonly XmlElement[],
  fresh: readonly XmlElement[],
): XmlElement {
  const byPlace = new Map(places.slice(0, fresh.length).map((place, i) => [place, fresh[i]!]));
  const children = el.children.map((node) => (node.kind === 'element' ? (byPlace.get(node) ?? node) : node));
  let changed = children.every((node, i) => node === el.children[i]) ? el : withChildren(el, children);
  for (const surplus of places.slice(fresh.length)) changed = replaceChild(changed, surplus, null);
  let last = fresh[places.length - 1];
  for (const more of fresh.slice(places.length)) {
    changed = addChild(changed, more, last);
    last = more;
  }
  return changed;
}

/** The element, and all below it that is of the same namespace, with the prefix that another one has. */
export function likeIn(like: XmlElement, el: XmlElement): XmlElement {
  if (el.prefix === like.prefix || el.uri !== like.uri) return el;
  const name = like.prefix === '' ? el.local : `${like.prefix}:${el.local}`;
  const children = el.children.map((node) => (node.kind === 'element' ? likeIn(like, node) : node));
  return { ...el, name, prefix: like.prefix, children };
}

/** Child elements of an element by any of some names, in the namespace of their parent. */
export function childrenNamed(el: XmlElement, names: ReadonlySet<string>): XmlElement[] {
  return childElements(el).filter(({ local }) => names.has(local));
}

function isLayout(node: XmlNode | undefined): boolean {
  return node?.kind === 'text' && /^[ \t\r\n]*$/.test(node.value);
}
