import { attributeOf, childElements, parentOf, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { xjdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { effectiveSource, type Overflow } from '../source.js';
import { carryAttribute, Draft, finish, translate } from '../translate.js';
import { colourIntent } from './colour-intent.js';
import { type Job, newerResource } from './job.js';
import { selectedLeaves, writtenLeaves } from './leaves.js';
import type { UseOfResource } from './links.js';
import { identifiers, type Resources, shapeOf } from './resources.js';

export interface Products {
  readonly list: XmlElement | undefined;
  /** Resources that the products say in full. */
  readonly taken: ReadonlySet<XmlElement>;
}

/** The product nodes as a ProductList: intents, amount and kind of the Component that each makes. */
export function convertProducts(
  job: Job,
  resources: Resources,
  nodes: readonly XmlElement[],
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
  _around: Overflow,
): Products {
  const products = nodes.filter((node) => attributeOf(node, 'Type') === 'Product');
  const taken = new Set<XmlElement>();
  if (products.length === 0) return { list: undefined, taken };
  const ids = new Map(products.map((node) => [node, productId(job, node, uses)]));
  const childrenOf = new Map<XmlElement | undefined, XmlElement[]>(products.map((node) => [node, []]));
  for (const node of products) childrenOf.get(parentOf(job.doc, node))?.push(node);
  const list = new Draft('ProductList', shapeOf('ProductList'));
  for (const node of products) {
    const overflow: Overflow = { nodes: [], originals: [], keys: {} };
    const draft = new Draft('Product', shapeOf('Product'));
    const parent = parentOf(job.doc, node);
    const isRoot = parent === undefined || !ids.has(parent);
    draft.attributes.set('ID', ids.get(node)!);
    draft.attributes.set('IsRoot', String(isRoot));
    describe(job, resources, node, draft, overflow, taken, uses);
    intentsOfNode(
      job,
      resources,
      node,
      draft,
      overflow,
      taken,
      uses,
      childrenOf.get(node)!.map((one) => ids.get(one)!),
    );
    addAll(
      draft.children,
      overflow.nodes.filter(({ uri }) => uri === resources.direction.uri),
    );
    addAll(draft.children, identifiers(overflow));
    list.children.push(finish(resources.direction, draft));
  }
  return { list: finish(resources.direction, list), taken };
}

/** The ID of the Component that only the product says, else one of its own. */
function productId(
  job: Job,
  node: XmlElement,
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
): string {
  const [link] = linksTo(node, 'Component', 'Output');
  const target = link && job.target(attributeOf(link, 'rRef') ?? '');
  const own =
    target !== undefined && isSaidByProducts(job, target, uses) ? attributeOf(target, 'ID') : undefined;
  if (own === undefined || target === undefined) return job.ids.make('Product');
  job.productIds.set(target, own);
  return own;
}

function isSaidByProducts(
  job: Job,
  target: XmlElement,
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
): boolean {
  const all = uses.get(target)?.every((use) => use.links.every((one) => isOfProduct(job, one))) ?? false;
  return all && isPlain(target);
}

/** Attributes of the Component that a product node makes, on its Product. */
const OF_COMPONENT: readonly (readonly [jdf: string, xjdf: string])[] = [
  ['Amount', 'Amount'],
  ['ProductID', 'ExternalID'],
  ['ProductType', 'ProductType'],
  ['ProductTypeDetails', 'ProductTypeDetails'],
  ['DescriptiveName', 'DescriptiveName'],
];

function describe(
  job: Job,
  resources: Resources,
  node: XmlElement,
  draft: Draft,
  overflow: Overflow,
  taken: Set<XmlElement>,
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
): void {
  const { ledger } = job;
  const carry = (el: XmlElement, from: string, to: string): void => {
    const attribute = attributeNode(el, from);
    if (attribute === undefined) return;
    carryAttribute(resources.direction, 'Product', attribute, draft, overflow, { local: to });
  };
  if (node !== job.doc.root) carry(node, 'DescriptiveName', 'DescriptiveName');
  for (const link of linksTo(node, 'Component', 'Output')) {
    for (const name of ['Amount', 'MinAmount', 'MaxAmount']) carry(link, name, name);
    const target = job.target(attributeOf(link, 'rRef') ?? '');
    if (target === undefined) continue;
    for (const [from, to] of OF_COMPONENT) carry(target, from, to);
    const whole = draft.attributes.get('IsRoot') === 'true' ? 'FinalProduct' : 'PartialProduct';
    const type = attributeNode(target, 'ComponentType');
    if (type?.value === whole) ledger.carry(type);
    if (isSaidByProducts(job, target, uses)) {
      taken.add(target);
      ledger.carry(target);
      ledger.carryNamed(target, 'ID', 'Class');
      const status = attributeNode(target, 'Status');
      if (status?.value === 'Unavailable') ledger.carry(status);
      for (const one of uses.get(target) ?? []) {
        for (const each of one.links) {
          ledger.carry(each);
          ledger.carryNamed(each, 'rRef', 'Usage', 'ProcessUsage');
        }
      }
    }
  }
}

function isOfProduct(job: Job, link: XmlElement): boolean {
  const pool = parentOf(job.doc, link);
  const node = pool && parentOf(job.doc, pool);
  return node !== undefined && attributeOf(node, 'Type') === 'Product';
}

/** Says nothing beyond what a Product says. */
function isPlain(component: XmlElement): boolean {
  const known = new Set(['ID', 'Class', 'Status', 'ComponentType', ...OF_COMPONENT.map(([name]) => name)]);
  return component.attributes.every(({ local }) => known.has(local)) && childElements(component).length === 0;
}

function linksTo(node: XmlElement, name: string, usage: string): XmlElement[] {
  return childElements(node, 'ResourceLinkPool')
    .flatMap((pool) => childElements(pool, `${name}Link`))
    .filter((link) => attributeOf(link, 'Usage') === usage);
}

function intentsOfNode(
  job: Job,
  resources: Resources,
  node: XmlElement,
  draft: Draft,
  overflow: Overflow,
  taken: Set<XmlElement>,
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
  children: readonly string[],
): void {
  const { ledger } = job;
  const own = childElements(node, 'ResourcePool').flatMap((pool) => childElements(pool));
  const linked = childElements(node, 'ResourceLinkPool')
    .flatMap((pool) => childElements(pool))
    .flatMap((link) => job.target(attributeOf(link, 'rRef') ?? '') ?? []);
  const seen = new Set<string>();
  const layout = linked.find(({ local }) => local === 'LayoutIntent');
  const sides = layout && attributeOf(layout, 'Sides');
  for (const resource of new Set([...linked, ...own.filter((one) => !uses.has(one))])) {
    if (!resource.local.endsWith('Intent') || resource.uri !== node.uri) continue;
    if (newerResource(resource.local) !== undefined) continue;
    if (!xjdfVocabulary.isMember('ProductIntent', resource.local)) {
      ledger.reason(resource, 'the newer generation has no such intent');
      taken.add(resource);
      continue;
    }
    taken.add(resource);
    if (seen.has(resource.local)) {
      ledger.reason(resource, 'a product of the newer generation has one intent of a kind');
      continue;
    }
    const use = uses.get(resource)?.[0];
    const [leaf = writtenLeaves(resource)[0]!] = selectedLeaves(resource, use?.parts ?? []);
    const made = intent(job, resources, resource, leaf.chain, overflow, children, sides);
    if (made === undefined) continue;
    seen.add(resource.local);
    draft.children.push(made);
    ledger.carryNamed(resource, 'ID', 'Class', 'PartIDKeys');
    for (const each of use?.links ?? []) {
      ledger.carry(each);
      ledger.carryNamed(each, 'rRef', 'Usage');
      for (const part of childElements(each, 'Part')) {
        ledger.reason(part, 'of the options of an intent the newer generation has the one chosen');
      }
    }
  }
  if (children.length === 1) draft.children.push(assembling(resources, draft, children[0]!));
  else if (children.length > 1 && !seen.has('BindingIntent'))
    draft.children.push(gathering(resources, children));
}

function intent(
  job: Job,
  resources: Resources,
  resource: XmlElement,
  chain: readonly XmlElement[],
  overflow: Overflow,
  children: readonly string[],
  sides: string | undefined,
): XmlElement | undefined {
  const source = effectiveSource(chain);
  const shape = xjdfVocabulary.named(resource.local)!;
  const draft = new Draft('Intent', shapeOf('Intent'));
  draft.attributes.set('Name', resource.local);
  for (const [from, to] of [
    ['DescriptiveName', 'DescriptiveName'],
    ['ProductID', 'ExternalID'],
  ] as const) {
    const attribute = source.attributes.find(({ local }) => local === from);
    if (attribute === undefined) continue;
    carryAttribute(resources.direction, 'Intent', attribute, draft, overflow, { local: to });
  }
  let made =
    resource.local === 'ColorIntent'
      ? colourIntent(job, resources, writtenLeaves(resource), sides, overflow)
      : translate(resources.direction, source, resource.local, shape, overflow);
  if (made === undefined) return undefined;
  if (resource.local === 'BindingIntent' && children.length > 1) {
    made = { ...made, attributes: [...made.attributes, refs('ChildRefs', children)] };
  }
  job.ledger.carry(...chain);
  // An intent that is there can be read: it has no status in the newer generation.
  const status = attributeNode(chain[0]!, 'Status');
  if (status?.value === 'Available') job.ledger.carry(status);
  const foreign = overflow.nodes.filter(({ uri }) => uri !== resources.direction.uri);
  for (const one of foreign) overflow.nodes.splice(overflow.nodes.indexOf(one), 1);
  const el = finish(resources.direction, draft);
  return { ...el, children: [made, ...foreign] };
}

/** One part: the schema asks for two where parts are bound, so it is put together with the product itself. */
function assembling(resources: Resources, product: Draft, child: string): XmlElement {
  const item = new Draft('AssemblyItem', shapeOf('AssemblyItem'));
  item.attributes.set('ChildRef', child);
  const content = new Draft('AssemblingIntent', shapeOf('AssemblingIntent'));
  content.attributes.set('Container', product.attributes.get('ID')!);
  content.children.push(finish(resources.direction, item));
  const draft = new Draft('Intent', shapeOf('Intent'));
  draft.attributes.set('Name', 'AssemblingIntent');
  draft.children.push(finish(resources.direction, content));
  return finish(resources.direction, draft);
}

/** What holds the parts of a product together where nothing is said of how. */
function gathering(resources: Resources, children: readonly string[]): XmlElement {
  const binding = new Draft('BindingIntent', shapeOf('BindingIntent'));
  binding.attributes.set('BindingType', 'None');
  binding.attributes.set('ChildRefs', children.join(' '));
  const draft = new Draft('Intent', shapeOf('Intent'));
  draft.attributes.set('Name', 'BindingIntent');
  draft.children.push(finish(resources.direction, binding));
  return finish(resources.direction, draft);
}

function refs(
  name: string,
  ids: readonly string[],
): { name: string; prefix: string; local: string; uri: string; value: string } {
  return { name, prefix: '', local: name, uri: '', value: ids.join(' ') };
}
