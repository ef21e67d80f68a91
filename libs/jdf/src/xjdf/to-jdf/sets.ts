import { splitTokens } from '../../codec/index.js';
import { keysOf, type PartKeys } from '../../elements/part.js';
import { partitionKeys } from '../../partition/index.js';
import { attributeOf, childElements, writeElement, type XmlElement } from '../../xml/index.js';
import { jdfVocabulary } from '../facts.js';
import { usableId } from '../ids.js';
import { attributeNode } from '../ledger.js';
import { BESIDE_SPECIFIC } from '../resource-set.js';
import { rowOfNewer } from '../rows.js';
import { asToken } from '../values.js';
import type { Ticket } from './ticket.js';

/** A Resource of the newer generation with the part that it is in the older. */
export interface Leaf {
  readonly resource: XmlElement;
  readonly specific: XmlElement | undefined;
  readonly keys: PartKeys;
  /** Keys of other parts that are the same thing. */
  readonly also: readonly PartKeys[];
  /** Keys that only the newer generation has, and that say something else in the older. */
  readonly contactTypes: readonly string[];
  readonly dropId: string | undefined;
  /** The name of a binding signature that is its ID. */
  readonly ownSignature: string | undefined;
}

/** One resource of the older generation: Resources of a set that have the same keys and differ in their values. */
export interface Bundle {
  readonly name: string;
  readonly id: string;
  readonly keys: readonly string[];
  readonly leaves: readonly Leaf[];
}

/** A ResourceSet, with the resources that it becomes. */
export interface PlannedSet {
  readonly set: XmlElement;
  readonly bundles: readonly Bundle[];
}

const KEYS: Readonly<Record<string, string>> = { BinderySignatureID: 'BinderySignatureName' };
const KNOWN: ReadonlySet<string> = new Set(partitionKeys);

/** From the whole to its parts, as tickets order their keys (common practice, no source); the rest by the alphabet. */
const ORDER = [
  'PartVersion',
  'Run',
  'WebName',
  'SheetName',
  'BinderySignatureName',
  'Side',
  'Separation',
  'PreviewType',
  'BlockName',
];

/**
 * Decides what each ResourceSet becomes, before any is written, because they refer to one another. What one process makes
 * and another takes is two sets that say the same of their resources, and one resource in the older generation.
 */
export function planSets(ticket: Ticket): PlannedSet[] {
  const sets = childElements(ticket.doc.root, 'ResourceSet');
  const exchanged = new Map<string, PlannedSet[]>();
  return sets.map((set) => {
    const usage = attributeOf(set, 'Usage');
    const isUsed = (usage === 'Input' || usage === 'Output') && indexesIn(set).length > 0;
    if (!isUsed) return { set, bundles: bundlesOf(ticket, set) };
    const content = JSON.stringify([attributeOf(set, 'Name'), contentOf(set)]);
    const other = usage === 'Input' ? 'Output' : 'Input';
    const twin = exchanged.get(`${other} ${content}`)?.find((one) => isApart(one.set, set));
    if (twin !== undefined) adopt(ticket, set, twin.bundles);
    const planned = { set, bundles: twin?.bundles ?? bundlesOf(ticket, set) };
    const alike = exchanged.get(`${usage} ${content}`);
    if (alike === undefined) exchanged.set(`${usage} ${content}`, [planned]);
    else alike.push(planned);
    return planned;
  });
}

