import { keysOf, type PartKeys } from '../../elements/part.js';
import type { Partition } from '../../partition/index.js';
import { partitionKeysOf } from '../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { type ElementShape, xjdfVocabulary } from '../facts.js';
import { usableId } from '../ids.js';
import { effectiveSource, type Overflow, type Source, sourceOf } from '../source.js';
import { carryAttribute, type Direction, Draft, finish, translate } from '../translate.js';
import { asToken } from '../values.js';
import { toNewer } from './direction.js';
import { type Job, NEWER, newerResource, type PlacedLeaf, type SetDraft, UNUSED, type Use } from './job.js';
import { partElement, partsOfLeaf } from './parts.js';
import type { Placer } from './placer.js';

/** The shape of a kind of the newer generation that is known to exist. */
export const shapeOf = (name: string): ElementShape =>
  xjdfVocabulary.named(name) ?? xjdfVocabulary.shape(name)!;

/** Leaves of a resource as they were written into a set. */
interface Placed {
  readonly set: SetDraft;
  /** `at` is the place in the set's resources. */
  readonly written: readonly { readonly leaf: Partition; readonly at: number }[];
}

/** Writes resources of pools, and those that stand inline, as ResourceSets. */
export class Resources implements Placer {
  readonly #job: Job;
  readonly direction: Direction;
  readonly #placed = new Set<XmlElement>();
  readonly #inline = new Map<XmlElement, readonly string[]>();

  constructor(job: Job) {
    this.#job = job;
    this.direction = toNewer(job, this);
  }

  /** Whether a resource is written already. */
  isPlaced(resource: XmlElement): boolean {
    return this.#placed.has(resource);
  }

