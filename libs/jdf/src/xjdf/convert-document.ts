import { done, type Result } from '#libs/kernel';
import { kindOf } from '../ticket/kind.js';
import type { XmlDocument, XmlElement } from '../xml/index.js';
import { ticketToJdf } from './to-jdf/convert.js';
import { messagesToJmf } from './to-jdf/messages.js';
import { type Converted, ticketToXjdf } from './to-xjdf/convert.js';
import { messagesToXjmf } from './to-xjdf/messages.js';

/** The two generations of the standard: JDF and JMF, XJDF and XJMF. */
export type Generation = 'jdf' | 'xjdf';

/**
 * A ticket in the other generation, with all that could not be carried over. Of the same generation it is given back as it
 * is. A JDF ticket of several nodes becomes one XJDF: the product nodes its ProductList, the processes of all others in
 * document order its Types, each resource set saying by CombinedProcessIndex which of them use it; `node` makes the XJDF
 * of one node alone. Errors: KIND_UNKNOWN, XML_NAMESPACE, JMF_TYPE (none of the messages exists there).
 */
export function convertDocument(
  doc: XmlDocument,
  to: Generation,
  options: { readonly node?: XmlElement } = {},
): Result<Converted> {
  const kind = kindOf(doc);
  if (!kind.ok) return kind;
  const newer = kind.value === 'xjdf' || kind.value === 'xjmf';
  if (newer === (to === 'xjdf')) return done({ doc, lost: [] });
  if (kind.value === 'jdf') return done(ticketToXjdf(doc, options.node));
  if (kind.value === 'xjdf') return done(ticketToJdf(doc));
  return kind.value === 'jmf' ? messagesToXjmf(doc) : messagesToJmf(doc);
}
