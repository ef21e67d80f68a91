import { attributeOf, descendants, type XmlDocument } from '#libs/jdf';

/**
 * Gives IDs to what is added to a document. All begin with one prefix that no ID of the document begins with, and the same
 * key always has the same ID, so that a ticket sent to a device and the exported ticket name the same things.
 */
export class IdBook {
  readonly #prefix: string;
  readonly #given = new Map<string, string>();
  readonly #taken = new Set<string>();

  constructor(document: XmlDocument | null) {
    const ids =
      document === null ? [] : [...descendants(document.root)].flatMap((el) => attributeOf(el, 'ID') ?? []);
    let prefix = 'sl_';
    for (let n = 1; ids.some((id) => id.startsWith(prefix)); n++) prefix = `sl${n}_`;
    this.#prefix = prefix;
  }

  /** Makes a key stand for something that is in the document already. */
  alias(key: string, id: string): void {
    this.#given.set(key, id);
  }

  idOf(key: string): string {
    const known = this.#given.get(key);
    if (known !== undefined) return known;
    const base = `${this.#prefix}${key.replaceAll(/[^A-Za-z0-9._-]/g, '_')}`.slice(0, LONGEST);
    let id = base;
    for (let n = 2; this.#taken.has(id); n++) id = `${base}_${n}`;
    this.#taken.add(id);
    this.#given.set(key, id);
    return id;
  }
}

// The schema allows 63 characters; some are left for a number.
const LONGEST = 56;
