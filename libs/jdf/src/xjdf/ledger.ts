import {
  attributeOf,
  pathOf,
  XMLNS_NAMESPACE,
  type XmlAttribute,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '../xml/index.js';

/** Something that the other generation cannot say. */
export interface Lost {
  /** XPath in the document converted. */
  readonly path: string;
  readonly what: string;
  readonly line: number | null;
}

/**
 * The book over what was carried across. Whatever of the source was neither entered as carried nor as lost is found at
 * the end, so nothing can be dropped silently by a rule that forgets it.
 */
export class Ledger {
  readonly #doc: XmlDocument;
  /** How often each was carried; what is rolled back counts down again. */
  readonly #carried = new Map<XmlAttribute | XmlElement, number>();
  readonly #log: (XmlAttribute | XmlElement)[] = [];
  readonly #lost = new Map<XmlAttribute | XmlElement, string>();
  readonly #notes: Lost[] = [];

  constructor(doc: XmlDocument) {
    this.#doc = doc;
  }

  /** Enters what was carried across, once for each place it went to. */
  carry(...what: readonly (XmlAttribute | XmlElement | undefined)[]): void {
    for (const one of what) {
      if (one === undefined) continue;
      this.#carried.set(one, (this.#carried.get(one) ?? 0) + 1);
      this.#log.push(one);
    }
  }

  /** Enters attributes of an element by name as carried. */
  carryNamed(el: XmlElement, ...names: readonly string[]): void {
    for (const attribute of el.attributes) {
      if (attribute.uri === '' && names.includes(attribute.local)) this.carry(attribute);
    }
  }

  /** An element with all that is in it. */
  carryAll(el: XmlElement): void {
    this.carry(el, ...el.attributes);
    for (const child of el.children) if (child.kind === 'element') this.carryAll(child);
  }

  /** Where the book stands, for `back`. */
  get mark(): number {
    return this.#log.length;
  }

  /** Takes back what was entered as carried since a mark: the attempt came to nothing. */
  back(mark: number): void {
    for (const one of this.#log.splice(mark)) this.#carried.set(one, this.#carried.get(one)! - 1);
  }

  /** What is said of an attribute or element if in the end nothing carried it. */
  reason(one: XmlAttribute | XmlElement, what: string): void {
    if (!this.#lost.has(one)) this.#lost.set(one, what);
  }

  /** Something that was carried, but not as it was. */
  note(el: XmlElement, what: string, attribute?: string): void {
    const path = pathOf(this.#doc, el) + (attribute === undefined ? '' : `/@${attribute}`);
    if (this.#notes.some((known) => known.path === path && known.what === what)) return;
    this.#notes.push({ path, what, line: el.line || null });
  }

  isCarried(one: XmlAttribute | XmlElement): boolean {
    return (this.#carried.get(one) ?? 0) > 0;
  }

  /** Everything that is not on the other side, in document order, then what was carried changed. */
  losses(): Lost[] {
    const found: Lost[] = [];
    this.#sweep(this.#doc.root, found);
    return [...found, ...this.#notes];
  }

  #sweep(el: XmlElement, found: Lost[]): void {
    if (!this.#anyCarried(el)) {
      const what = this.#lost.get(el) ?? 'has no place in the other generation';
      found.push({ path: pathOf(this.#doc, el), what: `${el.name}: ${what}`, line: el.line || null });
      return;
    }
    for (const attribute of el.attributes) {
      if (attribute.uri === XMLNS_NAMESPACE || attribute.uri === XSI_NAMESPACE || this.isCarried(attribute))
        continue;
      const what = this.#lost.get(attribute) ?? 'has no place in the other generation';
      const path = `${pathOf(this.#doc, el)}/@${attribute.name}`;
      found.push({ path, what: `${attribute.name}="${attribute.value}": ${what}`, line: el.line || null });
    }
    for (const child of el.children) if (child.kind === 'element') this.#sweep(child, found);
  }

  #anyCarried(el: XmlElement): boolean {
    return (
      this.isCarried(el) ||
      el.attributes.some((attribute) => this.isCarried(attribute)) ||
      el.children.some((child) => child.kind === 'element' && this.#anyCarried(child))
    );
  }
}

/** The attribute itself, by local name, without a namespace. */
export function attributeNode(el: XmlElement, local: string): XmlAttribute | undefined {
  return el.attributes.find((one) => one.local === local && one.uri === '');
}

/** The value of an attribute, entered as carried. */
export function taken(ledger: Ledger, el: XmlElement, local: string): string | undefined {
  const value = attributeOf(el, local);
  if (value !== undefined) ledger.carryNamed(el, local);
  return value;
}
