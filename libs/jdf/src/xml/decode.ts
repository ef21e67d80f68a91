import { byteEncodingOf, declaredEncoding, isNameOf } from './encodings.js';
import type { XmlEncoding } from './node.js';
import { stopNotText } from './reading-stopped.js';

/** A piece of text and how many bytes it was; the rest is the beginning of a character and comes again. */
export interface DecodedPiece {
  readonly text: string;
  readonly used: number;
}

/**
 * Bytes to text piece by piece, without guessing: UTF-8; UTF-16 with a byte order mark; ISO-8859-1 and US-ASCII where the
 * XML declaration names them. Every byte must be valid and the declaration must agree. Stops with NOT_TEXT.
 *
 * ISO-8859-1 is done here, each byte being its own code point: the platform takes that name for another table, in which
 * 0x80 to 0x9F are letters and quotes.
 */
export class XmlDecoder {
  encoding: XmlEncoding = 'utf-8';
  bom = false;
  #decoder: TextDecoder | undefined;
  #begun = false;

  /**
   * The first piece must hold the whole XML declaration, and be all that there is if it is short. `line` is that of the
   * piece's first character; `last` says that nothing follows.
   */
  decode(bytes: Uint8Array, line: number, last: boolean): DecodedPiece {
    if (this.#begun) return this.#decodeFrom(bytes, 0, line, last);
    this.#begun = true;
    refuseByMark(bytes);
    const bomLength = this.#readMark(bytes);
    const head = bytes.subarray(0, 2048);
    if (this.encoding === 'utf-8') this.#chooseByDeclaration(latin1(head, 0, head.length));
    const piece = this.#decodeFrom(bytes, bomLength, line, last);
    if (this.encoding.startsWith('utf-16')) this.#mustAgree(declaredEncoding(piece.text));
    return piece;
  }

  /** Stops where the declaration, as the parser understood it, names another encoding than the one read. */
  mustBe(declared: string): void {
    this.#mustAgree(declared);
  }

  #readMark([a, b, c]: Uint8Array): number {
    if (a === 0xef && b === 0xbb && c === 0xbf) this.bom = true;
    else if (a === 0xff && b === 0xfe) this.encoding = 'utf-16le';
    else if (a === 0xfe && b === 0xff) this.encoding = 'utf-16be';
    if (this.bom) return 3;
    this.bom = this.encoding !== 'utf-8';
    return this.bom ? 2 : 0;
  }

  #chooseByDeclaration(head: string): void {
    const declared = declaredEncoding(this.bom ? head.slice(3) : head);
    if (declared === undefined) return;
    const oneByte = this.bom ? undefined : byteEncodingOf(declared);
    if (oneByte === undefined) this.#mustAgree(declared);
    else this.encoding = oneByte;
  }

  #mustAgree(declared: string | undefined): void {
    if (declared === undefined || isNameOf(declared, this.encoding)) return;
    const known = /^utf-?(8|16|16le|16be)$/i.test(declared) || byteEncodingOf(declared) !== undefined;
    const bytes = `${this.encoding.toUpperCase()}${this.bom ? ', by their byte order mark' : ''}`;
    if (known) stopNotText(`The XML declaration says ${declared}, but the bytes are ${bytes}.`, 1);
    stopNotText(`The XML declaration says ${declared.slice(0, 60)}, an encoding that is not read here.`, 1);
  }

  #decodeFrom(bytes: Uint8Array, from: number, line: number, last: boolean): DecodedPiece {
    if (this.encoding === 'iso-8859-1')
      return { text: latin1(bytes, from, bytes.length), used: bytes.length };
    if (this.encoding === 'us-ascii') return this.#ascii(bytes, line);
    const used = last ? bytes.length : wholeUntil(bytes, this.encoding);
    const body = bytes.subarray(from, used);
    this.#decoder ??= new TextDecoder(this.encoding, { fatal: true, ignoreBOM: true });
    try {
      return { text: this.#decoder.decode(body), used };
    } catch {
      const name = this.encoding.toUpperCase();
      stopNotText(`The bytes are not valid ${name}.`, line + linesBefore(body, this.encoding));
    }
  }

  #ascii(bytes: Uint8Array, line: number): DecodedPiece {
    const text = latin1(bytes, 0, bytes.length);
    const bad = /[\x80-\xff]/.exec(text);
    if (bad === null) return { text, used: bytes.length };
    const byte = text.charCodeAt(bad.index).toString(16).toUpperCase();
    stopNotText(
      `The XML declaration says US-ASCII, but there is a byte 0x${byte}.`,
      line + lineEnds(text.slice(0, bad.index)),
    );
  }
}

/** Beginnings that no encoding read here can have. Source: XML 1.0, appendix F. */
function refuseByMark([a, b, c, d]: Uint8Array): void {
  const first = [a, b, c, d].map((byte) => (byte ?? 0xaa).toString(16).padStart(2, '0')).join('');
  if (first === 'fffe0000' || first === '0000feff')
    stopNotText('The bytes are UTF-32, which is not read here.', 1);
  if (first === '4c6fa794') stopNotText('The bytes are EBCDIC, which is not read here.', 1);
  if (/^(3c00|003c|0000003c)/.test(first)) {
    stopNotText('The bytes look like UTF-16 or UTF-32 without a byte order mark.', 1);
  }
}

/** Each byte as the character of that number. */
function latin1(bytes: Uint8Array, from: number, to: number): string {
  let text = '';
  for (let at = from; at < to; at += 4096) {
    text += String.fromCharCode(...bytes.subarray(at, Math.min(at + 4096, to)));
  }
  return text;
}

/** Where the last character that is whole ends. */
function wholeUntil(bytes: Uint8Array, encoding: XmlEncoding): number {
  const { length } = bytes;
  if (encoding !== 'utf-8') {
    const even = length - (length % 2);
    const high = bytes[even - (encoding === 'utf-16le' ? 1 : 2)];
    return high !== undefined && high >= 0xd8 && high <= 0xdb ? even - 2 : even;
  }
  // A lead byte among the last three whose character needs more bytes than follow.
  for (let back = 1; back <= Math.min(3, length); back++) {
    const byte = bytes[length - back]!;
    if (byte < 0x80) break;
    if (byte >= 0xc0) return back < (byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2) ? length - back : length;
  }
  return length;
}

/** How many lines end before the first byte that is not valid: the longest beginning that decodes, by halving. */
function linesBefore(body: Uint8Array, encoding: XmlEncoding): number {
  // Told that more follows, a decoder forgives a character cut short, so "valid up to here" is monotonic.
  const decoded = (length: number): string | null => {
    try {
      return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(body.subarray(0, length), {
        stream: true,
      });
    } catch {
      return null;
    }
  };
  let valid = 0;
  let invalid = body.length + 1;
  while (invalid - valid > 1) {
    const middle = (valid + invalid) >> 1;
    if (decoded(middle) === null) invalid = middle;
    else valid = middle;
  }
  return lineEnds(decoded(valid) ?? '');
}

function lineEnds(text: string): number {
  return text.match(/\r\n?|\n/g)?.length ?? 0;
}