/** The resources that a set becomes. */
export function bundlesOf(ticket: Ticket, set: XmlElement): Bundle[] {
  const name = attributeOf(set, 'Name') ?? '';
  const leaves = leavesIn(ticket, set);
  const groups: { name: string; keys: readonly string[]; leaves: Leaf[]; taken: Set<string> }[] = [];
  for (const leaf of leaves) {
    const own = olderName(name, leaf);
    const keys = mayDivide(own) ? Object.keys(leaf.keys) : [];
    if (keys.length === 0 && Object.keys(leaf.keys).length > 0) {
      ticket.ledger.note(leaf.resource, `the older generation does not divide a ${own} into parts`);
    }
    const fits = groups.find(
      (group) =>
        keys.length > 0 &&
        group.name === own &&
        group.keys.join() === keys.join() &&
        partsOf(leaf).every((part) => !group.taken.has(part)),
    );
    const group = fits ?? { name: own, keys, leaves: [], taken: new Set<string>() };
    if (fits === undefined) groups.push(group);
    group.leaves.push(leaf);
    for (const part of partsOf(leaf)) group.taken.add(part);
  }
  const setId = usableId(attributeOf(set, 'ID'));
  return groups.map((group, i) => {
    const alone =
      group.leaves.length === 1 ? usableId(attributeOf(group.leaves[0]!.resource, 'ID')) : undefined;
    const id =
      (i === 0 && groups.length === 1 ? setId : undefined) ?? alone ?? ticket.ids.make(asToken(group.name));
    const bundle: Bundle = { ...group, id };
    const keys = (leaf: Leaf): PartKeys => (group.keys.length === 0 ? {} : leaf.keys);
    if (groups.length === 1 && setId !== undefined)
      ticket.targets.set(setId, { name: group.name, id, keys: {} });
    for (const leaf of group.leaves) {
      enter(ticket, leaf.resource, bundle, keys(leaf));
      const signature = leaf.ownSignature ?? leaf.keys.BinderySignatureName;
      if (group.name === 'BinderySignature' && signature !== undefined) {
        ticket.signatures.set(signature, { name: group.name, id, keys: keys(leaf) });
        for (const one of leaf.also) {
          const name = one.BinderySignatureName;
          if (name !== undefined) ticket.signatures.set(name, { name: group.name, id, keys: one });
        }
      }
    }
    return bundle;
  });
}

/** Whether a pool may hold it. A preview is no resource by the schema's tables, but stands in pools and is linked. */
export function isOlderResource(name: string): boolean {
  return name === 'Preview' || jdfVocabulary.isMember('Resource', name);
}

/** Whether a resource can be divided into parts at all. */
function mayDivide(name: string): boolean {
  return jdfVocabulary.named(name)?.byName.has(name) ?? false;
}

function enter(ticket: Ticket, resource: XmlElement, bundle: Bundle, keys: PartKeys): void {
  const own = attributeOf(resource, 'ID');
  if (own !== undefined) ticket.targets.set(own, { name: bundle.name, id: bundle.id, keys });
}

/** The Resources of a second set that says the same lead to the resources of the first. */
function adopt(ticket: Ticket, set: XmlElement, bundles: readonly Bundle[]): void {
  const leaves = bundles.flatMap((bundle) => bundle.leaves.map((leaf) => ({ bundle, leaf })));
  childElements(set, 'Resource').forEach((resource, i) => {
    const { bundle, leaf } = leaves[i]!;
    enter(ticket, resource, bundle, leaf.keys);
    ticket.ledger.carryAll(resource);
  });
  const id = attributeOf(set, 'ID');
  if (id !== undefined && bundles.length === 1) {
    ticket.targets.set(id, { name: bundles[0]!.name, id: bundles[0]!.id, keys: {} });
  }
}

/** The processes of the job that use a set, by their places in Types. */
const indexesIn = (set: XmlElement): readonly string[] =>
  splitTokens(attributeOf(set, 'CombinedProcessIndex') ?? '');

/** Whether no process uses both sets. */
function isApart(a: XmlElement, b: XmlElement): boolean {
  const others = new Set(indexesIn(b));
  return !indexesIn(a).some((index) => others.has(index));
}

function contentOf(set: XmlElement): string {
  return childElements(set, 'Resource')
    .map((resource) => {
      const attributes = resource.attributes.filter(({ local }) => local !== 'ID' && local !== 'Status');
      const children = resource.children.filter(({ kind }) => kind === 'element');
      return writeElement({ ...resource, attributes: [...attributes], children, line: 0 });
    })
    .join();
}

/** The Resources of a set as parts of the older generation. */
export function leavesIn(ticket: Ticket, set: XmlElement): Leaf[] {
  return childElements(set, 'Resource').flatMap((resource) => bySignature(leafOf(ticket, resource)));
}

/** Stripping is divided by the binding signatures that lie on a sheet. */
function bySignature(leaf: Leaf): Leaf[] {
  const { specific, keys } = leaf;
  if (specific?.local !== 'Layout' || !isStripping(specific) || keys.BinderySignatureName !== undefined)
    return [leaf];
  const positions = childElements(specific, 'Position').map((one) => attributeOf(one, 'BinderySignatureID'));
  const ids = [...new Set(positions)];
  if (ids.length < 2 || ids.includes(undefined)) return [leaf];
  return ids.map((id) => ({ ...leaf, keys: { ...keys, BinderySignatureName: id! } }));
}

