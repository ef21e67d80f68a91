import { replaceElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import type { ElementCodec } from './field.js';
import { Findings } from './findings.js';
import { likeIn } from './in-place.js';

/**
 * The document with one of its elements changed to a value of its typed view. Only what the value says otherwise changes:
 * attributes and child elements that have their value already stay as they are written, and so does all that the view
 * does not know. The same document where nothing changes.
 */
export function updateElement<T>(
  doc: XmlDocument,
  el: XmlElement,
  codec: ElementCodec<T>,
  value: T,
): XmlDocument {
  // Faults in what is there are no matter here: they are read over.
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const changed = codec.edit?.(el, value, findings) ?? likeIn(el, codec.write(value));
  return changed === el ? doc : replaceElements(doc, new Map([[el, changed]]));
}
