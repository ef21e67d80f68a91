import { cloneElement, XMLNS_NAMESPACE, type XmlAttribute, type XmlElement } from '../xml/index.js';
import type { ElementShape } from './facts.js';

/** An attribute without a namespace. */
export function attribute(name: string, value: string): XmlAttribute {
  return { name, prefix: '', local: name, uri: '', value };
}

/** Children in the order in which the schema has them, those of other namespaces last. */
export function inOrder(children: readonly XmlElement[], shape: ElementShape): XmlElement[] {
  const places = new Map(shape.children.map(({ name }, i) => [name, i]));
  const place = (el: XmlElement): number => places.get(el.local) ?? places.size;
  return children
    .map((el, i) => ({ el, i }))
    .sort((a, b) => place(a.el) - place(b.el) || a.i - b.i)
    .map(({ el }) => el);
}

/** A copy of an element of another namespace that can stand anywhere: it declares the prefixes that it uses. */
export function adopted(el: XmlElement): XmlElement {
  const copy = cloneElement(el);
  const needed = new Map<string, string>();
  collect(copy, new Set(), needed);
  return { ...copy, attributes: [...copy.attributes, ...declarationsOf(needed)] };
}

function collect(el: XmlElement, around: ReadonlySet<string>, needed: Map<string, string>): void {
  const declared = new Set(around);
  for (const { uri, prefix, local } of el.attributes) {
    if (uri === XMLNS_NAMESPACE) declared.add(prefix === '' ? '' : local);
  }
  const use = (prefix: string, uri: string): void => {
    if (!declared.has(prefix) && prefix !== 'xml' && !needed.has(prefix)) needed.set(prefix, uri);
  };
  use(el.prefix, el.uri);
  for (const { prefix, uri } of el.attributes) if (prefix !== '' && uri !== XMLNS_NAMESPACE) use(prefix, uri);
  for (const child of el.children) if (child.kind === 'element') collect(child, declared, needed);
}

/**
 * The root with the prefixes declared that anything in it uses without declaring them, and those that its own document
 * declared at the root, because names in values may use them.
 */
export function declaredAtRoot(root: XmlElement, like: XmlElement): XmlElement {
  const needed = new Map<string, string>([['', root.uri]]);
  for (const { uri, prefix, local, value } of like.attributes) {
    if (
      uri === XMLNS_NAMESPACE &&
      prefix !== '' &&
      !value.startsWith('http://www.CIP4.org/JDFSchema_') &&
      !value.startsWith('http://www.w3.org/')
    )
      needed.set(local, value);
  }
  collect(root, new Set(['']), needed);
  return { ...root, attributes: [...root.attributes, ...declarationsOf(needed)] };
}

function declarationsOf(needed: ReadonlyMap<string, string>): XmlAttribute[] {
  return [...needed].map(([prefix, uri]) => ({
    name: prefix === '' ? 'xmlns' : `xmlns:${prefix}`,
    prefix: prefix === '' ? '' : 'xmlns',
    local: prefix === '' ? 'xmlns' : prefix,
    uri: XMLNS_NAMESPACE,
    value: uri,
  }));
}
