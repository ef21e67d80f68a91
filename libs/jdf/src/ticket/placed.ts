import { pathOf, type XmlDocument, type XmlElement } from '../xml/index.js';

/** A value with the place it was read from, so that a later problem can name it. */
export interface Placed<T> {
  readonly value: T;
  readonly line: number | null;
  readonly path: string;
}

/** A value read from an element, with its line and XPath. */
export function placed<T>(doc: XmlDocument, at: XmlElement, value: T): Placed<T> {
  return { value, line: at.line || null, path: pathOf(doc, at) };
}
