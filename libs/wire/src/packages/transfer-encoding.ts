const CR = 0x0d;
const LF = 0x0a;
const TAB = 0x09;
const SPACE = 0x20;
const EQUALS = 0x3d;

/**
 * Turns the bytes of a part into its content, chunk by chunk (RFC 2045 section 6). Null where they do not follow the
 * encoding; nothing may be pushed after that.
 */
export interface Decoder {
  push(bytes: Uint8Array): Uint8Array | null;
  end(): Uint8Array | null;
}

/** The encodings that are no transformation: RFC 2045 section 6.2. Without a name, bytes are taken as they are. */
export const PLAIN_ENCODINGS: ReadonlySet<string> = new Set(['', '7bit', '8bit', 'binary']);

/**
 * A decoder for the encoding that a header names, in lower case, or null for one that nobody knows. The standard asks
 * for base64 and recommends 8bit and binary; quoted-printable is read because mail software writes it.
 */
export function makeDecoder(encoding: string): Decoder | null {
  if (PLAIN_ENCODINGS.has(encoding)) return { push: (bytes) => bytes, end: () => new Uint8Array() };
  if (encoding === 'base64') return new Base64Decoder();
  return encoding === 'quoted-printable' ? new QuotedPrintableDecoder() : null;
}

/** Strict, because Node's own reader skips whatever it does not understand and would pass half a ticket. */
class Base64Decoder implements Decoder {
  #rest = '';
  #isPadded = false;

  push(bytes: Uint8Array): Uint8Array | null {
    const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const fresh = buffer.toString('latin1').replace(/[\r\n\t ]+/g, '');
    if (fresh === '') return new Uint8Array();
    // Nothing may follow the padding but what completes it.
    const text = this.#rest + fresh;
    if (this.#isPadded || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
    const whole = text.length - (text.length % 4);
    this.#rest = text.slice(whole);
    const ready = text.slice(0, whole);
    this.#isPadded = ready.endsWith('=');
    if (this.#isPadded && this.#rest !== '') return null;
    return Buffer.from(ready, 'base64');
  }

  end(): Uint8Array | null {
    return this.#rest === '' ? new Uint8Array() : null;
  }
}

/** White space at the end of a line is padding of the transport and not content (RFC 2045 section 6.7, rule 3). */
class QuotedPrintableDecoder implements Decoder {
  /** From the last byte on that what follows may change: blanks, CR, or the beginning of an escape. */
  #held: Uint8Array = new Uint8Array();

  push(bytes: Uint8Array): Uint8Array | null {
    return this.#decode(Buffer.concat([this.#held, bytes]), false);
  }

  end(): Uint8Array | null {
    return this.#decode(this.#held, true);
  }

  #decode(bytes: Uint8Array, isLast: boolean): Uint8Array | null {
    const out = new Uint8Array(bytes.length);
    let length = 0;
    let at = 0;
    const hold = (): Uint8Array => {
      this.#held = Uint8Array.prototype.slice.call(bytes, at);
      return out.subarray(0, length);
    };
    while (at < bytes.length) {
      const byte = bytes[at]!;
      const isEscape = byte === EQUALS;
      if (!isEscape && byte !== SPACE && byte !== TAB) {
        out[length++] = byte;
        at++;
        continue;
      }
      const blanks = isEscape ? at + 1 : at;
      let next = blanks;
      while (bytes[next] === SPACE || bytes[next] === TAB) next++;
      if (next - blanks > MOST_BLANKS) return null;
      const cutShort = next >= bytes.length || (bytes[next] === CR && next + 1 >= bytes.length);
      if (cutShort && !isLast) return hold();
      const lineEnd = lineEndAt(bytes, next);
      if (lineEnd !== null) {
        // Blanks before a line's end go, the end itself stays; after an equals sign both go.
        at = isEscape ? lineEnd : next;
      } else if (!isEscape) {
        while (at < next) out[length++] = bytes[at++]!;
      } else {
        if (next === blanks && next + 1 >= bytes.length && !isLast) return hold();
        const value = next === blanks ? hexAt(bytes, next) : null;
        if (value === null) return null;
        out[length++] = value;
        at = next + 2;
      }
    }
    this.#held = new Uint8Array();
    return out.subarray(0, length);
  }
}

/** RFC 2045 allows lines of 76 characters; what is longer than this is no padding. */
const MOST_BLANKS = 1000;

/** Where the line goes on that ends at `at`, which may be the end of all; null when there is no line's end. */
function lineEndAt(bytes: Uint8Array, at: number): number | null {
  if (at >= bytes.length) return at;
  if (bytes[at] === LF) return at + 1;
  return bytes[at] === CR && bytes[at + 1] === LF ? at + 2 : null;
}

function hexAt(bytes: Uint8Array, at: number): number | null {
  const pair = String.fromCharCode(bytes[at] ?? 0, bytes[at + 1] ?? 0);
  return /^[0-9A-Fa-f]{2}$/.test(pair) ? Number.parseInt(pair, 16) : null;
}

/** Content bytes that make one line of base64 of 76 characters (RFC 2045 section 6.8). */
const LINE_BYTES = 57;

/** Base64 in lines, chunk by chunk, each line but the last with its line break. */
export async function* encodeBase64(
  content: Iterable<Uint8Array> | AsyncIterable<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  let rest: Uint8Array = new Uint8Array();
  for await (const chunk of content) {
    const bytes = rest.length === 0 ? chunk : Buffer.concat([rest, chunk]);
    // The last line is held back, since only the end of all shows that no other follows.
    const whole = Math.floor(Math.max(0, bytes.length - 1) / LINE_BYTES) * LINE_BYTES;
    if (whole > 0) yield lines(bytes.subarray(0, whole), '\r\n');
    // A copy: the chunk belongs to whoever gave it.
    rest = Uint8Array.from(bytes.subarray(whole));
  }
  if (rest.length > 0) yield lines(rest, '');
}

function lines(bytes: Uint8Array, lastBreak: string): Uint8Array {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64');
  return Buffer.from(text.replace(/.{76}(?=.)/g, '$&\r\n') + lastBreak, 'latin1');
}
