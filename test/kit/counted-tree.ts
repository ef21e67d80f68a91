import type { XmlDocument, XmlElement } from '#libs/jdf';

/** A document whose tree counts how often somebody looks at it. */
export interface CountedDocument {
  readonly doc: XmlDocument;
  /** Children and attributes that were looked at so far, each as often as it was. */
  readonly looks: () => number;
}

/**
 * The same document with lists of children and attributes that count each look at one of them; so what looks through a
 * thousand parts for each of a thousand links shows as a million.
 */
export function countedTree(document: XmlDocument): CountedDocument {
  let looks = 0;
  const counted = <T>(list: readonly T[]): readonly T[] =>
    new Proxy(list, {
      get(target, name) {
        if (typeof name === 'string' && /^\d+$/.test(name)) looks++;
        return Reflect.get(target, name);
      },
    });
  const counting = (el: XmlElement): XmlElement => ({
    ...el,
    attributes: counted(el.attributes),
    children: counted(el.children.map((child) => (child.kind === 'element' ? counting(child) : child))),
  });
  return { doc: { ...document, root: counting(document.root) }, looks: () => looks };
}
