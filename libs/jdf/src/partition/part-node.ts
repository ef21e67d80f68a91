import type { PartKeys } from '../elements/part.js';
import type { XmlElement } from '../xml/index.js';

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
  /** Its value of that key. */
  readonly value: string;
  /** Further keys of its own, which only a wrongly written part has. */
  readonly more: readonly StatedKey[];
  /** The elements from the root down to this one. */
  readonly chain: readonly XmlElement[];
  /** All keys that lead here, with their values. */
  readonly keys: PartKeys;
  /** Its Identical element: it is physically one with another part. */
  readonly identical: XmlElement | undefined;
  /** How many parts stand before it in the document. */
  readonly order: number;
  readonly parts: readonly PartNode[];
  /** Its parts by their key: one group in a sound tree, several where a sparse one skips levels. */
  readonly groups: readonly PartGroup[];
}

/** A key that a part states itself. */
export interface StatedKey {
  readonly key: string;
  readonly value: string;
}

/** The parts below one part that have the same key. Where they are asked for by value, not all of them are looked at. */
export interface PartGroup {
  readonly key: string;
  /** In document order. */
  readonly parts: readonly PartNode[];
  /** Those with exactly this value, in whatever spelling. */
  having(value: string): readonly PartNode[];
  /** Those that agree with a selection, in document order. */
  meant(selection: PartKeys): readonly PartNode[];
}
