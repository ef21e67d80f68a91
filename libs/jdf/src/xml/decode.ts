import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import type { XmlEncoding } from './node.js';

export interface DecodedXml {
  readonly text: string;
  readonly encoding: XmlEncoding;
  readonly bom: boolean;
}

// XML 1.0 section 4.3.3 and appendix F: UTF-16 must begin with a byte order mark; without one the text is UTF-8.
const DECLARED = /^<\?xml\s[^>]{0,200}?encoding\s*=\s*["']([A-Za-z][A-Za-z0-9._-]*)["']/;
const AGREES: Record<XmlEncoding, RegExp> = {
  'utf-8': /^utf-?8$/i,
  'utf-16le': /^utf-16(le)?$/i,
  'utf-16be': /^utf-16(be)?$/i,
};

/**
 * Bytes to text, without guessing: UTF-8, or UTF-16 with a byte order mark; every byte must be valid and the encoding
 * that the XML declaration names must agree. Error: NOT_TEXT.
 */
export function decodeXml(bytes: Uint8Array): Result<DecodedXml> {
  const { encoding, bomLength } = encodingOf(bytes);
  const body = bytes.subarray(bomLength);
  let text: string;
  try {
    text = new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(body);
  } catch {
    return refuse(
      notText(`The bytes are not valid ${encoding.toUpperCase()}.`, firstBadLine(body, encoding)),
    );
  }
  if (text.startsWith('<\u0000') || text.startsWith('\u0000<')) {
    return refuse(notText('The bytes look like UTF-16 or UTF-32 without a byte order mark.', 1));
  }
  const declared = DECLARED.exec(text)?.[1];
  if (declared !== undefined && !AGREES[encoding].test(declared)) {
    return refuse(
      notText(
        `The XML declaration says ${declared}, but the bytes are read as ${encoding.toUpperCase()}.`,
        1,
      ),
    );
  }
  return done({ text, encoding, bom: bomLength > 0 });
}

function encodingOf(bytes: Uint8Array): { encoding: XmlEncoding; bomLength: number } {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { encoding: 'utf-8', bomLength: 3 };
  if (a === 0xff && b === 0xfe) return { encoding: 'utf-16le', bomLength: 2 };
  if (a === 0xfe && b === 0xff) return { encoding: 'utf-16be', bomLength: 2 };
  return { encoding: 'utf-8', bomLength: 0 };
}

/** The line of the first byte that a lenient decoder had to replace. */
function firstBadLine(body: Uint8Array, encoding: XmlEncoding): number {
  const lenient = new TextDecoder(encoding, { ignoreBOM: true }).decode(body);
  const at = lenient.indexOf('\ufffd');
  return at < 0 ? 1 : lenient.slice(0, at).split('\n').length;
}

function notText(message: string, line: number): Problem {
  return error('NOT_TEXT', message, {
    line,
    hint: 'Save the file as UTF-8, or as UTF-16 with a byte order mark.',
  });
}