  refer(resource: XmlElement, overflow: Overflow, ref: XmlElement): readonly string[] {
    if (!newerResource(resource.local)) return [];
    const stated = childElements(ref, 'Part').map(keysOf);
    const wanted = stated.length === 0 ? [{}] : stated;
    const ids = wanted.flatMap((keys) => this.#job.idsFor(resource, { ...overflow.keys, ...keys }));
    return [...new Set(ids)];
  }

  inline(child: XmlElement, overflow: Overflow): readonly string[] {
    const known = this.#inline.get(child);
    if (known !== undefined) {
      this.#job.ledger.carry(child);
      return known;
    }
    const newer = newerResource(child.local)!;
    const id = usableId(attributeOf(child, 'ID')) ?? this.#job.ids.make(newer.host ?? newer.name);
    const leaf: Partition = { chain: [child], keys: {} };
    const written = this.element(child, leaf, id, overflow.keys);
    if (written === undefined) return [];
    this.#inline.set(child, [id]);
    this.#job.set(newer.host ?? newer.name, UNUSED).resources.push(written);
    return [id];
  }

  inlineElement(child: XmlElement, overflow: Overflow): XmlElement | undefined {
    const id = usableId(attributeOf(child, 'ID')) ?? this.#job.ids.make(asToken(child.local));
    return this.element(child, { chain: [child], keys: {} }, id, overflow.keys);
  }

  colours(pool: XmlElement): void {
    if (this.#placed.has(pool)) return;
    this.#placed.add(pool);
    for (const color of childElements(pool, 'Color')) {
      const id = usableId(attributeOf(color, 'ID')) ?? this.#job.ids.make('Color');
      const written = this.element(color, { chain: [color], keys: {} }, id, {});
      if (written !== undefined) this.#job.set('Color', UNUSED).resources.push(written);
    }
    this.#job.ledger.carry(pool);
    this.#job.ledger.carryNamed(pool, 'ID', 'Class');
  }

  /**
   * Writes leaves of a resource into the set of a use. Gives the set, and where in it each leaf is that could be written.
   * A leaf that is written once more gets another ID, unless it is one of the `rest` that no use selected.
   */
  place(resource: XmlElement, use: Use, chosen: readonly PlacedLeaf[], rest = false): Placed | undefined {
    const newer = newerResource(resource.local);
    if (newer === undefined) return undefined;
    const { ledger } = this.#job;
    const placing = this.#job.placing(resource);
    const again = this.#placed.has(resource) && !rest;
    this.#placed.add(resource);
    const set = this.#job.set(newer.host ?? newer.name, use);
    if (!again && !rest && set.resources.length === 0 && placing.setId !== undefined) set.id = placing.setId;
    const places: Placed['written'][number][] = [];
    for (const { leaf, id, also } of chosen) {
      const own = again ? this.#job.ids.make(asToken(id)) : id;
      const written = this.element(resource, leaf, own, leaf.keys, also);
      if (written !== undefined) places.push({ leaf, at: set.resources.push(written) - 1 });
    }
    ledger.carryNamed(resource, 'ID', 'Class', 'PartIDKeys');
    for (const level of chosen.flatMap(({ leaf }) => leaf.chain)) {
      ledger.carry(level);
      ledger.carryNamed(level, ...partitionKeysOf(resource));
    }
    return { set, written: places };
  }

  /** An element that is the same in both generations but for its facts, such as a Comment. */
  plain(el: XmlElement, overflow: Overflow): XmlElement | undefined {
    return translate(this.direction, sourceOf(el), el.local, shapeOf(el.local), overflow);
  }

  /** One leaf as a Resource element. */
  element(
    resource: XmlElement,
    leaf: Partition,
    id: string,
    keys: PartKeys,
    also: readonly PartKeys[] = [],
  ): XmlElement | undefined {
    const { ledger } = this.#job;
    const newer = newerResource(resource.local)!;
    const source = effectiveSource(leaf.chain);
    const draft = new Draft('Resource', shapeOf('Resource'));
    draft.attributes.set('ID', id);
    const overflow: Overflow = { nodes: [], originals: [], keys };
    const rest = this.#common(source, draft, overflow);
    const parts = partsOfLeaf(this.#job, resource, leaf, rest, id);
    const specific = this.#specific(newer, parts.source, overflow);
    for (const part of [...parts.keys, ...also]) {
      const written = partElement(this.direction, resource, part, overflow);
      if (written !== undefined) draft.children.push(written);
    }
    if (specific !== undefined) draft.children.push(specific);
    addAll(draft.children, overflow.nodes, identifiers(overflow));
    ledger.carry(...leaf.chain);
    return finishResource(this.direction, draft, specific);
  }

  #specific(
    newer: { readonly name: string; readonly host?: string },
    source: Source,
    overflow: Overflow,
  ): XmlElement | undefined {
    if (newer.host === undefined) {
      return translate(this.direction, source, newer.name, shapeOf(newer.name), overflow);
    }
    const inner = translate(this.direction, source, newer.name, shapeOf(newer.name), overflow);
    if (inner === undefined) return undefined;
    const host = new Draft(newer.host, shapeOf(newer.host));
    host.children.push(inner);
    return finish(this.direction, host);
  }

  /** What every resource has. Gives the source without it. */
  #common(source: Source, draft: Draft, overflow: Overflow): Source {
    const { ledger } = this.#job;
    const rest = source.attributes.filter((attribute) => {
      if (attribute.local === 'Status' && attribute.uri === '') {
        const available = attribute.value === 'Available';
        draft.attributes.set('Status', available ? 'Available' : 'Unavailable');
        if (available || attribute.value === 'Unavailable') ledger.carry(attribute);
        else
          ledger.reason(
            attribute,
            'the newer generation has Available and Unavailable; written as the latter',
          );
        return false;
      }
      if (IMPLIED[attribute.local] === attribute.value) {
        ledger.carry(attribute);
        return false;
      }
      if (attribute.local === 'ID' || attribute.local === 'Class' || attribute.local === 'PartIDKeys') {
        ledger.carry(attribute);
        return false;
      }
      const to = COMMON[attribute.local];
      if (to === undefined || attribute.uri !== '') return true;
      return !carryAttribute(this.direction, 'Resource', attribute, draft, overflow, { local: to });
    });
    return { ...source, attributes: rest };
  }
}

const COMMON: Readonly<Record<string, string>> = {
  DescriptiveName: 'DescriptiveName',
  CommentURL: 'CommentURL',
  ProductID: 'ExternalID',
  Brand: 'Brand',
  Expires: 'Expires',
  GrossWeight: 'GrossWeight',
  ResourceWeight: 'ResourceWeight',
};

/** What is said by saying nothing. */
const IMPLIED: Readonly<Record<string, string>> = {
  PartUsage: 'Explicit',
  Locked: 'false',
  NoOp: 'false',
  SpawnStatus: 'NotSpawned',
};

/** Names that had to be changed, kept as they were. */
export function identifiers(overflow: Overflow): XmlElement[] {
  const seen = new Set<string>();
  return overflow.originals.flatMap(([name, original]) => {
    const key = `${name} ${original}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const draft = new Draft('GeneralID', shapeOf('GeneralID'));
    draft.attributes.set('IDUsage', name);
    draft.attributes.set('IDValue', original);
    return [finish({ uri: NEWER }, draft)];
  });
}

/** The specific resource stands for the abstract one of the schema: after Part, before what is foreign. */
function finishResource(direction: Direction, draft: Draft, specific: XmlElement | undefined): XmlElement {
  const el = finish(direction, draft);
  if (specific === undefined) return el;
  const others = el.children.filter((child) => child !== specific);
  const at = others.findIndex((child) => child.kind === 'element' && child.uri !== el.uri);
  const cut = at < 0 ? others.length : at;
  return { ...el, children: [...others.slice(0, cut), specific, ...others.slice(cut)] };
}
