import type { PartKeys } from '../elements/part.js';
import type { XmlElement } from '../xml/index.js';
import { physicalPart } from './identical.js';
import { freeKeys, isKey } from './keys.js';
import { type Miss, Misses } from './misses.js';
import { partsMeant } from './part-index.js';
import { type PartNode, type PartTree, partTreeOf } from './part-tree.js';

/** A part of a resource: the elements from the root down to it, and the keys that lead there. */
export interface Partition {
  /** Those of the part itself; where it is reached by the name of an identical part, of the one that is really there. */
  readonly chain: readonly XmlElement[];
  /** As it was reached. */
  readonly keys: PartKeys;
}

export interface ResolveOptions {
  /** Keys that may be named though the resource is not divided by them. */
  readonly free?: ReadonlySet<string>;
  /** How many leaves of each selection are enough to know. */
  readonly most?: number;
}

/** What a selection leads to. */
export interface Resolution {
  /** The leaves meant, each once, in the order of the document. */
  readonly found: readonly Partition[];
  /** One for each selection that leads to nothing, and why. */
  readonly missing: readonly Miss[];
}

/**
 * The leaves of a resource that Part elements mean (JDF Part, PartUsage). The keys of one are a conjunction,
 * several are a union, none at all means everything; a key left open means all its values. A list value means every part
 * that shares a member with it. What PartUsage says of a key that a branch of the tree lacks:
 *
 * - Explicit: such a leaf is not meant. A key that PartIDKeys lacks names nothing, but for the `free` ones.
 * - Sparse: the key says nothing of such a leaf; where the branch has the key, the value must be there.
 * - Implicit: as Sparse, and for a value that is not there the nearest part around stands in, as one whole.
 *
 * A part identical to another is that other one; reached by both names it is told once, at the first.
 */
export function resolveParts(
  resource: XmlElement,
  selections: readonly PartKeys[],
  { free = freeKeys(resource.local), most = Number.POSITIVE_INFINITY }: ResolveOptions = {},
): Resolution {
  const tree = partTreeOf(resource);
  const found: Reached[] = [];
  const missing: Miss[] = [];
  const several = selections.length > 1;
  (selections.length === 0 ? [{}] : selections).forEach((selection, index) => {
    const walk = new Walk(tree, selection, { free, most, placed: several });
    const reached = walk.reached();
    if (reached.length === 0) missing.push(walk.misses.told(index));
    for (const one of reached) found.push(one);
  });
  return { found: (several ? inOrderOnce(found) : found).map(partitionOf), missing };
}

/** A part that was reached, with the keys and places of the names on the way, which Identical may have led elsewhere. */
interface Reached {
  readonly node: PartNode;
  readonly names: PartKeys | undefined;
  readonly places: readonly number[];
}

const partitionOf = ({ node, names }: Reached): Partition =>
  names === undefined ? node : { chain: node.chain, keys: { ...node.keys, ...names } };

/** One selection on its way down the tree. Each part is entered once, so that Identical cannot multiply the work. */
class Walk {
  readonly misses: Misses;
  readonly #wanted: PartKeys;
  readonly #asked: readonly string[];
  readonly #entered = new Set<PartNode>();
  readonly #found: Reached[] = [];

  constructor(
    readonly tree: PartTree,
    selection: PartKeys,
    readonly how: Required<ResolveOptions> & { readonly placed: boolean },
  ) {
    this.misses = new Misses(tree);
    const wanted: Record<string, string> = {};
    const divides = new Set(tree.keys);
    for (const [key, value] of Object.entries(selection)) {
      if (divides.has(key)) wanted[key] = value;
      else if (tree.usage === 'Explicit' && isKey(key) && !how.free.has(key)) this.misses.unknown(key, value);
    }
    this.#wanted = wanted;
    this.#asked = Object.keys(wanted);
  }

  reached(): readonly Reached[] {
    if (!this.misses.hopeless) this.#enter(this.tree.root, undefined, []);
    return this.#found;
  }

  #enter(named: PartNode, names: PartKeys | undefined, places: readonly number[]): void {
    const node = physicalPart(this.tree, named);
    if (this.#found.length >= this.how.most || this.#entered.has(node)) return;
    // Without a second name no part is met again.
    if (this.tree.hasIdentical) this.#entered.add(node);
    const under = node === named ? names : { ...named.keys, ...names };
    const parts = partsMeant(node, this.#wanted);
    if (parts.length > 0) {
      for (const part of parts) this.#enter(part, under, this.how.placed ? [...places, part.order] : places);
    } else if (node.parts.length > 0 && this.tree.usage !== 'Implicit') {
      this.misses.noValue(node, this.#wanted);
    } else if (this.tree.usage === 'Explicit' && !this.#complete(node)) {
      this.misses.ends(node, this.#wanted);
    } else this.#found.push({ node, names: under, places });
  }

  /** Whether a leaf has every key that is asked for. Parts that are identical have the same keys. */
  #complete(leaf: PartNode): boolean {
    return this.#asked.length === 0 || this.#asked.every((key) => Object.hasOwn(leaf.keys, key));
  }
}

/** Each part once, at the place where it is named first. */
function inOrderOnce(reached: readonly Reached[]): readonly Reached[] {
  const sorted = [...reached].sort((a, b) => {
    for (let i = 0; i < Math.min(a.places.length, b.places.length); i++) {
      if (a.places[i] !== b.places[i]) return a.places[i]! - b.places[i]!;
    }
    return a.places.length - b.places.length;
  });
  const once = new Map<PartNode, Reached>();
  for (const one of sorted) if (!once.has(one.node)) once.set(one.node, one);
  return [...once.values()];
}
