import { type Problem, warning } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import { partsNamed } from '../partition/index.js';
import { nodesOf } from '../ticket/node.js';
import {
  attributeOf,
  childElements,
  firstChild,
  replaceElements,
  withAttributes,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';
import { bindingsIn, settled } from './bindings.js';
import { idsIn } from './fresh-ids.js';
import { elementsIn, type Inventory, inventoryOf, pooledIn } from './inventory.js';
import { withAdded, withExchanged, withFirst, withoutChildren } from './layout.js';
import { nodeInfoOf, statusOfLeaves, withPooled, withStatus } from './node-info.js';
import { where } from './places.js';
import type { SpawnRecord } from './records.js';
import type { Return } from './returned.js';
import { sameContent } from './same-content.js';
import { placesOf, withPlaces } from './scope.js';
import { lackingAudits, withAudits } from './united-audits.js';

/** What a returned node has that the node it is united with has not. */
interface News {
  readonly audits: readonly XmlElement[];
  readonly resources: readonly XmlElement[];
  readonly links: readonly XmlElement[];
  readonly nodes: readonly XmlElement[];
}

function newsOf(node: XmlElement, returned: XmlElement, record: SpawnRecord): News {
  const copies = new Set([...record.readOnly, ...record.readWrite]);
  return {
    audits: lackingAudits(elementsIn(returned, 'AuditPool'), elementsIn(node, 'AuditPool'), (a, b) =>
      sameContent(a, b),
    ),
    resources: pooledIn(returned).flatMap(({ id, root }) => (copies.has(id) ? [] : [root])),
    links: elementsIn(returned, 'ResourceLinkPool').filter((link) => linkLike(link, node) === undefined),
    nodes: childElements(returned, 'JDF').filter((inner) => !wentAlong(inner, record)),
  };
}

/** Nodes that went out have the token; nodes made out there have not. */
function wentAlong(node: XmlElement, record: SpawnRecord): boolean {
  return attributeOf(node, 'SpawnID') === record.token;
}

/** The IDs of all that comes in new with the partitions of a node. */
export function comingIn(stub: XmlElement, child: XmlDocument, record: SpawnRecord): string[] {
  const nodes = new Map([...nodesOf(stub)].map((node) => [attributeOf(node, 'ID'), node]));
  const visit = (returned: XmlElement): string[] => {
    const node = nodes.get(attributeOf(returned, 'ID'));
    if (node === undefined) return [];
    const news = newsOf(node, returned, record);
    const own = Object.values(news).flatMap((some: readonly XmlElement[]) =>
      some.flatMap((el) => [...idsIn(el)]),
    );
    const inner = childElements(returned, 'JDF').filter((one) => wentAlong(one, record));
    return [...own, ...inner.flatMap(visit)];
  };
  return visit(child.root);
}

interface Uniting {
  readonly parent: XmlDocument;
  readonly child: XmlDocument;
  readonly record: SpawnRecord;
  readonly inventory: Inventory;
  readonly hoisted: ReadonlySet<string>;
  readonly problems: Problem[];
}

/**
 * The node with what came back for some of its partitions. `before` is the parent ticket with the resources overwritten
 * already. Attributes of the node itself belong to all partitions and stay; it is told where the returned ones differ.
 */
export function mergedParts(
  parent: XmlDocument,
  before: XmlDocument,
  child: XmlDocument,
  { record }: Return,
  hoisted: ReadonlySet<string>,
): { readonly element: XmlElement; readonly problems: readonly Problem[] } {
  const inventory = inventoryOf(before.root);
  const uniting: Uniting = { parent, child, record, inventory, hoisted, problems: [] };
  const element = united(inventory.nodes.get(record.nodeId)!, child.root, uniting);
  return { element, problems: uniting.problems };
}

function united(node: XmlElement, returned: XmlElement, uniting: Uniting): XmlElement {
  const { parent, child, record, hoisted } = uniting;
  const original = inventoryOf(parent.root).nodes.get(attributeOf(node, 'ID') ?? '') ?? node;
  const inside = bindingsIn(parent, original);
  const brought = (el: XmlElement): XmlElement => settled(el, bindingsIn(child, el), inside);
  const news = newsOf(original, returned, record);
  differing(node, returned, uniting);
  const inner = new Map(
    childElements(returned, 'JDF')
      .filter((one) => wentAlong(one, record))
      .map((one) => [attributeOf(one, 'ID'), one]),
  );
  let at = withExchanged(node, (el) => {
    if (el.uri !== node.uri) return el;
    const found = el.local === 'JDF' ? inner.get(attributeOf(el, 'ID')) : undefined;
    if (found !== undefined) return united(el, found, uniting);
    return el.local === 'ResourceLinkPool' ? withAmounts(el, returned, record.parts, brought) : el;
  });
  const resources = news.resources.filter((one) => !hoisted.has(attributeOf(one, 'ID') ?? ''));
  at = withPooled(at, 'ResourcePool', resources.map(brought));
  at = withPooled(at, 'ResourceLinkPool', news.links.map(brought));
  at = withNewAudits(at, news.audits.map(brought));
  at = withAdded(at, news.nodes.map(brought), 0);
  const expanded = firstChild(returned, 'JDF') !== undefined && attributeOf(returned, 'Types') === undefined;
  if (expanded) at = withAttributes(at, { Types: undefined });
  return withLeafStatus(at, uniting);
}

function withNewAudits(node: XmlElement, audits: readonly XmlElement[]): XmlElement {
  const pool = firstChild(node, 'AuditPool');
  if (pool === undefined) return withPooled(node, 'AuditPool', audits);
  return withExchanged(node, (child) => (child === pool ? withAudits(pool, audits) : child));
}

/** The link of a node that is the same as a returned one: same resource, same use. */
function linkLike(link: XmlElement, node: XmlElement): XmlElement | undefined {
  const alike = elementsIn(node, 'ResourceLinkPool').filter(
    (one) =>
      one.local === link.local &&
      ['rRef', 'Usage', 'ProcessUsage', 'CombinedProcessIndex'].every(
        (name) => attributeOf(one, name) === attributeOf(link, name),
      ),
  );
  const parts = partsNamed(link).map((part) => JSON.stringify(part));
  return (
    alike.find((one) => {
      const own = partsNamed(one).map((part) => JSON.stringify(part));
      return parts.every((part) => own.includes(part)) && (parts.length > 0 || own.length === 0);
    }) ?? alike[0]
  );
}

/** The links with the amounts of the returned partitions in place of those that they had. */
function withAmounts(
  pool: XmlElement,
  returned: XmlElement,
  parts: readonly PartKeys[],
  brought: (el: XmlElement) => XmlElement,
): XmlElement {
  const holder = { ...returned, children: [pool] };
  const amounts = new Map<XmlElement, XmlElement[]>();
  for (const link of elementsIn(returned, 'ResourceLinkPool')) {
    const own = linkLike(link, holder);
    if (own !== undefined) amounts.set(own, amountsWithin(link, parts));
  }
  return withExchanged(pool, (link) => {
    const coming = amounts.get(link);
    if (coming === undefined) return link;
    const old = amountsWithin(link, parts);
    if (old.length === coming.length && old.every((one, i) => sameContent(one, coming[i]!))) return link;
    const amountPool = firstChild(link, 'AmountPool');
    if (amountPool === undefined) {
      const made = { ...firstChild(linkReturned(link, returned), 'AmountPool')!, children: [] };
      return withFirst(link, withAdded(brought(made), coming.map(brought), 2), 2);
    }
    const places = new Map(old.map((one) => [one, coming.find((other) => samePartsNamed(one, other))]));
    const kept = withoutChildren(amountPool, (one) => places.has(one) && places.get(one) === undefined);
    const exchanged = withExchanged(kept, (one) => {
      const found = places.get(one);
      return found === undefined || sameContent(one, found) ? one : brought(found);
    });
    const used = new Set(places.values());
    const next = withAdded(exchanged, coming.filter((one) => !used.has(one)).map(brought), 2);
    return withExchanged(link, (child) => (child === amountPool ? next : child));
  });
}

function samePartsNamed(a: XmlElement, b: XmlElement): boolean {
  return JSON.stringify(partsNamed(a)) === JSON.stringify(partsNamed(b));
}

function linkReturned(link: XmlElement, returned: XmlElement): XmlElement {
  return linkLike(link, returned)!;
}

/** The PartAmounts of a link that are for these partitions and no others. */
function amountsWithin(link: XmlElement, parts: readonly PartKeys[]): XmlElement[] {
  const pool = firstChild(link, 'AmountPool');
  const within = (named: PartKeys): boolean =>
    parts.some((part) => Object.entries(part).every(([key, value]) => named[key] === value));
  return (pool === undefined ? [] : childElements(pool, 'PartAmount')).filter((amount) => {
    const named = partsNamed(amount);
    return named.length > 0 && named.every(within);
  });
}

/** What a returned node states of itself otherwise than the node here. */
function differing(node: XmlElement, returned: XmlElement, { child, problems }: Uniting): void {
  const mayDiffer = ['Status', 'SpawnID', 'JobID', 'Version', 'MaxVersion', 'Types'];
  for (const { uri, local, value } of returned.attributes) {
    if (uri !== '' || mayDiffer.includes(local) || attributeOf(node, local) === value) continue;
    const hint = 'Change it in the ticket that all partitions share.';
    const message = `${local}="${value}" of ${returned.name} "${attributeOf(returned, 'ID')}" is not taken over: it would hold for all partitions.`;
    problems.push(warning('JDF_MERGE', message, { ...where(child, returned), hint }));
  }
}

/** The node with the status of its partitions. */
function withLeafStatus(node: XmlElement, { inventory }: Uniting): XmlElement {
  const info = nodeInfoOf(inventory, node);
  const status = info && statusOfLeaves(node, info);
  return status === undefined
    ? node
    : withAttributes(node, { Status: status === 'Spawned' ? 'Part' : status });
}

/**
 * The returned ticket with what its nodes say of their status in their NodeInfo too: Status of a node holds for all its
 * partitions unless it is Part.
 */
export function withStatusInLeaves(child: XmlDocument, { record }: Return): XmlDocument {
  const inventory = inventoryOf(child.root);
  const told = new Map<XmlElement, XmlElement>();
  for (const node of nodesOf(child.root)) {
    const status = attributeOf(node, 'Status') ?? 'Part';
    const info = wentAlong(node, record) ? nodeInfoOf(inventory, node) : undefined;
    if (info === undefined || told.has(info) || status === 'Part' || status === 'Pool') continue;
    const places = new Set(placesOf(info, record.parts));
    told.set(
      info,
      withPlaces(info, (place) => (places.has(place) ? withStatus(place, status) : undefined)),
    );
  }
  return replaceElements(child, told);
}
