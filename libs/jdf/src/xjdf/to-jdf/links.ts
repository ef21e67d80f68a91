import { splitTokens } from '../../codec/index.js';
import type { PartKeys } from '../../elements/part.js';
import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { OF_LINK } from '../resource-set.js';
import { overflowFor } from '../source.js';
import { carryAttribute, type Direction, Draft, finish } from '../translate.js';
import { partOf } from './elements.js';
import type { Bundle, Leaf } from './sets.js';
import type { Ticket } from './ticket.js';

const AMOUNTS = ['Amount', 'MinAmount', 'MaxAmount'] as const;

/** The link of a node to a resource that a set used, with the amounts that the Resources had. */
export function writeLink(
  ticket: Ticket,
  direction: Direction,
  set: XmlElement,
  bundle: Bundle,
  indexes: readonly number[],
): XmlElement {
  const link = new Draft(`${bundle.name}Link`, jdfVocabulary.shape('ResourceLink')!);
  link.attributes.set('rRef', bundle.id);
  for (const name of ['Usage', 'ProcessUsage']) {
    const attribute = attributeNode(set, name);
    if (attribute !== undefined) carryAttribute(direction, 'ResourceSet', attribute, link, overflowFor({}));
  }
  if (indexes.length > 0) link.attributes.set('CombinedProcessIndex', indexes.join(' '));
  const pool = new Draft('AmountPool', jdfVocabulary.shape(link.shape.byName.get('AmountPool')!.shape)!);
  for (const leaf of bundle.leaves) {
    for (const name of OF_LINK) {
      const attribute = attributeNode(leaf.resource, name);
      if (attribute !== undefined) carryAttribute(direction, 'ResourceSet', attribute, link, overflowFor({}));
    }
    amounts(ticket, direction, leaf, bundle, link, pool);
  }
  if (pool.children.length > 0) link.children.push(finish(direction, pool));
  return finish(direction, link);
}

function amounts(
  ticket: Ticket,
  direction: Direction,
  leaf: Leaf,
  bundle: Bundle,
  link: Draft,
  pool: Draft,
): void {
  const { ledger } = ticket;
  const stated = firstChild(leaf.resource, 'AmountPool');
  if (stated === undefined) return;
  const parts = childElements(stated, 'PartAmount');
  const plain =
    bundle.leaves.length === 1 &&
    parts.length === 1 &&
    childElements(parts[0]!).length === 0 &&
    attributeOf(parts[0]!, 'Waste') === undefined;
  for (const part of parts) {
    ledger.carry(stated, part);
    const named = childElements(part, 'Part');
    const keys: PartKeys = {
      ...leaf.keys,
      ...Object.assign({}, ...named.map((one) => olderKeys(ticket, one))),
    };
    const good = plain ? link : new Draft('PartAmount', jdfVocabulary.shape('PartAmount')!);
    for (const name of AMOUNTS) {
      const attribute = attributeNode(part, name);
      if (attribute !== undefined) carryAttribute(direction, 'PartAmount', attribute, good, overflowFor({}));
    }
    const waste = attributeNode(part, 'Waste');
    const details = childElements(part, 'PartWaste');
    if (!plain && good.attributes.size > 0) {
      const split = waste !== undefined || details.length > 0;
      good.children.push(
        partOf(split || Object.keys(keys).length === 0 ? { ...keys, Condition: 'Good' } : keys),
      );
      pool.children.push(finish(direction, good));
    }
    if (waste !== undefined) addAll(pool.children, wasteAmount(ticket, direction, part, keys, 'Waste'));
    for (const one of details) {
      ledger.carry(one);
      const condition = attributeOf(one, 'WasteDetails') ?? 'Waste';
      ledger.carryNamed(one, 'WasteDetails');
      addAll(pool.children, wasteAmount(ticket, direction, one, keys, condition));
    }
  }
}

function wasteAmount(
  ticket: Ticket,
  direction: Direction,
  el: XmlElement,
  keys: PartKeys,
  condition: string,
): XmlElement[] {
  const attribute = attributeNode(el, 'Waste');
  if (attribute === undefined) return [];
  const draft = new Draft('PartAmount', jdfVocabulary.shape('PartAmount')!);
  carryAttribute(direction, 'PartAmount', attribute, draft, overflowFor({}), { local: 'Amount' });
  draft.children.push(partOf({ ...keys, Condition: condition }));
  ticket.ledger.carry(el);
  return [finish(direction, draft)];
}

function olderKeys(ticket: Ticket, part: XmlElement): PartKeys {
  ticket.ledger.carryAll(part);
  return Object.fromEntries(
    part.attributes
      .filter(({ uri }) => uri === '')
      .map(({ local, value }) => [local === 'BinderySignatureID' ? 'BinderySignatureName' : local, value]),
  );
}

/** The processes that a set is for, counted in the node's own Types. */
export function indexesOf(set: XmlElement, first: number, count: number): readonly number[] {
  const named = splitTokens(attributeOf(set, 'CombinedProcessIndex') ?? '').map(Number);
  if (count < 2) return [];
  return named.map((index) => index - first).filter((index) => index >= 0 && index < count);
}
