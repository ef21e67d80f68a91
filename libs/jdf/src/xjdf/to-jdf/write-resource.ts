import { jdfDictionary } from '../../standard/index.js';
import { childElements, firstChild, type XmlAttribute, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { type ElementShape, jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { rowOfNewer } from '../rows.js';
import { type Overflow, overflowFor, type Source, sourceOf } from '../source.js';
import { carryAttribute, type Direction, Draft, fillDraft, finish } from '../translate.js';
import { attribute } from '../write.js';
import { partOf } from './elements.js';
import { type Bundle, isOlderResource, keptNames, type Leaf } from './sets.js';
import type { Ticket } from './ticket.js';

/** Writes the resources of a set as resources of a pool: partitioned where they have keys. */
export function writeBundle(
  ticket: Ticket,
  direction: Direction,
  bundle: Bundle,
  usage: string | undefined,
): XmlElement | undefined {
  const rootShape = jdfVocabulary.named(bundle.name);
  if (rootShape === undefined || !isOlderResource(bundle.name)) return undefined;
  const mark = ticket.ledger.mark;
  const root = new Draft(bundle.name, rootShape);
  root.attributes.set('ID', bundle.id);
  root.attributes.set('Class', jdfDictionary().classOf(bundle.name) ?? 'Parameter');
  if (bundle.keys.length === 0) {
    fillLeaf(ticket, direction, bundle.leaves[0]!, root);
  } else {
    root.attributes.set('PartIDKeys', bundle.keys.join(' '));
    const parts = bundle.leaves.map((leaf) => {
      const part = new Draft(bundle.name, jdfVocabulary.shape(`${bundle.name}.part`) ?? rootShape);
      fillLeaf(ticket, direction, leaf, part);
      hoist(root, part);
      return { leaf, part };
    });
    addAll(root.children, treeOf(bundle, direction, parts));
  }
  if (!root.attributes.has('Status')) {
    root.attributes.set('Status', usage === 'Output' ? 'Unavailable' : 'Available');
  }
  if (usage === undefined) stock(ticket, direction, bundle, root);
  const fills = rowOfNewer(bundle.leaves[0]!.specific?.local ?? bundle.name)?.fillOlder ?? {};
  for (const [name, { required }] of rootShape.attributes) {
    if (!required || root.attributes.has(name)) continue;
    const value = fills[name];
    if (value === undefined) {
      ticket.ledger.back(mark);
      return undefined;
    }
    root.attributes.set(name, value);
  }
  return finish(direction, root);
}

/** An amount that no use of the resource has: how much there is. */
function stock(ticket: Ticket, direction: Direction, bundle: Bundle, root: Draft): void {
  for (const leaf of bundle.leaves) {
    const pool = firstChild(leaf.resource, 'AmountPool');
    const [only, ...more] = pool === undefined ? [] : childElements(pool, 'PartAmount');
    const amount = only && attributeNode(only, 'Amount');
    if (pool === undefined || only === undefined || amount === undefined || more.length > 0) continue;
    if (bundle.leaves.length > 1) continue;
    if (carryAttribute(direction, 'Resource', amount, root, overflowFor({}))) ticket.ledger.carry(pool, only);
  }
}

/** What the root must say and only the leaves do: the first leaf's value, which the others replace. */
function hoist(root: Draft, part: Draft): void {
  for (const [name, { required }] of root.shape.attributes) {
    const value = part.attributes.get(name);
    if (required && value !== undefined && !root.attributes.has(name)) root.attributes.set(name, value);
  }
}

const OF_LEAF: readonly (readonly [newer: string, older: string])[] = [
  ['DescriptiveName', 'DescriptiveName'],
  ['CommentURL', 'CommentURL'],
  ['ExternalID', 'ProductID'],
  ['Brand', 'Brand'],
  ['Expires', 'Expires'],
  ['GrossWeight', 'GrossWeight'],
  ['ResourceWeight', 'ResourceWeight'],
  ['Status', 'Status'],
];

function fillLeaf(ticket: Ticket, direction: Direction, leaf: Leaf, draft: Draft): void {
  const { ledger } = ticket;
  const { resource, specific } = leaf;
  const { contactTypes, dropId } = leaf;
  const overflow = overflowFor(leaf.keys, keptNames(resource), {
    contactTypes,
    ...(dropId !== undefined && { dropId }),
  });
  ledger.carry(resource);
  ledger.carryNamed(resource, 'ID');
  for (const [newer, older] of OF_LEAF) {
    const stated = attributeNode(resource, newer);
    if (stated !== undefined)
      carryAttribute(direction, 'Resource', stated, draft, overflow, { local: older });
  }
  for (const one of resource.attributes) {
    if (one.uri !== '') carryAttribute(direction, 'Resource', one, draft, overflow);
  }
  if (specific !== undefined && specific.uri === resource.uri) {
    fillDraft(direction, sourceOf(specific), draft, overflow);
    ledger.carry(specific);
  }
  const rest: Source = {
    ...sourceOf(resource),
    attributes: [],
    children: childElements(resource).filter(
      (child) => child.local === 'Comment' || (child.local === 'GeneralID' && !isKept(child, overflow)),
    ),
  };
  fillDraft(direction, rest, draft, overflow);
  addAll(draft.children, overflow.nodes);
}

function isKept(child: XmlElement, overflow: Overflow): boolean {
  return overflow.kept?.some(({ by }) => by === child) ?? false;
}

/** Parts level by level, one key a level. */
function treeOf(
  bundle: Bundle,
  direction: Direction,
  parts: readonly { readonly leaf: Leaf; readonly part: Draft }[],
): XmlElement[] {
  const shape: ElementShape = parts[0]!.part.shape;
  interface Branch {
    readonly key: string;
    readonly value: string;
    readonly below: Branch[];
    leaf?: Draft;
  }
  const top: Branch[] = [];
  const insert = (keys: Readonly<Record<string, string>>, draft: Draft): void => {
    let level = top;
    bundle.keys.forEach((key, i) => {
      const value = keys[key]!;
      let branch = level.find((one) => one.value === value);
      if (branch === undefined) {
        branch = { key, value, below: [] };
        level.push(branch);
      }
      if (i === bundle.keys.length - 1) branch.leaf = draft;
      level = branch.below;
    });
  };
  for (const { leaf, part } of parts) insert(leaf.keys, part);
  for (const { leaf } of parts) {
    for (const keys of leaf.also) {
      if (!bundle.keys.every((key) => keys[key] !== undefined)) continue;
      const same = new Draft('Identical', jdfVocabulary.shape('Identical')!);
      same.children.push(partOf(leaf.keys));
      const draft = new Draft(bundle.name, shape);
      draft.children.push(finish(direction, same));
      insert(keys, draft);
    }
  }
  const write = (branch: Branch): XmlElement => {
    const draft = branch.leaf ?? new Draft(bundle.name, shape);
    const written = finish(direction, draft);
    const key: XmlAttribute = attribute(branch.key, branch.value);
    return {
      ...written,
      attributes: [key, ...written.attributes.filter(({ local }) => local !== branch.key)],
      children: [...written.children, ...branch.below.map(write)],
    };
  };
  return top.map(write);
}
