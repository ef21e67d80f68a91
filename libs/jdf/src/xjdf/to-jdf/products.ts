import { splitTokens } from '../../codec/index.js';
import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary } from '../facts.js';
import { usableId } from '../ids.js';
import { attributeNode } from '../ledger.js';
import { overflowFor, sourceOf } from '../source.js';
import { carryAttribute, type Direction, Draft, fillDraft, finish } from '../translate.js';
import { colourParts } from './colour-intent.js';
import { keptNames } from './sets.js';
import type { Ticket } from './ticket.js';

/** Product nodes as the root of the ticket has them. */
export interface ProductNodes {
  /** Of the product that is the root. */
  readonly line: number;
  readonly type: string;
  /** Of the root node itself. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly links: readonly XmlElement[];
  readonly children: readonly XmlElement[];
}

interface Made {
  readonly product: XmlElement;
  readonly node: Draft;
  readonly links: XmlElement[];
  readonly component: string;
}

/** The ProductList as product nodes: the root product as the root, those that go into it inside. */
export function olderProducts(ticket: Ticket, direction: Direction): ProductNodes | undefined {
  const list = firstChild(ticket.doc.root, 'ProductList');
  const products = list === undefined ? [] : childElements(list, 'Product');
  if (list === undefined || products.length === 0) return undefined;
  ticket.ledger.carry(list);
  const made = products.map((product) => begin(ticket, product));
  const parents = parentsOf(made);
  const children = childrenByParent(parents);
  const childrenOf = (one: Made): readonly Made[] => children.get(one) ?? [];
  for (const one of made) complete(ticket, direction, one, childrenOf(one));
  const roots = made.filter((one) => !parents.has(one));
  for (const [child, parent] of parents)
    parent.links.push(link(direction, 'Component', child.component, 'Input'));
  const write = (one: Made): XmlElement => {
    addAll(one.node.children, childrenOf(one).map(write));
    return finish(direction, withLinks(direction, one));
  };
  if (roots.length === 1) {
    const [root] = roots as [Made];
    const inner = childrenOf(root).map(write);
    return {
      line: root.product.line,
      type: 'Product',
      attributes: root.node.attributes,
      links: root.links,
      children: inner,
    };
  }
  const outer = (roots.length === 0 ? made : roots).map(write);
  return { line: list.line, type: 'ProcessGroup', attributes: new Map(), links: [], children: outer };
}

/** The parts of each product in the order in which it names them. */
function childrenByParent(parents: ReadonlyMap<Made, Made>): ReadonlyMap<Made, readonly Made[]> {
  const children = new Map<Made, Made[]>();
  for (const [child, parent] of parents) {
    const there = children.get(parent);
    if (there === undefined) children.set(parent, [child]);
    else there.push(child);
  }
  for (const [parent, those] of children) {
    const places = new Map<string, number>();
    for (const name of namesIn(parent)) if (!places.has(name)) places.set(name, places.size);
    those.sort((a, b) => places.get(a.component)! - places.get(b.component)!);
  }
  return children;
}

/** The products that the intents of a product name, in order. */
function namesIn({ product }: Made): string[] {
  const intents = childElements(product, 'Intent').flatMap((one) => childElements(one));
  return intents.flatMap((one) => [
    ...splitTokens(attributeOf(one, 'ChildRefs') ?? ''),
    ...splitTokens(attributeOf(one, 'Container') ?? ''),
    ...childElements(one).flatMap((item) => splitTokens(attributeOf(item, 'ChildRef') ?? '')),
  ]);
}

function begin(ticket: Ticket, product: XmlElement): Made {
  const node = new Draft('JDF', jdfVocabulary.named('JDF')!);
  node.attributes.set('ID', ticket.ids.make('Product'));
  node.attributes.set('Type', 'Product');
  node.line = product.line;
  node.attributes.set('Status', 'Waiting');
  const component = usableId(attributeOf(product, 'ID')) ?? ticket.ids.make('Component');
  ticket.targets.set(component, { name: 'Component', id: component, keys: {} });
  return { product, node, links: [], component };
}

/** Which product goes into which: what a binding or an assembly names. */
function parentsOf(made: readonly Made[]): ReadonlyMap<Made, Made> {
  const parents = new Map<Made, Made>();
  const byComponent = new Map<string, Made[]>();
  for (const one of made) {
    const there = byComponent.get(one.component);
    if (there === undefined) byComponent.set(one.component, [one]);
    else there.push(one);
  }
  for (const parent of made) {
    for (const child of namesIn(parent).flatMap((id) => byComponent.get(id) ?? [])) {
      if (child !== parent && !parents.has(child)) parents.set(child, parent);
    }
  }
  // Products that hold one another would have no root.
  for (const one of made) {
    const seen = new Set<Made>([one]);
    for (let at = parents.get(one); at !== undefined; at = parents.get(at)) {
      if (seen.has(at)) {
        parents.delete(one);
        break;
      }
      seen.add(at);
    }
  }
  return parents;
}

const OF_COMPONENT: readonly (readonly [newer: string, older: string])[] = [
  ['ExternalID', 'ProductID'],
  ['ProductType', 'ProductType'],
  ['ProductTypeDetails', 'ProductTypeDetails'],
  ['DescriptiveName', 'DescriptiveName'],
  ['CommentURL', 'CommentURL'],
];

function complete(ticket: Ticket, direction: Direction, one: Made, children: readonly Made[]): void {
  const { product } = one;
  const { ledger } = ticket;
  const overflow = overflowFor({}, keptNames(product));
  ledger.carry(product);
  ledger.carryNamed(product, 'ID', 'IsRoot');
  const component = new Draft('Component', jdfVocabulary.named('Component')!);
  component.attributes.set('Class', 'Quantity');
  component.attributes.set('ID', one.component);
  component.attributes.set('Status', 'Unavailable');
  component.attributes.set(
    'ComponentType',
    attributeOf(product, 'IsRoot') === 'false' ? 'PartialProduct' : 'FinalProduct',
  );
  for (const [newer, older] of OF_COMPONENT) {
    const stated = attributeNode(product, newer);
    if (stated !== undefined)
      carryAttribute(direction, 'Product', stated, component, overflow, { local: older });
  }
  const output = new Draft('ComponentLink', jdfVocabulary.shape('ResourceLink')!);
  output.attributes.set('Usage', 'Output');
  output.line = product.line;
  output.attributes.set('rRef', one.component);
  for (const name of ['Amount', 'MinAmount', 'MaxAmount']) {
    const stated = attributeNode(product, name);
    if (stated !== undefined) carryAttribute(direction, 'Product', stated, output, overflow);
  }
  const rest = childElements(product).filter(({ local }) => local === 'Comment' || local === 'GeneralID');
  const free = rest.filter((el) => overflow.kept?.every(({ by }) => by !== el));
  fillDraft(direction, { ...sourceOf(product), attributes: [], children: free }, component, overflow);
  addAll(component.children, overflow.nodes);
  ticket.pool.push(finish(direction, component));
  one.links.push(finish(direction, output));
  for (const intent of childElements(product, 'Intent'))
    olderIntent(ticket, direction, intent, one, children);
}

function olderIntent(
  ticket: Ticket,
  direction: Direction,
  intent: XmlElement,
  one: Made,
  children: readonly Made[],
): void {
  const { ledger } = ticket;
  const overflow = overflowFor({}, keptNames(one.product));
  for (const content of intent.children) {
    if (content.kind !== 'element') continue;
    if (content.uri !== intent.uri) continue;
    const shape = jdfVocabulary.isMember('Resource', content.local)
      ? jdfVocabulary.named(content.local)
      : undefined;
    if (shape === undefined) {
      ledger.reason(content, 'the older generation has no such intent');
      continue;
    }
    const draft = new Draft(content.local, shape);
    const id = ticket.ids.make(content.local);
    draft.attributes.set('Class', 'Intent');
    draft.attributes.set('ID', id);
    draft.attributes.set('Status', 'Available');
    for (const [newer, older] of [
      ['DescriptiveName', 'DescriptiveName'],
      ['ExternalID', 'ProductID'],
    ] as const) {
      const stated = attributeNode(intent, newer);
      if (stated !== undefined)
        carryAttribute(direction, 'Intent', stated, draft, overflow, { local: older });
    }
    const parts = content.local === 'ColorIntent' ? colourParts(ticket, direction, content, overflow) : [];
    if (parts.length > 0) draft.attributes.set('PartIDKeys', 'Side');
    const source = sourceOf(content);
    const rest = source.children.filter(({ local }) => local !== 'SurfaceColor');
    fillDraft(direction, { ...source, children: rest }, draft, overflow);
    addAll(draft.children, parts);
    // Which parts is said by the nodes inside; a part that is there twice or in two products has one node.
    const refs = splitTokens(attributeOf(content, 'ChildRefs') ?? '');
    const isSaid = refs.length === children.length && refs.every((id, i) => children[i]!.component === id);
    if (content.local === 'BindingIntent' && isSaid) ledger.carryNamed(content, 'ChildRefs');
    ledger.carry(intent, content);
    ledger.carryNamed(intent, 'Name');
    addAll(draft.children, overflow.nodes);
    ticket.pool.push(finish(direction, draft));
    one.links.push(link(direction, content.local, id, 'Input'));
  }
}

function link(direction: Direction, name: string, id: string, usage: string): XmlElement {
  const draft = new Draft(`${name}Link`, jdfVocabulary.shape('ResourceLink')!);
  draft.attributes.set('Usage', usage);
  draft.attributes.set('rRef', id);
  return finish(direction, draft);
}

function withLinks(direction: Direction, one: Made): Draft {
  const pool = new Draft('ResourceLinkPool', jdfVocabulary.named('ResourceLinkPool')!);
  addAll(pool.children, one.links);
  one.node.children.unshift(finish(direction, pool));
  return one.node;
}
