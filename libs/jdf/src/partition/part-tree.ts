import { splitTokens } from '../codec/index.js';
import type { PartKeys } from '../elements/part.js';
import { attributeOf, childElements, firstChild, type XmlElement } from '../xml/index.js';
import { isPartitionKey } from './keys.js';

/** How a selection may name what is not there: PartUsage of the resource, Explicit where it says nothing. */
export type PartUsage = 'Explicit' | 'Implicit' | 'Sparse';

/** The partition tree of a resource. Made once for each, in one pass; resources never change. */
export interface PartTree {
  readonly root: PartNode;
  /** The keys that PartIDKeys names, outermost first, each once; names that are no keys left out. */
  readonly keys: readonly string[];
  readonly usage: PartUsage;
  /** Whether any part is identical to another, so that a part may have several names. */
  readonly hasIdentical: boolean;
}

/** A resource or one of its parts. */
export interface PartNode {
  readonly element: XmlElement;
  readonly parent: PartNode | undefined;
  /** The key that this part has beyond the part around it; of a wrongly written one the last; '' for the root. */
  readonly key: string;
  /** Further keys of its own, which only a wrongly written part has. */
  readonly more: readonly string[];
  /** The elements from the root down to this one. */
  readonly chain: readonly XmlElement[];
  /** All keys that lead here, with their values. */
  readonly keys: PartKeys;
  /** Its Identical element: it is physically one with another part. */
  readonly identical: XmlElement | undefined;
  /** How many parts stand before it in the document. */
  readonly order: number;
  readonly parts: readonly PartNode[];
}

/** The keys of a partitioned resource, outermost first. */
export function partitionKeysOf(resource: XmlElement): readonly string[] {
  return splitTokens(attributeOf(resource, 'PartIDKeys') ?? '');
}

/** The parts directly below a resource or part. */
export function partsOf(el: XmlElement): XmlElement[] {
  return childElements(el, el.local);
}

/** The value of a key that a part states itself. Keys of other namespaces are written with their prefix. */
export function keyValueOf(part: XmlElement, key: string): string | undefined {
  if (!key.includes(':')) return attributeOf(part, key);
  return part.attributes.find(({ name }) => name === key)?.value;
}

const trees = new WeakMap<XmlElement, PartTree>();

/**
 * Reads the partition tree. Never deeper than there are keys: what is written below belongs to no part. A part that
 * skips keys, or has several, gets what it states; one without a further key is no part (the check of the tree tells).
 */
export function partTreeOf(resource: XmlElement): PartTree {
  const known = trees.get(resource);
  if (known !== undefined) return known;
  const keys = [...new Set(partitionKeysOf(resource))].filter(
    (name) => isPartitionKey(name) || name.includes(':'),
  );
  const root = new Part(resource, undefined, '', [], [], undefined, 0);
  const stated = attributeOf(resource, 'PartUsage');
  const usage = stated === 'Implicit' || stated === 'Sparse' ? stated : 'Explicit';
  const count = { parts: 0, identical: 0 };
  addParts(root, keys, 0, count);
  const tree = { root, keys, usage, hasIdentical: count.identical > 0 } as const;
  trees.set(resource, tree);
  return tree;
}

/** A node of the tree. Its chain and keys are put together when somebody asks: most are only looked through. */
class Part implements PartNode {
  readonly parts: Part[] = [];
  #chain: readonly XmlElement[] | undefined;
  #keys: PartKeys | undefined;

  constructor(
    readonly element: XmlElement,
    readonly parent: Part | undefined,
    readonly key: string,
    readonly more: readonly string[],
    readonly stated: readonly (readonly [key: string, value: string])[],
    readonly identical: XmlElement | undefined,
    readonly order: number,
  ) {}

  get chain(): readonly XmlElement[] {
    this.#chain ??= [...(this.parent?.chain ?? []), this.element];
    return this.#chain;
  }

  get keys(): PartKeys {
    if (this.#keys === undefined) {
      const keys: Record<string, string> = { ...this.parent?.keys };
      for (const [key, value] of this.stated) keys[key] = value;
      this.#keys = keys;
    }
    return this.#keys;
  }
}

interface Count {
  parts: number;
  identical: number;
}

function addParts(at: Part, keys: readonly string[], from: number, count: Count): void {
  if (from >= keys.length) return;
  for (const element of partsOf(at.element)) {
    const stated: [string, string][] = [];
    let next = from;
    for (let i = from; i < keys.length; i++) {
      const value = keyValueOf(element, keys[i]!);
      if (value === undefined) continue;
      stated.push([keys[i]!, value]);
      next = i + 1;
    }
    if (next === from) continue;
    const identical = firstChild(element, 'Identical');
    if (identical !== undefined) count.identical++;
    const more = stated.length > 1 ? stated.slice(0, -1).map(([key]) => key) : NONE;
    const node = new Part(element, at, keys[next - 1]!, more, stated, identical, ++count.parts);
    at.parts.push(node);
    addParts(node, keys, next, count);
  }
}

const NONE: readonly string[] = [];
