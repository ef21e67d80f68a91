import { attributeOf, firstChild, type XmlElement } from '../../xml/index.js';
import { jdfVocabulary } from '../facts.js';
import { usableId } from '../ids.js';
import { attributeNode } from '../ledger.js';
import { type Overflow, sourceOf, without } from '../source.js';
import { carryAttribute, type Direction, Draft, fillDraft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { partOf } from './elements.js';
import { type Leaf, leavesIn, olderName } from './sets.js';
import type { Ticket } from './ticket.js';
import { writeBundle } from './write-resource.js';

/** A Resource of a message or audit in the older generation's words. */
export interface Told {
  readonly resource: XmlElement;
  readonly name: string;
  readonly leaf: Leaf;
  readonly amount: ReturnType<typeof attributeNode>;
}

/** The Resources of a set that stands in a message or audit, each written as a resource of its own. */
export function toldBy(ticket: Ticket, direction: Direction, set: XmlElement): Told[] {
  return leavesIn(ticket, set).flatMap((leaf) => {
    const name = olderName(attributeOf(set, 'Name') ?? '', leaf);
    const id = usableId(attributeOf(leaf.resource, 'ID')) ?? ticket.ids.make(asToken(name));
    const bundle = { name, id, keys: [], leaves: [leaf] };
    const resource = writeBundle(ticket, direction, bundle, attributeOf(set, 'Usage') ?? 'Input');
    if (resource === undefined) return [];
    const pool = firstChild(leaf.resource, 'AmountPool');
    const part = pool && firstChild(pool, 'PartAmount');
    const amount = part && attributeNode(part, 'Amount');
    if (pool !== undefined && part !== undefined) ticket.ledger.carry(pool, part);
    return [{ resource, name, leaf, amount }];
  });
}

/** A ResourceInfo of the newer generation: one of the older for each Resource of its set. */
export function olderResourceInfos(
  ticket: Ticket,
  direction: Direction,
  info: XmlElement,
  key: string,
  overflow: Overflow,
): XmlElement[] {
  const set = firstChild(info, 'ResourceSet');
  if (set === undefined) return [];
  return toldBy(ticket, direction, set).map(({ resource, leaf, amount }) => {
    const draft = new Draft(info.local, jdfVocabulary.shape(key)!);
    fillDraft(direction, without(sourceOf(info), [set]), draft, overflow);
    for (const name of ['Usage', 'ProcessUsage', 'Unit']) {
      const stated = attributeNode(set, name);
      if (stated !== undefined) carryAttribute(direction, 'ResourceSet', stated, draft, overflow);
    }
    if (amount !== undefined) {
      const local = draft.shape.attributes.has('ActualAmount') ? 'ActualAmount' : 'Amount';
      carryAttribute(direction, 'PartAmount', amount, draft, overflow, { local });
    }
    if (Object.keys(leaf.keys).length > 0 && draft.shape.byName.has('Part'))
      draft.children.push(partOf(leaf.keys));
    draft.children.push(resource);
    ticket.ledger.carry(info, set);
    ticket.ledger.carryNamed(set, 'Name');
    return finish(direction, draft);
  });
}
