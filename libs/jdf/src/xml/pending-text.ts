/**
 * The text that was handed to the parser and has not become a node yet. Pieces are kept apart: a node's text is a slice
 * of the piece it lies in, and only what crosses from one piece to the next is joined.
 */
export class PendingText {
  /** Whether there is a reference in the piece, or was one in what is still open from those before it. */
  mayRefer = false;
  #piece = '';
  /** Position of the piece's first character in the whole text. */
  #pieceAt = 0;
  /** What is open from earlier pieces. */
  #rest = '';
  /** Up to here the text has become nodes. */
  #taken = 0;
  #held = '';

  /** Takes a piece in and answers what the parser may read now. */
  add(piece: string): string {
    const all = this.#held + piece;
    // The parser tells of a comment one character before its end, which must be there too; and half a line end is none.
    this.#held = all.endsWith('-') || all.endsWith('\r') ? all.slice(-1) : '';
    return this.#next(this.#held === '' ? all : all.slice(0, -1));
  }

  /** What was held back, when nothing follows. */
  addLast(): string {
    const left = this.#held;
    this.#held = '';
    return this.#next(left);
  }

  #next(piece: string): string {
    this.#rest = this.#open;
    this.mayRefer = piece.includes('&') || (this.mayRefer && this.#rest !== '');
    this.#pieceAt += this.#piece.length;
    this.#piece = piece;
    return piece;
  }

  get #open(): string {
    return this.#rest + this.#piece.slice(Math.max(0, this.#taken - this.#pieceAt));
  }

  /** Where the text ends that the parser has got. */
  get end(): number {
    return this.#pieceAt + this.#piece.length;
  }

  /** How much the parser has got that is no node yet. */
  get length(): number {
    return this.end - this.#taken;
  }

  /** The first characters of that. */
  get begin(): string {
    return this.#open.slice(0, 9);
  }

  /** The line ends in that, as far as a position. */
  lineEndsUntil(position: number): number {
    return lineEndsIn(this.#open.slice(0, position - this.#taken));
  }

  /**
   * How many line ends lie between a "&" that begins no reference and a position; undefined where there is no such sign
   * in markup or text. The parser looks for the ";" of a reference wherever it may be, and fails far from the sign.
   */
  linesSinceBareAmpersand(position: number): number | undefined {
    const open = this.#open.slice(0, position - this.#taken);
    if (/^<[!?]/.test(open)) return undefined;
    const found = BARE_AMPERSAND.exec(open);
    return found === null ? undefined : lineEndsIn(open.slice(found.index));
  }

  /** Whether nothing but blanks is open. */
  get isBlank(): boolean {
    return /^[ \t\r\n]*$/.test(this.#open);
  }

  /** How many line ends lie between the first character of the open text that is no blank and a position. */
  linesSinceText(position: number): number {
    const open = this.#open.slice(0, position - this.#taken);
    return lineEndsIn(open.slice(Math.max(0, open.search(/[^ \t\r\n]/))));
  }

  charBefore(position: number): string | undefined {
    return this.#piece[position - this.#pieceAt - 1];
  }

  /** The text up to a position. */
  take(end: number): string {
    const from = this.#taken - this.#pieceAt;
    this.#taken = end;
    if (from >= 0) return this.#piece.slice(from, end - this.#pieceAt);
    const text = this.#rest + this.#piece.slice(0, end - this.#pieceAt);
    this.#rest = '';
    return text;
  }

  /** Takes the blanks that the open text begins with. */
  takeBlanks(): string {
    return this.take(this.#taken + /^[ \t\r\n]*/.exec(this.#open)![0].length);
  }

  /** Takes the text up to a position only if it is this one; spares a copy of what is known already. */
  takeIf(text: string, end: number): boolean {
    const from = this.#taken - this.#pieceAt;
    if (from < 0 || end - this.#taken !== text.length || !this.#piece.startsWith(text, from)) return false;
    this.#taken = end;
    return true;
  }
}

const BARE_AMPERSAND = /&(?!#\d+;|#x[\da-fA-F]+;|[A-Za-z_:\u0080-\uffff][\w:.\u0080-\uffff-]*;)/;

const lineEndsIn = (text: string): number => text.match(/\r\n?|\n/g)?.length ?? 0;
