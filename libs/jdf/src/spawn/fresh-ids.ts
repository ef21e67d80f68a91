import { attributeOf, JDF_NAMESPACE, type XmlElement } from '../xml/index.js';

/** The IDs of the standard's elements in a tree, but for what lies in some of its elements. */
export function idsIn(root: XmlElement, without: ReadonlySet<XmlElement> = new Set()): Set<string> {
  const ids = new Set<string>();
  const visit = (el: XmlElement): void => {
    if (without.has(el)) return;
    const id = el.uri === JDF_NAMESPACE ? attributeOf(el, 'ID') : undefined;
    if (id !== undefined) ids.add(id);
    for (const child of el.children) if (child.kind === 'element') visit(child);
  };
  visit(root);
  return ids;
}

/** New names for IDs that come in although they are taken: the old one with the token of the spawning. */
export function freshIds(
  coming: Iterable<string>,
  taken: ReadonlySet<string>,
  all: ReadonlySet<string>,
  token: string,
): Map<string, string> {
  const names = new Map<string, string>();
  const used = new Set([...taken, ...all]);
  for (const id of coming) {
    if (!taken.has(id)) continue;
    let name = `${id}_${token.replaceAll(':', '_')}`;
    while (used.has(name)) name += '_';
    used.add(name);
    names.set(id, name);
  }
  return names;
}

const REFERS = /(refs?|^refID|Copied|Overwritten)$/i;

/** The tree with some IDs renamed, and all that refers to them. */
export function withIds(el: XmlElement, names: ReadonlyMap<string, string>): XmlElement {
  if (names.size === 0) return el;
  let changed = false;
  const attributes = el.attributes.map((attribute) => {
    const { local, uri, value } = attribute;
    const isId = local === 'ID' && el.uri === JDF_NAMESPACE;
    if (uri !== '' || !(isId || REFERS.test(local))) return attribute;
    const renamed = value.replace(/\S+/g, (id) => names.get(id) ?? id);
    if (renamed === value) return attribute;
    changed = true;
    return { ...attribute, value: renamed };
  });
  let moved = false;
  const children = el.children.map((child) => {
    if (child.kind !== 'element') return child;
    const next = withIds(child, names);
    moved ||= next !== child;
    return next;
  });
  if (!changed && !moved) return el;
  return {
    ...el,
    attributes: changed ? attributes : el.attributes,
    children: moved ? children : el.children,
  };
}
