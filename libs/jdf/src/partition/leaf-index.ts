import type { PartKeys } from '../elements/part.js';
import type { Partition } from './resolve.js';

/**
 * Finds the leaves that a Part means without looking at all of them: those that do not differ in a key that both state.
 * A resource may have thousands of leaves, and a link for each.
 */
export class LeafIndex {
  readonly #places: ReadonlyMap<Partition, number>;
  /** By the keys that leaves and a Part both state, then by the values of these. */
  readonly #byValues = new Map<string, ReadonlyMap<string, readonly Partition[]>>();
  /** The sets of keys that leaves have: one in a sound tree. */
  readonly #shapes: ReadonlyMap<string, readonly Partition[]>;

  constructor(leaves: readonly Partition[]) {
    this.#places = new Map(leaves.map((leaf, i) => [leaf, i]));
    this.#shapes = grouped(leaves, ({ keys }) => JSON.stringify(Object.keys(keys)));
  }

  /** In the order that they were given in, each once. */
  selected(parts: readonly PartKeys[]): readonly Partition[] {
    const found = new Set(parts.flatMap((part) => this.#meant(part)));
    return [...found].sort((a, b) => this.#places.get(a)! - this.#places.get(b)!);
  }

  #meant(part: PartKeys): Partition[] {
    return [...this.#shapes].flatMap(([shape, leaves]) => {
      const names = (JSON.parse(shape) as string[]).filter((name) => part[name] !== undefined);
      const key = JSON.stringify([shape, names]);
      const index = this.#byValues.get(key) ?? grouped(leaves, ({ keys }) => valuesOf(names, keys));
      this.#byValues.set(key, index);
      return index.get(valuesOf(names, part)) ?? [];
    });
  }
}

const valuesOf = (names: readonly string[], keys: PartKeys): string =>
  JSON.stringify(names.map((name) => keys[name]));

function grouped(
  leaves: readonly Partition[],
  nameOf: (leaf: Partition) => string,
): ReadonlyMap<string, readonly Partition[]> {
  const groups = new Map<string, Partition[]>();
  for (const leaf of leaves) {
    const name = nameOf(leaf);
    const there = groups.get(name);
    if (there === undefined) groups.set(name, [leaf]);
    else there.push(leaf);
  }
  return groups;
}
