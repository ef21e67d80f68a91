import { splitTokens } from '../../codec/index.js';
import {
  attributeOf,
  childElements,
  documentOf,
  firstChild,
  indented,
  JDF_NAMESPACE,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { overflowFor, sourceOf } from '../source.js';
import type { Converted } from '../to-xjdf/convert.js';
import { carryAttribute, type Direction, Draft, finish, translate } from '../translate.js';
import { asToken } from '../values.js';
import { adopted, attribute, declaredAtRoot } from '../write.js';
import { olderAudits } from './audits.js';
import { withoutDangling } from './dangling.js';
import { toOlder } from './direction.js';
import { indexesOf, writeLink } from './links.js';
import { olderProducts, type ProductNodes } from './products.js';
import { keptNames, type PlannedSet, planSets } from './sets.js';
import { Ticket } from './ticket.js';
import { writeBundle } from './write-resource.js';

const OF_ROOT = [
  'JobID',
  'JobPartID',
  'ProjectID',
  'RelatedJobID',
  'RelatedJobPartID',
  'RelatedProjectID',
  'Category',
  'ICSVersions',
  'DescriptiveName',
  'CommentURL',
] as const;

/** The processes of an XJDF, and where they begin in its Types. */
interface Work {
  readonly types: readonly string[];
  readonly first: number;
}

/** An XJDF as a JDF ticket: its products as product nodes, its processes as one node. */
export function ticketToJdf(doc: XmlDocument): Converted {
  const ticket = new Ticket(doc);
  const direction = toOlder(ticket);
  const { root } = doc;
  const types = splitTokens(attributeOf(root, 'Types') ?? '');
  const first = types[0] === 'Product' ? 1 : 0;
  const work: Work = { types: types.slice(first), first };
  const sets = planSets(ticket);
  const products = olderProducts(ticket, direction);
  const pool = writePool(ticket, direction, sets);
  const processLinks = work.types.length === 0 ? [] : linksOf(ticket, direction, sets, pool, work, false);
  const productLinks = products === undefined ? [] : linksOf(ticket, direction, sets, pool, work, true);
  const node = new Draft('JDF', jdfVocabulary.named('JDF')!);
  rootAttributes(ticket, direction, node);
  node.line = products?.line ?? root.line;
  node.attributes.set('ID', ticket.ids.make('Node'));
  node.attributes.set('Version', '1.7');
  const audits = olderAudits(ticket, direction);
  const resources = [...ticket.pool];
  if (products !== undefined) {
    productRoot(ticket, direction, node, products, productLinks, work, processLinks);
  } else {
    const kind = processKind(work.types.length === 0 ? types : work.types);
    for (const [name, value] of Object.entries(kind)) node.attributes.set(name, value);
    pushLinks(
      direction,
      node,
      work.types.length === 0 ? linksOf(ticket, direction, sets, pool, work, true) : processLinks,
    );
  }
  node.attributes.set('Status', statusOf(root));
  const resourcePool = new Draft('ResourcePool', jdfVocabulary.named('ResourcePool')!);
  addAll(resourcePool.children, resources, pool.written);
  const rest = nodeContent(ticket, direction, root);
  node.children.unshift(
    ...(audits === undefined ? [] : [audits]),
    ...(resourcePool.children.length === 0 ? [] : [finish(direction, resourcePool)]),
  );
  addAll(node.children, rest);
  ticket.ledger.carry(root);
  ticket.ledger.carryNamed(root, 'Types', 'Version');
  const written = withoutDangling(ticket, finish(direction, node));
  return { doc: documentOf(indented(declaredAtRoot(typed(written), root))), lost: ticket.ledger.losses() };
}

function rootAttributes(ticket: Ticket, direction: Direction, node: Draft): void {
  const { root } = ticket.doc;
  const overflow = overflowFor({}, keptNames(root));
  for (const name of OF_ROOT) {
    const stated = attributeNode(root, name);
    if (stated !== undefined) carryAttribute(direction, 'XJDF', stated, node, overflow);
  }
  for (const one of root.attributes) {
    if (one.uri !== '') carryAttribute(direction, 'XJDF', one, node, overflow);
  }
}

/** A process by itself, several as one Combined node. */
function processKind(types: readonly string[]): Record<string, string> {
  if (types.length === 1) return { Type: asToken(types[0]!) };
  return types.length === 0 ? { Type: 'ProcessGroup' } : { Type: 'Combined', Types: types.join(' ') };
}

interface Pool {
  readonly written: XmlElement[];
  /** Names of what could be written, by ID. */
  readonly names: ReadonlySet<string>;
}

function writePool(ticket: Ticket, direction: Direction, sets: readonly PlannedSet[]): Pool {
  const written: XmlElement[] = [];
  const names = new Set<string>();
  const { ledger } = ticket;
  for (const { set, bundles } of sets) {
    const before = written.length;
    for (const bundle of bundles) {
      if (names.has(bundle.id)) continue;
      const specific = bundle.leaves[0]!.specific;
      if (specific !== undefined && specific.uri !== set.uri) {
        addAll(
          written,
          bundle.leaves.flatMap(({ resource }) => foreignIn(ticket, resource)),
        );
        continue;
      }
      const made = writeBundle(ticket, direction, bundle, attributeOf(set, 'Usage'));
      if (made === undefined) {
        for (const leaf of bundle.leaves) {
          ledger.reason(
            leaf.specific ?? leaf.resource,
            `the older generation has no resource ${bundle.name}`,
          );
        }
        continue;
      }
      names.add(bundle.id);
      const unit = attributeNode(set, 'Unit');
      const shape = jdfVocabulary.named(bundle.name);
      const withUnit = unit !== undefined && shape?.attributes.has('Unit');
      if (withUnit) ledger.carry(unit);
      written.push(
        withUnit ? { ...made, attributes: [...made.attributes, attribute('Unit', unit.value)] } : made,
      );
    }
    if (written.length > before || bundles.some(({ id }) => names.has(id))) {
      ledger.carry(set);
      ledger.carryNamed(set, 'Name', 'ID', 'CombinedProcessIndex');
    }
  }
  return { written, names };
}

function foreignIn(ticket: Ticket, resource: XmlElement): XmlElement[] {
  return resource.children.flatMap((child) => {
    if (child.kind !== 'element' || child.uri === resource.uri) return [];
    ticket.ledger.carryAll(child);
    ticket.ledger.carry(resource);
    ticket.ledger.carryNamed(resource, 'ID');
    return [adopted(child)];
  });
}

const USAGES: ReadonlySet<string> = new Set(['Input', 'Output']);

/** Links to the sets of the products, or to those of the processes. */
function linksOf(
  ticket: Ticket,
  direction: Direction,
  sets: readonly PlannedSet[],
  pool: Pool,
  work: Work,
  ofProduct: boolean,
): XmlElement[] {
  return sets.flatMap(({ set, bundles }) => {
    const named = splitTokens(attributeOf(set, 'CombinedProcessIndex') ?? '').map(Number);
    const toProduct =
      work.types.length === 0 || (named.length > 0 && named.every((index) => index < work.first));
    if (!USAGES.has(attributeOf(set, 'Usage') ?? '') || toProduct !== ofProduct) return [];
    ticket.ledger.carryNamed(set, 'Usage', 'ProcessUsage');
    return bundles
      .filter((bundle) => pool.names.has(bundle.id))
      .map((bundle) =>
        writeLink(ticket, direction, set, bundle, indexesOf(set, work.first, work.types.length)),
      );
  });
}

function pushLinks(direction: Direction, node: Draft, links: readonly XmlElement[]): void {
  if (links.length === 0) return;
  const pool = new Draft(
    'ResourceLinkPool',
    jdfVocabulary.shape('GenericResourceLinkPool') ?? jdfVocabulary.named('ResourceLinkPool')!,
  );
  addAll(pool.children, links);
  node.children.push(finish(direction, pool));
}

function productRoot(
  ticket: Ticket,
  direction: Direction,
  node: Draft,
  products: ProductNodes,
  links: readonly XmlElement[],
  work: Work,
  processLinks: readonly XmlElement[],
): void {
  node.attributes.set('Type', products.type);
  for (const [name, value] of products.attributes)
    if (!node.attributes.has(name)) node.attributes.set(name, value);
  pushLinks(direction, node, [...products.links, ...links]);
  addAll(node.children, products.children);
  if (work.types.length === 0) return;
  const child = new Draft('JDF', jdfVocabulary.named('JDF')!);
  child.attributes.set('ID', ticket.ids.make('Node'));
  for (const [name, value] of Object.entries(processKind(work.types))) child.attributes.set(name, value);
  child.attributes.set('Status', statusOf(ticket.doc.root));
  pushLinks(direction, child, processLinks);
  node.children.push(finish(direction, child));
}

/** The Status of the whole: that of its NodeInfo, if all agree. */
function statusOf(root: XmlElement): string {
  const infos = childElements(root, 'ResourceSet')
    .filter((set) => attributeOf(set, 'Name') === 'NodeInfo')
    .flatMap((set) => childElements(set, 'Resource'))
    .flatMap((resource) => firstChild(resource, 'NodeInfo') ?? []);
  const all = new Set(infos.map((info) => attributeOf(info, 'Status') ?? 'Waiting'));
  const allowed = [...all].filter((one) => jdfVocabulary.named('JDF')!.attributes.get('Status')!.allows(one));
  if (allowed.length === 1) return allowed[0]!;
  return allowed.length === 0 ? 'Waiting' : 'InProgress';
}

function nodeContent(ticket: Ticket, direction: Direction, root: XmlElement): XmlElement[] {
  const overflow = overflowFor({}, keptNames(root));
  return root.children.flatMap((child) => {
    if (child.kind !== 'element') return [];
    if (child.uri !== root.uri) {
      ticket.ledger.carryAll(child);
      return [adopted(child)];
    }
    if (child.local !== 'Comment' && child.local !== 'GeneralID') return [];
    if (overflow.kept?.some(({ by }) => by === child && ticket.ledger.isCarried(by))) return [];
    return (
      translate(direction, sourceOf(child), child.local, jdfVocabulary.shape(child.local)!, overflow) ?? []
    );
  });
}

/** Nodes with their type said as the schema knows it, where it knows it and allows all the links. */
function typed(node: XmlElement): XmlElement {
  const type = attributeOf(node, 'Type') ?? '';
  const children = node.children.map((child) =>
    child.kind === 'element' && child.local === 'JDF' && child.uri === JDF_NAMESPACE ? typed(child) : child,
  );
  const links = childElements(node, 'ResourceLinkPool').flatMap((pool) => childElements(pool));
  const pool = jdfVocabulary.shape(type)?.byName.get('ResourceLinkPool');
  const allowed = pool !== undefined && links.every(({ local }) => jdfVocabulary.mayHold(pool.shape, local));
  if (!allowed) return { ...node, children };
  const xsi = { name: 'xsi:type', prefix: 'xsi', local: 'type', uri: XSI_NAMESPACE, value: type };
  return { ...node, attributes: [...node.attributes, xsi], children };
}
