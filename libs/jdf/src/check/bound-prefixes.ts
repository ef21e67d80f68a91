import { XMLNS_NAMESPACE, type XmlElement } from '../xml/index.js';

/** Which namespaces the prefixes mean at a place in a document. */
export interface BoundPrefixes {
  readonly around: BoundPrefixes | null;
  readonly prefixes: ReadonlyMap<string, string>;
}

/** The scope inside an element: that around it, with what the element itself binds. */
export function scopeIn(el: XmlElement, around: BoundPrefixes | null): BoundPrefixes | null {
  let prefixes: Map<string, string> | undefined;
  for (const { name, local, uri, value } of el.attributes) {
    if (uri !== XMLNS_NAMESPACE && name !== 'xmlns') continue;
    prefixes ??= new Map();
    prefixes.set(name === 'xmlns' ? '' : local, value.trim());
  }
  return prefixes === undefined ? around : { around, prefixes };
}

/** The namespace of a qualified name, such as a value of xsi:type; undefined where its prefix is not bound. */
export function namespaceOf(name: string, scope: BoundPrefixes | null): string | undefined {
  const colon = name.indexOf(':');
  const prefix = colon < 0 ? '' : name.slice(0, colon);
  for (let at = scope; at !== null; at = at.around) {
    const uri = at.prefixes.get(prefix);
    if (uri !== undefined) return uri;
  }
  return colon < 0 ? '' : undefined;
}
