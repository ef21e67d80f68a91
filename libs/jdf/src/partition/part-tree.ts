import { oncePer } from '#libs/kernel';
import { splitTokens } from '../codec/index.js';
import type { PartKeys } from '../elements/part.js';
import { attributeOf, childElements, firstChild, isElement, type XmlElement } from '../xml/index.js';
import { groupsOf } from './key-group.js';
import { isPartitionKey } from './keys.js';
import type { PartGroup, PartNode, PartTree, StatedKey } from './part-node.js';

export type * from './part-node.js';

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

/**
 * Reads the partition tree. Never deeper than there are keys: what is written below belongs to no part. A part that
 * skips keys, or has several, gets what it states; one without a further key is no part (the check of the tree tells).
 */
export const partTreeOf = oncePer((resource: XmlElement): PartTree => {
  const keys = [...new Set(partitionKeysOf(resource))].filter(
    (name) => isPartitionKey(name) || name.includes(':'),
  );
  const root = new Part(resource, undefined, '', '', NO_MORE, 0);
  const stated = attributeOf(resource, 'PartUsage');
  const usage = stated === 'Implicit' || stated === 'Sparse' ? stated : 'Explicit';
  const count = { parts: 0, identical: 0 };
  addParts(root, keys, 0, count);
  return { root, keys, usage, hasIdentical: count.identical > 0 };
});

/** A node of the tree. Its chain and keys are put together when somebody asks: most are only looked through. */
class Part implements PartNode {
  readonly identical: XmlElement | undefined;
  parts: readonly Part[] = NO_PARTS;
  groups: readonly PartGroup[] = NO_GROUPS;
  #chain: readonly XmlElement[] | undefined;
  #keys: PartKeys | undefined;

  constructor(
    readonly element: XmlElement,
    readonly parent: Part | undefined,
    readonly key: string,
    readonly value: string,
    readonly more: readonly StatedKey[],
    readonly order: number,
  ) {
    this.identical = parent && firstChild(element, 'Identical');
  }

  /** Takes its parts in, when all are there. */
  divide(parts: readonly Part[]): void {
    this.parts = parts;
    this.groups = groupsOf(parts);
  }

  get chain(): readonly XmlElement[] {
    this.#chain ??= [...(this.parent?.chain ?? []), this.element];
    return this.#chain;
  }

  get keys(): PartKeys {
    if (this.#keys === undefined) {
      const keys: Record<string, string> = { ...this.parent?.keys };
      for (const { key, value } of this.more) keys[key] = value;
      if (this.parent !== undefined) keys[this.key] = this.value;
      this.#keys = keys;
    }
    return this.#keys;
  }
}

const NO_PARTS: readonly Part[] = [];
const NO_GROUPS: readonly PartGroup[] = [];
const NO_MORE: readonly StatedKey[] = [];

interface Count {
  parts: number;
  identical: number;
}

function addParts(at: Part, keys: readonly string[], from: number, count: Count): void {
  const { local, uri, children } = at.element;
  if (from >= keys.length || children.length === 0) return;
  const parts: Part[] = [];
  for (const element of children) {
    if (!isElement(element, local, uri)) continue;
    let last: StatedKey | undefined;
    let more = NO_MORE;
    let next = from;
    for (let i = from; i < keys.length; i++) {
      const key = keys[i]!;
      const value = keyValueOf(element, key);
      if (value === undefined) continue;
      if (last !== undefined) more = [...more, last];
      last = { key, value };
      next = i + 1;
    }
    if (last === undefined) continue;
    const node = new Part(element, at, last.key, last.value, more, ++count.parts);
    if (node.identical !== undefined) count.identical++;
    parts.push(node);
    addParts(node, keys, next, count);
  }
  if (parts.length > 0) at.divide(parts);
}
