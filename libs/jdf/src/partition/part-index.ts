import type { PartKeys } from '../elements/part.js';
import { byOrder } from './key-group.js';
import type { PartNode } from './part-node.js';

/**
 * The parts below a part that agree with a selection, in document order: those with the value that it names, and all
 * where it leaves the key open.
 */
export function partsMeant(node: PartNode, selection: PartKeys): readonly PartNode[] {
  const { groups } = node;
  if (groups.length === 0) return node.parts;
  if (groups.length === 1) return groups[0]!.meant(selection);
  return groups.flatMap((group) => group.meant(selection)).sort(byOrder);
}

/** The keys by which a part is divided further: one in a sound tree, several where a sparse one skips levels. */
export const keysBelow = (node: PartNode): readonly string[] => node.groups.map(({ key }) => key);

/** The first few values that the parts below a part have of a key, each once. */
export function valuesBelow(node: PartNode, key: string, most: number): readonly string[] {
  const values = new Set<string>();
  for (const part of node.parts) {
    if (values.size >= most) break;
    if (Object.hasOwn(part.keys, key)) values.add(part.keys[key]!);
  }
  return [...values];
}

/** The parts below a part that have exactly this value of a key, in whatever spelling. */
export function partsWith(node: PartNode, key: string, value: string): readonly PartNode[] {
  return node.groups.find((group) => group.key === key)?.having(value) ?? [];
}
