import type { Findings } from '../codec/index.js';
import { identified, type XmlDocument, type XmlElement } from '../xml/index.js';

/** No ID is used twice among the elements of a document that are in the namespace of its root. Code: JDF_ID_DOUBLE. */
export function checkUniqueIds(doc: XmlDocument, findings: Findings): void {
  const first = new Map<string, XmlElement>();
  for (const { id, element: el } of identified(doc)) {
    if (el.uri !== doc.root.uri) continue;
    const before = first.get(id);
    if (before === undefined) {
      first.set(id, el);
      continue;
    }
    const hint = `The first is the ${before.name} of line ${before.line}.`;
    findings.error('JDF_ID_DOUBLE', el, `The ID "${id}" of ${el.name} occurs before.`, hint, 'ID');
  }
}
