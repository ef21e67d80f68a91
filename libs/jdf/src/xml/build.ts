import { JDF_NAMESPACE, XMLNS_NAMESPACE, XSI_NAMESPACE } from './namespaces.js';
import type { XmlAttribute, XmlComment, XmlDocument, XmlElement, XmlNode, XmlText } from './node.js';

/** Attribute values by name; undefined leaves the attribute out. Numbers and booleans are written as the standard does. */
export type AttributeValues = Readonly<Record<string, string | number | boolean | undefined>>;

/** A new element. `name` may carry a prefix that the place it goes to has bound to `uri`. */
export function element(
  name: string,
  attributes: AttributeValues = {},
  children: readonly XmlNode[] = [],
  uri: string = JDF_NAMESPACE,
): XmlElement {
  const { prefix, local } = split(name);
  return {
    kind: 'element',
    name,
    prefix,
    local,
    uri,
    attributes: Object.entries(attributes).flatMap(([key, value]) =>
      value === undefined ? [] : [attribute(key, String(value))],
    ),
    children,
    line: 0,
  };
}

/** A builder of elements that have the prefix and namespace of `like`, whatever its document chose. */
export function elementsLike(like: XmlElement): typeof element {
  const before = like.prefix === '' ? '' : `${like.prefix}:`;
  return (name, attributes, children, uri = like.uri) => element(before + name, attributes, children, uri);
}

/** Text as a node of the tree; what XML needs escaped is escaped when it is written. */
export function text(value: string): XmlText {
  return { kind: 'text', value };
}

/** A comment as a node of the tree; it must not hold two hyphens in a row. */
export function comment(value: string): XmlComment {
  return { kind: 'comment', value };
}

/** The element with these attributes set (undefined: removed); the others keep their order. */
export function withAttributes(el: XmlElement, values: AttributeValues): XmlElement {
  const left = new Map(Object.entries(values));
  const attributes: XmlAttribute[] = [];
  for (const old of el.attributes) {
    if (!left.has(old.name)) {
      attributes.push(old);
      continue;
    }
    const value = left.get(old.name);
    left.delete(old.name);
    if (value !== undefined) attributes.push({ ...old, value: String(value) });
  }
  for (const [name, value] of left) {
    if (value !== undefined) attributes.push(attribute(name, String(value)));
  }
  return { ...el, attributes };
}

/** The element with other children; its attributes stay. */
export function withChildren(el: XmlElement, children: readonly XmlNode[]): XmlElement {
  return { ...el, children };
}

/** The element with more children at its end. */
export function appended(el: XmlElement, ...children: readonly XmlNode[]): XmlElement {
  return { ...el, children: [...el.children, ...children] };
}

/** A new document around a root. */
export function documentOf(root: XmlElement): XmlDocument {
  return {
    declaration: '<?xml version="1.0" encoding="UTF-8"?>',
    before: [text('\n')],
    root,
    after: [text('\n')],
    encoding: 'utf-8',
    bom: false,
  };
}

/** A deep copy without line numbers and remembered text, as if made here. */
export function cloneElement(el: XmlElement): XmlElement {
  const { source: _, ...rest } = el;
  return {
    ...rest,
    line: 0,
    attributes: [...el.attributes],
    children: el.children.map((child) => (child.kind === 'element' ? cloneElement(child) : child)),
  };
}

/** The document with some of its elements exchanged (null: taken out), wherever they are. All else is shared. */
export function replaceElements(
  doc: XmlDocument,
  replacements: ReadonlyMap<XmlElement, XmlElement | null>,
): XmlDocument {
  const visit = (el: XmlElement): XmlElement | null => {
    const own = replacements.get(el);
    if (own !== undefined) return own;
    let changed = false;
    const children = el.children.flatMap((child): readonly XmlNode[] => {
      if (child.kind !== 'element') return [child];
      const next = visit(child);
      changed ||= next !== child;
      return next === null ? [] : [next];
    });
    return changed ? { ...el, children } : el;
  };
  const root = visit(doc.root);
  return root === null || root === doc.root ? doc : { ...doc, root };
}

/** The element laid out with line ends and indents; elements that hold text are left as they are. */
export function indented(el: XmlElement, depth = 0): XmlElement {
  const only = el.children.every((child) => child.kind === 'element' || child.kind === 'comment');
  if (!only || el.children.length === 0) return el;
  const inner = text(`\n${'  '.repeat(depth + 1)}`);
  const children = el.children.flatMap((child): readonly XmlNode[] => [
    inner,
    child.kind === 'element' ? indented(child, depth + 1) : child,
  ]);
  return { ...el, children: [...children, text(`\n${'  '.repeat(depth)}`)] };
}

function attribute(name: string, value: string): XmlAttribute {
  const { prefix, local } = split(name);
  return { name, prefix, local, uri: uriOf(name, prefix), value };
}

/** The two prefixes whose attributes are made here; a declaration is known as one, as if it had been read. */
function uriOf(name: string, prefix: string): string {
  if (name === 'xmlns' || prefix === 'xmlns') return XMLNS_NAMESPACE;
  return prefix === 'xsi' ? XSI_NAMESPACE : '';
}

function split(name: string): { prefix: string; local: string } {
  const colon = name.indexOf(':');
  return { prefix: name.slice(0, Math.max(0, colon)), local: name.slice(colon + 1) };
}
