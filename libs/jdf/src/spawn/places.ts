import { pathOf, type XmlDocument, type XmlElement } from '../xml/index.js';

/** Line and XPath of an element, for a problem. */
export function where(doc: XmlDocument, el: XmlElement): { line: number | null; path: string | null } {
  return { line: el.line || null, path: pathOf(doc, el) || null };
}
