const LF = 0x0a;
const CR = 0x0d;
const DASH = 0x2d;

/** Blanks that may follow a boundary on its line. More make it a line of text: nobody has to hold an endless one. */
const MOST_PADDING = 256;

/** What a multipart body consists of: bytes between boundaries, a boundary before a part, and the one that closes. */
export type Piece =
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array }
  | { readonly kind: 'boundary' }
  | { readonly kind: 'closing' };

type Line = { readonly kind: 'boundary' | 'closing'; readonly next: number } | 'text' | 'undecided';

/**
 * Finds the boundary lines of a multipart body (RFC 2046 section 5.1.1) in bytes that come in chunks, cut anywhere; holds
 * back at most one line. A line counts only when it is the boundary to its end (white space may follow), so text that
 * merely begins like it stays text. The line break before a boundary belongs to it; LF alone is taken for one as well.
 */
export class BoundarySplitter {
  readonly #delimiter: Buffer;
  readonly #lineWithDelimiter: Buffer;
  #held: Buffer = Buffer.alloc(0);
  #atLineStart = true;
  #closed = false;

  constructor(boundary: string) {
    this.#delimiter = Buffer.from(`--${boundary}`, 'latin1');
    this.#lineWithDelimiter = Buffer.from(`\n--${boundary}`, 'latin1');
  }

  /** Bytes that wait for what comes next. */
  get heldBytes(): number {
    return this.#held.length;
  }

  /** What a chunk settles; nothing after the closing boundary. */
  push(chunk: Uint8Array): Piece[] {
    return this.#closed ? [] : this.#split(this.#joined(chunk), false);
  }

  /** Nothing more comes: what was held back is decided. */
  end(): Piece[] {
    return this.#closed ? [] : this.#split(this.#joined(new Uint8Array()), true);
  }

  #joined(chunk: Uint8Array): Buffer {
    const fresh = Buffer.from(chunk.buffer, chunk.byteOffset, chunk.byteLength);
    return this.#held.length === 0 ? fresh : Buffer.concat([this.#held, fresh]);
  }

  #split(buffer: Buffer, isLast: boolean): Piece[] {
    const pieces: Piece[] = [];
    let from = 0;
    let search = 0;
    for (;;) {
      const at = this.#nextDelimiter(buffer, from, search);
      if (at === null) return this.#keep(pieces, buffer, from, this.#safeEnd(buffer, from, isLast));
      const line = readLine(buffer, at + this.#delimiter.length, isLast);
      if (line === 'undecided') return this.#keep(pieces, buffer, from, lineBreakBefore(buffer, from, at));
      if (line === 'text') {
        search = at + 1;
        continue;
      }
      addBytes(pieces, buffer, from, lineBreakBefore(buffer, from, at));
      pieces.push({ kind: line.kind });
      from = line.next;
      search = from;
      this.#atLineStart = true;
      if (line.kind === 'closing') {
        this.#closed = true;
        this.#held = Buffer.alloc(0);
        return pieces;
      }
    }
  }

  /** Where the next line begins with the delimiter. */
  #nextDelimiter(buffer: Buffer, from: number, search: number): number | null {
    const startsHere = search === from && this.#atLineStart;
    if (startsHere && buffer.subarray(from, from + this.#delimiter.length).equals(this.#delimiter)) {
      return from;
    }
    // A search that goes on behind a rejected delimiter may have to look at the line feed before its place.
    const found = buffer.indexOf(this.#lineWithDelimiter, Math.max(from, search - 1));
    return found < 0 ? null : found + 1;
  }

  /** How far the bytes can be given out: none that might turn out to begin a boundary. */
  #safeEnd(buffer: Buffer, from: number, isLast: boolean): number {
    if (isLast) return buffer.length;
    const mayBegin = this.#atLineStart && buffer.length - from < this.#delimiter.length;
    return mayBegin ? from : Math.max(from, buffer.length - this.#delimiter.length - 1);
  }

  #keep(pieces: Piece[], buffer: Buffer, from: number, until: number): Piece[] {
    addBytes(pieces, buffer, from, until);
    if (until > from) this.#atLineStart = false;
    // A copy: the chunk belongs to whoever gave it.
    this.#held = Buffer.from(buffer.subarray(until));
    return pieces;
  }
}

function addBytes(pieces: Piece[], buffer: Buffer, from: number, until: number): void {
  if (until > from) pieces.push({ kind: 'bytes', bytes: buffer.subarray(from, until) });
}

/** What follows the delimiter: `--` closes; then only blanks up to the line's end. */
function readLine(buffer: Buffer, after: number, isLast: boolean): Line {
  const open = isLast ? 'text' : 'undecided';
  if (buffer[after] === DASH && after + 1 >= buffer.length) return open;
  const closes = buffer[after] === DASH && buffer[after + 1] === DASH;
  const kind = closes ? 'closing' : 'boundary';
  const blanks = closes ? after + 2 : after;
  let at = blanks;
  while (buffer[at] === 0x20 || buffer[at] === 0x09) at++;
  if (at - blanks > MOST_PADDING) return 'text';
  if (at >= buffer.length) return isLast && closes ? { kind, next: at } : open;
  if (buffer[at] === LF) return { kind, next: at + 1 };
  if (buffer[at] !== CR) return 'text';
  if (at + 1 >= buffer.length) return open;
  return buffer[at + 1] === LF ? { kind, next: at + 2 } : 'text';
}

/** Where the line break before a boundary begins; never before `from`. */
function lineBreakBefore(buffer: Buffer, from: number, at: number): number {
  if (at - 1 < from) return at;
  return at - 2 >= from && buffer[at - 2] === CR ? at - 2 : at - 1;
}
