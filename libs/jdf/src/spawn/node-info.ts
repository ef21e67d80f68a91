import { done, error, type Result, refuse } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import { type NodeStatus, nodeStatuses } from '../enumerations.js';
import { partAttribute, partitionKeysOf, partitionLeaves, partsOf } from '../partition/index.js';
import { statusOfParts } from '../ticket/status-roll-up.js';
import {
  attributeOf,
  element,
  elementsLike,
  firstChild,
  replaceElements,
  withAttributes,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';
import { elementsIn, type Inventory, inventoryOf, resourcesUsed } from './inventory.js';
import { withAdded, withFirst } from './layout.js';
import { where } from './places.js';
import { chainTo, compatible, keysTo, placesOf } from './scope.js';

/** The NodeInfo that a node links. */
export function nodeInfoOf(inventory: Inventory, node: XmlElement): XmlElement | undefined {
  for (const link of elementsIn(node, 'ResourceLinkPool')) {
    if (link.local !== 'NodeInfoLink' || attributeOf(link, 'Usage') !== 'Input') continue;
    const pooled = inventory.resources.get(attributeOf(link, 'rRef') ?? '');
    if (pooled !== undefined) return pooled.root;
  }
  return undefined;
}

/** The status of a partition of a node: NodeStatus of its NodeInfo part or of those around it, else the node's own. */
export function statusAt(node: XmlElement, info: XmlElement, place: XmlElement): NodeStatus {
  return statusDown(node, chainTo(info, place));
}

function statusDown(node: XmlElement, chain: readonly XmlElement[]): NodeStatus {
  const stated = partAttribute({ chain, keys: {} }, 'NodeStatus');
  const own = attributeOf(node, 'Status');
  const status = stated ?? (own === 'Part' || own === 'Pool' ? undefined : own);
  return nodeStatuses.find((known) => known === status) ?? 'Waiting';
}

/** A part of a NodeInfo that has a status, with all the parts inside. */
export function withStatus(part: XmlElement, status: string): XmlElement {
  const inner = new Set(partsOf(part));
  const children = part.children.map((child) =>
    child.kind === 'element' && inner.has(child) && attributeOf(child, 'NodeStatus') !== undefined
      ? withStatus(child, status)
      : child,
  );
  return { ...withAttributes(part, { NodeStatus: status }), children };
}

/** The status of a node by all leaves of its NodeInfo. */
export function statusOfLeaves(node: XmlElement, info: XmlElement): NodeStatus | undefined {
  return statusOfParts(partitionLeaves(info).map(({ chain }) => statusDown(node, chain)));
}

/**
 * The document with a NodeInfo for a node that has a leaf for each of some partitions, so that each can have a status of
 * its own. What is made takes its keys from the resources that `around` uses. Error: JDF_PARTITION.
 */
export function withNodeInfoLeaves(
  doc: XmlDocument,
  nodeId: string,
  aroundId: string,
  parts: readonly PartKeys[],
): Result<XmlDocument> {
  const inventory = inventoryOf(doc.root);
  const node = inventory.nodes.get(nodeId)!;
  const asked = [...new Set(parts.flatMap((part) => Object.keys(part)))];
  const info = nodeInfoOf(inventory, node);
  if (info !== undefined && hasLeaves(info, asked, parts)) return done(doc);
  const known = info === undefined ? [] : partitionKeysOf(info);
  const keys = [...known, ...asked.filter((key) => !known.includes(key))];
  const needed = keys.slice(0, Math.max(...asked.map((key) => keys.indexOf(key))) + 1);
  const leaves = leavesBy(inventory, inventory.nodes.get(aroundId)!, needed);
  const lacking = parts.find((part) => !leaves.some((leaf) => compatible(leaf, part)));
  if (lacking !== undefined) {
    const named = Object.entries(lacking).map(([key, value]) => `${key}="${value}"`);
    const message = `No resource of ${node.name} "${nodeId}" has the part ${named.join(' ')}.`;
    const hint = `Partition a resource that it links by ${needed.join(' ')}, or name another part.`;
    return refuse(error('JDF_PARTITION', message, { ...where(doc, node), hint }));
  }
  const status = attributeOf(node, 'Status');
  const attributes = {
    PartIDKeys: keys.join(' '),
    NodeStatus: (info && attributeOf(info, 'NodeStatus')) ?? (status === 'Part' ? undefined : status),
  };
  if (info === undefined) return done(withNewInfo(doc, node, attributes, leaves, needed));
  const grown = withLeaves(withAttributes(info, attributes), leaves, needed, 2);
  return done(replaceElements(doc, new Map([[info, grown]])));
}

function hasLeaves(info: XmlElement, asked: readonly string[], parts: readonly PartKeys[]): boolean {
  return parts.every((part) => {
    const places = placesOf(info, [part]);
    const named = (place: XmlElement): boolean => asked.every((key) => key in keysTo(info, place));
    return places.length > 0 && places.every(named);
  });
}

/** All combinations of keys that resources used by a node are divided by. */
function leavesBy(inventory: Inventory, node: XmlElement, keys: readonly string[]): PartKeys[] {
  const found = new Map<string, PartKeys>();
  for (const { root } of resourcesUsed(inventory, [node]).values()) {
    if (!keys.every((key) => partitionKeysOf(root).includes(key))) continue;
    for (const leaf of partitionLeaves(root)) {
      if (!keys.every((key) => leaf.keys[key] !== undefined)) continue;
      const so = Object.fromEntries(keys.map((key) => [key, leaf.keys[key]!]));
      found.set(JSON.stringify(so), so);
    }
  }
  return [...found.values()];
}

function withLeaves(
  info: XmlElement,
  leaves: readonly PartKeys[],
  [key, ...deeper]: readonly string[],
  depth: number,
): XmlElement {
  if (key === undefined) return info;
  const values = [...new Set(leaves.map((leaf) => leaf[key]!))];
  const below = (part: XmlElement, value: string): XmlElement =>
    withLeaves(
      part,
      leaves.filter((leaf) => leaf[key] === value),
      deeper,
      depth + 1,
    );
  const there = new Map(partsOf(info).map((part) => [attributeOf(part, key), part]));
  const children = info.children.map((child) => {
    const value = child.kind === 'element' ? attributeOf(child, key) : undefined;
    return child.kind === 'element' && value !== undefined && there.get(value) === child
      ? below(child, value)
      : child;
  });
  const made = values
    .filter((value) => !there.has(value))
    .map((value) => below({ ...element(info.name, { [key]: value }), uri: info.uri }, value));
  return withAdded({ ...info, children }, made, depth);
}

function withNewInfo(
  doc: XmlDocument,
  node: XmlElement,
  attributes: Record<string, string | undefined>,
  leaves: readonly PartKeys[],
  keys: readonly string[],
): XmlDocument {
  const make = elementsLike(node);
  const { resources, nodes, holding } = inventoryOf(doc.root);
  let id = `NI_${attributeOf(node, 'ID')}`;
  while (resources.has(id) || nodes.has(id) || holding.has(id)) id += '_';
  const bare = make('NodeInfo', { ID: id, Class: 'Parameter', Status: 'Available', ...attributes });
  const info = withLeaves(bare, leaves, keys, 2);
  const link = make('NodeInfoLink', { rRef: id, Usage: 'Input' });
  const pooled = withPooled(withPooled(node, 'ResourcePool', [info]), 'ResourceLinkPool', [link]);
  return replaceElements(doc, new Map([[node, pooled]]));
}

/** The node with more at the end of one of its pools, which is made if it is not there. */
export function withPooled(node: XmlElement, name: string, added: readonly XmlElement[]): XmlElement {
  if (added.length === 0) return node;
  const pool = firstChild(node, name);
  if (pool === undefined) {
    const made = withAdded(elementsLike(node)(name), added, 1);
    return name === 'ResourceLinkPool' ? withAdded(node, [made], 0) : withFirst(node, made, 0);
  }
  const grown = withAdded(pool, added, 1);
  return { ...node, children: node.children.map((child) => (child === pool ? grown : child)) };
}
