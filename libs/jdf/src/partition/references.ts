import { keysOf, type PartKeys } from '../elements/part.js';
import { attributeOf, childElements, findById, type XmlDocument, type XmlElement } from '../xml/index.js';
import { effectivePart } from './effective-part.js';
import type { Partition } from './resolve.js';
import { resolveOne } from './select.js';

/** The Part elements of a link or reference. */
export function partsNamed(el: XmlElement): PartKeys[] {
  return childElements(el, 'Part').map(keysOf);
}

/** The element whose ID the rRef of a link or reference names. */
export function targetOf(doc: XmlDocument, el: XmlElement): XmlElement | undefined {
  const id = attributeOf(el, 'rRef');
  return id === undefined ? undefined : findById(doc, id);
}

/**
 * The part of a resource that a reference such as MediaRef stands for: the resource itself without a Part, else the one
 * part that it names. Undefined where the resource or the part is not there, or several parts are meant.
 */
export function partReferredTo(doc: XmlDocument, reference: XmlElement): Partition | undefined {
  const target = targetOf(doc, reference);
  const [selection, ...more] = partsNamed(reference);
  if (target === undefined || more.length > 0) return undefined;
  return selection === undefined ? { chain: [target], keys: {} } : resolveOne(target, selection);
}

/** Sub-elements of a resource, inline or as references to (parts of) resources of their own, with what those inherit. */
export function subElements(doc: XmlDocument, el: XmlElement, name: string): XmlElement[] {
  return childElements(el).flatMap((found) => {
    if (found.local === name) return [found];
    const part = found.local === `${name}Ref` ? partReferredTo(doc, found) : undefined;
    if (part === undefined) return [];
    return [part.chain.length === 1 ? part.chain[0]! : effectivePart(part)];
  });
}
