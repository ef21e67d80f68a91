import { attributeOf, descendants, type XmlDocument } from '../xml/index.js';

/** An ID that XML allows and both generations take; what a faulty document has instead is none. */
export function usableId(id: string | undefined): string | undefined {
  return id !== undefined && id.length <= 63 && NCNAME.test(id) ? id : undefined;
}

const NCNAME = /^[\p{L}_][\p{L}\p{N}\p{M}._\u00b7-]*$/u;

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
    const safe = usableId(start.slice(0, 40)) ?? 'r';
    let n = this.#counts.get(safe) ?? 0;
    let id: string;
    do id = `${safe}_${++n}`;
    while (this.#used.has(id));
    this.#counts.set(safe, n);
    this.#used.add(id);
    return id;
  }
}
