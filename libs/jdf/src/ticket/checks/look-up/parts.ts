import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../../../elements/part.js';
import { LeafIndex, type Partition, partitionLeaves } from '../../../partition/index.js';
import type { XmlElement } from '../../../xml/index.js';

/** Whether two keys of parts can mean the same thing: nothing that both state differs. */
export function partsMeet(one: PartKeys, other: PartKeys): boolean {
  return Object.entries(one).every(([key, value]) => other[key] === undefined || other[key] === value);
}

/** The same of two selections, where none is the whole. */
export function selectionsMeet(some: readonly PartKeys[], others: readonly PartKeys[]): boolean {
  if (some.length === 0 || others.length === 0) return true;
  return some.some((one) => others.some((other) => partsMeet(one, other)));
}

/** The leaves of a resource that a selection means, all where it selects none. */
export function selectedLeaves(resource: XmlElement, selection: readonly PartKeys[]): readonly Partition[] {
  return selection.length === 0 ? partitionLeaves(resource) : leafIndex(resource).selected(selection);
}

const leafIndex = oncePer((resource: XmlElement) => new LeafIndex(partitionLeaves(resource)));