function leafOf(ticket: Ticket, resource: XmlElement): Leaf {
  const specific = childElements(resource).find((child) => !BESIDE_SPECIFIC.has(child.local));
  const kept = keptNames(resource);
  const contactTypes: string[] = [];
  let dropId: string | undefined;
  let ownSignature: string | undefined;
  const parts = childElements(resource, 'Part').map((part) => {
    const keys: [string, string][] = [];
    for (const [name, value] of Object.entries(keysOf(part))) {
      const key = KEYS[name] ?? name;
      const attribute = attributeNode(part, name);
      if (name === 'ContactType' || name === 'DropID') {
        if (name === 'DropID') dropId = value;
        else contactTypes.push(value);
        ticket.ledger.carry(part, attribute);
        continue;
      }
      if (name === 'BinderySignatureID' && isOwnName(specific, resource, value)) {
        ticket.ledger.carry(part, attribute);
        ownSignature = value;
        continue;
      }
      if (!KNOWN.has(key) || !fitsKey(key, value)) {
        if (attribute) ticket.ledger.reason(attribute, 'the older generation has no partition by it');
        continue;
      }
      const keptAs = kept.find((one) => one.name === key || one.name === name);
      const original = keptAs !== undefined && asToken(keptAs.original) === value ? keptAs.original : value;
      keys.push([key, rangeOf(key, original)]);
      ticket.ledger.carry(part, attribute);
      if (keptAs !== undefined && original !== value) ticket.ledger.carryAll(keptAs.by);
    }
    return Object.fromEntries(keys.sort(([a], [b]) => placeOf(a) - placeOf(b) || (a < b ? -1 : 1)));
  });
  const [first = {}, ...rest] = parts.filter((part) => Object.keys(part).length > 0);
  return { resource, specific, keys: first, also: rest, contactTypes, dropId, ownSignature };
}

function fitsKey(key: string, value: string): boolean {
  return jdfVocabulary.shape('Part')?.attributes.get(key)?.allows(rangeOf(key, value)) ?? true;
}

/** A binding signature that is named by its own ID has no name in the older generation. */
function isOwnName(specific: XmlElement | undefined, resource: XmlElement, name: string): boolean {
  return specific?.local === 'BinderySignature' && asToken(attributeOf(resource, 'ID') ?? '') === name;
}

/** Keys that are ranges are written with a tilde. */
function rangeOf(key: string, value: string): string {
  const [, from, to] = /^(-?\d+) (-?\d+)$/.exec(value) ?? [];
  if (from === undefined || (!key.endsWith('Index') && key !== 'PageNumber')) return value;
  return from === to ? from : `${from} ~ ${to}`;
}

/** The names that an element's GeneralID remember as they were before they became tokens. */
export function keptNames(el: XmlElement): { name: string; original: string; by: XmlElement }[] {
  return childElements(el, 'GeneralID').flatMap((by) => {
    const name = attributeOf(by, 'IDUsage');
    const original = attributeOf(by, 'IDValue');
    return name === undefined || original === undefined || asToken(original) === original
      ? []
      : [{ name, original, by }];
  });
}

function placeOf(key: string): number {
  const at = ORDER.indexOf(key);
  return at < 0 ? ORDER.length : at;
}

/** The parts that a leaf stands for, spelled. */
function partsOf(leaf: Leaf): string[] {
  return [leaf.keys, ...leaf.also].map((keys) => JSON.stringify(keys));
}

/** What the resource is called in the older generation. */
export function olderName(set: string, leaf: Leaf): string {
  const local = leaf.specific?.local ?? set;
  if (local === 'LooseBindingParams') return LOOSE[attributeOf(leaf.specific!, 'BindingType') ?? ''] ?? local;
  if (local === 'Layout' && leaf.specific !== undefined && isStripping(leaf.specific))
    return 'StrippingParams';
  const name = rowOfNewer(local)?.jdf ?? local;
  return isOlderResource(name) ? name : local;
}

const LOOSE: Readonly<Record<string, string>> = {
  ChannelBinding: 'ChannelBindingParams',
  CoilBinding: 'CoilBindingParams',
  CombBinding: 'PlasticCombBindingParams',
  RingBinding: 'RingBindingParams',
  StripBinding: 'StripBindingParams',
};

/** Positions of binding signatures on a sheet, or how it is printed, are stripping in the older generation. */
function isStripping(layout: XmlElement): boolean {
  if (childElements(layout, 'PlacedObject').length > 0) return false;
  return (
    ['Position', 'StripMark'].some((name) => childElements(layout, name).length > 0) ||
    ['WorkStyle', 'SheetLay', 'InnermostShingling'].some((name) => attributeOf(layout, name) !== undefined)
  );
}
