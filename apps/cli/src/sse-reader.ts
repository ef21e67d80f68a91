export interface SseEvent {
  /** Of this event or, where it has none, of the latest that had one. */
  readonly id: string;
  readonly data: string;
}

/** Longer than any event of ours: a server that sends this much without an end is none. */
const LONGEST = 16_000_000;

/** Reads server-sent events out of the pieces of a stream (WHATWG HTML, "Server-sent events", 9.2.5 and 9.2.6). */
export class SseReader {
  #pending = '';
  #data: string[] = [];
  #id = '';
  #retryMs: number | null = null;

  /** How long the server asks to wait before the next connection; null when it did not say. */
  get retryMs(): number | null {
    return this.#retryMs;
  }

  /** The events that end in this piece. Throws when one grows beyond all measure. */
  push(piece: string): readonly SseEvent[] {
    this.#pending += piece;
    if (this.#pending.length > LONGEST) throw new Error('the stream sends an event without an end');
    const events: SseEvent[] = [];
    for (;;) {
      // A carriage return at the end may be half of a line end.
      const end = /\r\n|\n|\r(?!$)/.exec(this.#pending);
      if (end === null) return events;
      const event = this.#line(this.#pending.slice(0, end.index));
      this.#pending = this.#pending.slice(end.index + end[0].length);
      if (event !== null) events.push(event);
    }
  }

  #line(line: string): SseEvent | null {
    if (line === '') return this.#dispatch();
    const colon = line.indexOf(':');
    const field = colon < 0 ? line : line.slice(0, colon);
    const value = colon < 0 ? '' : line.slice(colon + 1).replace(/^ /, '');
    if (field === 'data') this.#data.push(value);
    if (field === 'id' && !value.includes('\0')) this.#id = value;
    if (field === 'retry' && /^\d+$/.test(value)) this.#retryMs = Number(value);
    return null;
  }

  #dispatch(): SseEvent | null {
    if (this.#data.length === 0) return null;
    const event = { id: this.#id, data: this.#data.join('\n') };
    this.#data = [];
    return event;
  }
}
