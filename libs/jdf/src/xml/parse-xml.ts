import { done, error, type Result, refuse } from '#libs/kernel';
import { type DecodedXml, decodeXml } from './decode.js';
import { defaultXmlLimits, type XmlLimits } from './limits.js';
import type { XmlDocument } from './node.js';
import { ReadingStopped, TreeReader } from './tree-reader.js';

/**
 * Reads a document strictly and without loss. Nothing outside is ever read and no entity is ever defined: a DOCTYPE is
 * refused before the parser starts. Limits apply to what is left out of `limits` too. Errors: NOT_TEXT,
 * XML_NOT_WELL_FORMED, XML_DOCTYPE, XML_INCLUDE, XML_LIMIT, each with its line and the XPath of the innermost open
 * element. A string is taken as decoded already: what its declaration says of an encoding is not judged.
 */
export function parseXml(input: Uint8Array | string, limits: Partial<XmlLimits> = {}): Result<XmlDocument> {
  const all = { ...defaultXmlLimits, ...limits };
  if (input.length > all.bytes) {
    return refuse(error('XML_LIMIT', `The document is longer than ${all.bytes} bytes.`));
  }
  const decoded = typeof input === 'string' ? fromString(input) : decodeXml(input);
  if (!decoded.ok) return decoded;
  const { text, encoding, bom } = decoded.value;
  const doctypeAt = doctypeInProlog(text);
  if (doctypeAt >= 0) {
    const line = text.slice(0, doctypeAt).split('\n').length;
    return refuse(error('XML_DOCTYPE', 'A document type declaration is not accepted.', { line }));
  }
  try {
    return done({ ...new TreeReader(text, all).read(), encoding, bom });
  } catch (stop) {
    if (stop instanceof ReadingStopped) return refuse(stop.problem);
    throw stop;
  }
}

function fromString(input: string): Result<DecodedXml> {
  const bom = input.startsWith('\ufeff');
  const lone = /\p{Surrogate}/u.exec(input);
  if (lone !== null) {
    const line = input.slice(0, lone.index).split('\n').length;
    return refuse(error('NOT_TEXT', 'Half of a surrogate pair stands alone.', { line }));
  }
  return done({ text: bom ? input.slice(1) : input, encoding: 'utf-8', bom });
}

/** Where `<!DOCTYPE` begins if nothing but space, comments and instructions stands before it; else -1. */
function doctypeInProlog(text: string): number {
  let at = 0;
  for (;;) {
    while (at < text.length && ' \t\r\n'.includes(text[at]!)) at++;
    if (text.startsWith('<!DOCTYPE', at)) return at;
    const end = text.startsWith('<!--', at) ? '-->' : text.startsWith('<?', at) ? '?>' : null;
    if (end === null) return -1;
    const ends = text.indexOf(end, at + (end === '-->' ? 4 : 2));
    if (ends < 0) return -1;
    at = ends + end.length;
  }
}
