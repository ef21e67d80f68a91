import { parentOf, type XmlAttribute, type XmlDocument, type XmlElement } from '../xml/index.js';
import { XMLNS_NAMESPACE } from '../xml/namespaces.js';

/** Namespaces by prefix; '' is the one that holds without a prefix. */
export type Bindings = ReadonlyMap<string, string>;

const isDeclaration = ({ uri }: XmlAttribute): boolean => uri === XMLNS_NAMESPACE;

const prefixDeclared = ({ prefix, local }: XmlAttribute): string => (prefix === '' ? '' : local);

function declaredBy(el: XmlElement): Map<string, string> {
  return new Map(el.attributes.filter(isDeclaration).map((a) => [prefixDeclared(a), a.value]));
}

/** The namespaces in force inside an element. */
export function bindingsIn(doc: XmlDocument, el: XmlElement): Bindings {
  const around = parentOf(doc, el);
  return new Map([...(around === undefined ? [] : bindingsIn(doc, around)), ...declaredBy(el)]);
}

/**
 * The element so that all prefixes in it, also those in its attribute values, mean in a place with bindings `to` what
 * they meant in one with bindings `from`: what differs is declared on it. Declarations that the new place has already are
 * left out, but for those that `like` states too.
 */
export function settled(el: XmlElement, from: Bindings, to: Bindings, like?: XmlElement): XmlElement {
  const own = declaredBy(el);
  const kept = like === undefined ? new Map<string, string>() : declaredBy(like);
  const attributes = el.attributes.filter((attribute) => {
    if (!isDeclaration(attribute)) return true;
    const prefix = prefixDeclared(attribute);
    return kept.has(prefix) || to.get(prefix) !== attribute.value;
  });
  const added = [...from].filter(([prefix, uri]) => !own.has(prefix) && (to.get(prefix) ?? '') !== uri);
  if (added.length === 0 && attributes.length === el.attributes.length) return el;
  return { ...el, attributes: [...attributes, ...added.map(declaration)] };
}

function declaration([prefix, value]: [string, string]): XmlAttribute {
  return prefix === ''
    ? { name: 'xmlns', prefix: '', local: 'xmlns', uri: XMLNS_NAMESPACE, value }
    : { name: `xmlns:${prefix}`, prefix: 'xmlns', local: prefix, uri: XMLNS_NAMESPACE, value };
}

/** The namespaces in force around an element. */
export function bindingsAround(doc: XmlDocument, el: XmlElement): Bindings {
  const around = parentOf(doc, el);
  return around === undefined ? new Map() : bindingsIn(doc, around);
}
