import { done, error, type Result, refuse } from '#libs/kernel';
import { defaultXmlLimits, overLimit, type XmlLimits } from './limits.js';
import type { XmlDocument } from './node.js';
import { ReadingStopped } from './reading-stopped.js';
import { TreeReader } from './tree-reader.js';
import { XmlReader } from './xml-reader.js';

/**
 * Reads a document strictly and without loss. Nothing outside is ever read and no entity is ever defined: a DOCTYPE is
 * refused. Limits apply to what is left out of `limits` too. Errors: NOT_TEXT, XML_NOT_WELL_FORMED, XML_DOCTYPE,
 * XML_INCLUDE, XML_LIMIT, each with its line and the XPath of the innermost open element. A string is taken as decoded
 * already: what its declaration says of an encoding is not judged.
 */
export function parseXml(input: Uint8Array | string, limits: Partial<XmlLimits> = {}): Result<XmlDocument> {
  if (typeof input === 'string') return parseText(input, { ...defaultXmlLimits, ...limits });
  const reader = new XmlReader(limits);
  reader.push(input);
  return reader.end();
}

/** The same of bytes that come one after another; the rest is not asked for once the document is refused. */
export async function parseXmlStream(
  chunks: AsyncIterable<Uint8Array>,
  limits: Partial<XmlLimits> = {},
): Promise<Result<XmlDocument>> {
  const reader = new XmlReader(limits);
  for await (const chunk of chunks) {
    reader.push(chunk);
    if (reader.stopped) break;
  }
  return reader.end();
}

/** Characters that are parsed at once: between them the limits are looked at. */
const PIECE_LENGTH = 64 * 1024;

function parseText(input: string, limits: XmlLimits): Result<XmlDocument> {
  if (input.length > limits.bytes) {
    const [message, hint] = overLimit(limits, 'bytes', `more than ${limits.bytes} bytes`);
    return refuse(error('XML_LIMIT', message, { hint }));
  }
  const lone = /\p{Surrogate}/u.exec(input);
  if (lone !== null) {
    const line = input.slice(0, lone.index).split('\n').length;
    return refuse(error('NOT_TEXT', 'Half of a surrogate pair stands alone.', { line }));
  }
  const bom = input.startsWith('\ufeff');
  try {
    const tree = new TreeReader(limits, () => undefined);
    for (let at = bom ? 1 : 0; at < input.length; ) {
      const end = at + PIECE_LENGTH;
      // A pair of surrogates is one character.
      const next = /[\udc00-\udfff]/.test(input[end] ?? '') ? end + 1 : end;
      tree.write(input.slice(at, next));
      at = next;
    }
    return done({ ...tree.end(), encoding: 'utf-8', bom });
  } catch (stop) {
    if (stop instanceof ReadingStopped) return refuse(stop.problem);
    throw stop;
  }
}
