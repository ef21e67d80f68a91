import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../../elements/part.js';
import { LeafIndex, type Partition, partitionKeysOf, partsOf } from '../../partition/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';

/** All leaves of a resource as they are written, those that only say what they are identical to among them. */
export const writtenLeaves = oncePer((resource: XmlElement): readonly Partition[] => {
  const found: Partition[] = [];
  addBelow({ chain: [resource], keys: {} }, partitionKeysOf(resource), found);
  return found;
});

function addBelow(from: Partition, names: readonly string[], found: Partition[]): void {
  const at = from.chain.at(-1)!;
  const parts = names.length === 0 ? [] : partsOf(at);
  if (parts.length === 0) found.push(from);
  for (const part of parts) {
    const own: Record<string, string> = { ...from.keys };
    for (const name of names) {
      const value = attributeOf(part, name);
      if (value !== undefined) own[name] = value;
    }
    addBelow({ chain: [...from.chain, part], keys: own }, names, found);
  }
}

/** The leaves that a link selects, in document order: all where it names no part. */
export function selectedLeaves(resource: XmlElement, parts: readonly PartKeys[]): readonly Partition[] {
  return parts.length === 0 ? writtenLeaves(resource) : leafIndex(resource).selected(parts);
}

const leafIndex = oncePer((resource: XmlElement) => new LeafIndex(writtenLeaves(resource)));
