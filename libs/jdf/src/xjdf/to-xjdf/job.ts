import { keysOf, type PartKeys } from '../../elements/part.js';
import type { Partition } from '../../partition/index.js';
import {
  attributeOf,
  descendants,
  findById,
  firstChild,
  parentOf,
  XJDF_NAMESPACE,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { xjdfVocabulary } from '../facts.js';
import { Ids, usableId } from '../ids.js';
import { Ledger } from '../ledger.js';
import { spelledKeys } from '../resource-set.js';
import { rowOfOlder } from '../rows.js';
import { type Direction, Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { selectedLeaves, writtenLeaves } from './leaves.js';

/** How a set of resources is used: what a resource link says beside which resource it is. */
export interface Use {
  readonly usage: string | undefined;
  readonly processUsage: string | undefined;
  /** Positions in Types; empty: not said. */
  readonly indexes: readonly number[];
}

export const UNUSED: Use = { usage: undefined, processUsage: undefined, indexes: [] };

/** How a binding signature is called where it lies, and what is said there of its cells. */
export interface SignatureUse {
  readonly names: Set<string>;
  readonly cells: Map<string, string>;
}

/** A ResourceSet while it is being filled. */
export interface SetDraft {
  readonly name: string;
  readonly use: Use;
  id?: string;
  unit?: string;
  readonly resources: XmlElement[];
  readonly dependents: XmlElement[];
}

export interface PlacedLeaf {
  readonly leaf: Partition;
  readonly id: string;
  /** Keys of other parts that are the same thing. */
  readonly also: readonly PartKeys[];
}

/** Where a resource went: its leaves with the IDs of the Resource elements that they became. */
export interface Placing {
  readonly leaves: readonly PlacedLeaf[];
  /** The same by the leaf. */
  readonly byLeaf: ReadonlyMap<Partition, PlacedLeaf>;
  /** Stands for all its leaves together. */
  readonly setId: string | undefined;
  /** IDs of leaves by their keys, of resources that have any. */
  readonly byKeys: ReadonlyMap<string, string>;
}

/** A conversion to the newer generation under way. */
export class Job {
  readonly doc: XmlDocument;
  readonly ledger: Ledger;
  readonly ids: Ids;
  readonly sets: SetDraft[] = [];
  readonly #setsByUse = new Map<string, SetDraft>();
  readonly placings = new Map<XmlElement, Placing>();

  constructor(doc: XmlDocument) {
    this.doc = doc;
    this.ledger = new Ledger(doc);
    this.ids = new Ids(doc);
  }

  /** The set of this name and use, made if there is none. */
  set(name: string, use: Use): SetDraft {
    const key = JSON.stringify([name, use.usage ?? null, use.processUsage ?? null, use.indexes]);
    const like = this.#setsByUse.get(key);
    if (like !== undefined) return like;
    const made: SetDraft = { name, use, resources: [], dependents: [] };
    this.#setsByUse.set(key, made);
    this.sets.push(made);
    return made;
  }

  /** The element with an ID; undefined where a reference leads nowhere. */
  target(id: string): XmlElement | undefined {
    return findById(this.doc, id);
  }

  /** IDs of a resource and of its leaves, given out before they are written, because others refer to them. */
  placing(resource: XmlElement): Placing {
    const known = this.placings.get(resource);
    if (known !== undefined) return known;
    const own = usableId(attributeOf(resource, 'ID'));
    const all = writtenLeaves(resource);
    const leaves = all.filter((leaf) => identical(leaf) === undefined);
    const twins = twinsOf(resource, all);
    const also = (leaf: Partition): PartKeys[] =>
      (twins.get(leaf) ?? []).map((twin) => {
        for (const el of twin.chain.slice(-1)) this.ledger.carryAll(el);
        return { ...leaf.keys, ...twin.keys };
      });
    const name = own ?? asToken(resource.local);
    const made: Pick<Placing, 'leaves' | 'setId'> =
      leaves.length === 1
        ? {
            leaves: [{ leaf: leaves[0]!, id: own ?? this.ids.make(name), also: also(leaves[0]!) }],
            setId: undefined,
          }
        : {
            leaves: leaves.map((leaf) => ({ leaf, id: this.ids.make(name), also: also(leaf) })),
            setId: own ?? this.ids.make(name),
          };
    const divided = made.leaves.filter(({ leaf }) => Object.keys(leaf.keys).length > 0);
    const byKeys = new Map(divided.map(({ leaf, id }) => [spelledKeys(leaf.keys), id]));
    const byLeaf = new Map(made.leaves.map((placed) => [placed.leaf, placed]));
    const placing = { ...made, byKeys, byLeaf };
    this.placings.set(resource, placing);
    return placing;
  }

  /** The element around another; undefined for the root. */
  parent(el: XmlElement): XmlElement | undefined {
    return parentOf(this.doc, el);
  }

  /** The resources of a name: those that are linked in the order of the links, then the rest. */
  linked(name: string): readonly XmlElement[] {
    const found = new Set<XmlElement>();
    for (const el of descendants(this.doc.root)) {
      const target = el.local === `${name}Link` ? this.target(attributeOf(el, 'rRef') ?? '') : undefined;
      if (target !== undefined) found.add(target);
    }
    for (const el of descendants(this.doc.root)) {
      if (el.local === name && parentOf(this.doc, el)?.local === 'ResourcePool') found.add(el);
    }
    return [...found];
  }

  /** What stripping says of binding signatures, by the IDs of their Resources. */
  readonly signatures = new Map<string, SignatureUse>();

  /** Components that are said by products alone. */
  readonly productIds = new Map<XmlElement, string>();

  #plain: string | undefined;

  /** The ID of a medium of which nothing is known. */
  plainMedia(direction: Direction): string {
    if (this.#plain !== undefined) return this.#plain;
    const media = new Draft('Media', xjdfVocabulary.named('Media')!);
    media.attributes.set('MediaType', 'Other');
    const draft = new Draft('Resource', xjdfVocabulary.named('Resource')!);
    this.#plain = this.ids.make('Media');
    draft.attributes.set('ID', this.#plain);
    draft.children.push(finish(direction, media));
    this.set('Media', UNUSED).resources.push(finish(direction, draft));
    return this.#plain;
  }

  /** The IDs that stand for a reference to a resource from a part with these keys. */
  idsFor(resource: XmlElement, wanted: PartKeys): readonly string[] {
    const product = this.productIds.get(resource);
    if (product !== undefined) return [product];
    const { leaves, setId, byKeys, byLeaf } = this.placing(resource);
    const exact = byKeys.get(spelledKeys(wanted));
    if (exact !== undefined) return [exact];
    const fitting = selectedLeaves(resource, [wanted]).flatMap((leaf) => byLeaf.get(leaf) ?? []);
    if (fitting.length === leaves.length && setId !== undefined) return [setId];
    return fitting.map(({ id }) => id);
  }
}

/** The leaves that say that they are the same as another, by that one. */
function twinsOf(
  resource: XmlElement,
  leaves: readonly Partition[],
): ReadonlyMap<Partition, readonly Partition[]> {
  const twins = new Map<Partition, Partition[]>();
  for (const twin of leaves) {
    const part = identical(twin);
    if (part === undefined) continue;
    for (const leaf of selectedLeaves(resource, [part])) {
      if (!Object.entries(part).every(([key, value]) => leaf.keys[key] === value)) continue;
      const there = twins.get(leaf);
      if (there === undefined) twins.set(leaf, [twin]);
      else there.push(twin);
    }
  }
  return twins;
}

/** What a leaf says that it is the same as. */
function identical({ chain }: Partition): PartKeys | undefined {
  const found = firstChild(chain.at(-1)!, 'Identical');
  const part = found && firstChild(found, 'Part');
  return part && keysOf(part);
}

/** Resources of the older generation that the newer has only inside another. */
const HOSTS: Readonly<Record<string, string>> = {
  Person: 'Contact',
  Company: 'Contact',
  ComChannel: 'Contact',
  Address: 'Contact',
  FileSpec: 'RunList',
  ByteMap: 'RunList',
  CutBlock: 'CuttingParams',
};

/** What a resource of the older generation is in the newer: its own name there, and the resource around it if any. */
export function newerResource(local: string): { readonly name: string; readonly host?: string } | undefined {
  const host = Object.hasOwn(HOSTS, local) ? HOSTS[local] : undefined;
  if (host !== undefined) return { name: local, host };
  const name = rowOfOlder(local)?.xjdf ?? local;
  return xjdfVocabulary.isMember('SpecificResource', name) ? { name } : undefined;
}

export const NEWER = XJDF_NAMESPACE;
