import { attributeOf, descendants, type XmlDocument } from '../xml/index.js';

/** Gives out IDs that are used once in a document. */
export class Ids {
  readonly #used = new Set<string>();
  readonly #counts = new Map<string, number>();

  /** The IDs of a document are spoken for: only their own elements get them. */
  constructor(doc: XmlDocument) {
    for (const el of descendants(doc.root)) {
      const id = attributeOf(el, 'ID');
      if (id !== undefined) this.#used.add(id);
    }
  }

  /** An ID that begins so and is nobody else's. */
  make(start: string): string {
    let n = this.#counts.get(start) ?? 0;
    let id: string;
    do id = `${start}_${++n}`;
    while (this.#used.has(id));
    this.#counts.set(start, n);
    this.#used.add(id);
    return id;
  }
}
