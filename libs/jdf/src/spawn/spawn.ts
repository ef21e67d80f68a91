import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import { kindOf } from '../ticket/kind.js';
import { activationOf, inheritedAttribute, lineageOf, nodesOf } from '../ticket/node.js';
import { statusOfParts } from '../ticket/status-roll-up.js';
import {
  attributeOf,
  documentOf,
  elementsLike,
  firstChild,
  replaceElements,
  withAttributes,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';
import { type Act, auditStamp } from './agent.js';
import { ancestorIds, ancestorPool, namedAncestors, partsWithin } from './ancestors.js';
import { bindingsIn, settled } from './bindings.js';
import { type Copy, copiesOf, copyFor } from './copies.js';
import { type Inventory, inventoryOf, pooledIn, resourcesUsed } from './inventory.js';
import { withExchanged, withFirst } from './layout.js';
import { type ModeOf, withToken } from './marks.js';
import { narrowed } from './narrow.js';
import { nodeInfoOf, statusAt, withNodeInfoLeaves, withPooled, withStatus } from './node-info.js';
import { where } from './places.js';
import { modesOf, recordsOf, type SpawnRecord } from './records.js';
import { placesOf, withPlaces } from './scope.js';

/** Which node: by its ID or by its JobPartID. */
export type NodeChoice = { readonly nodeId: string } | { readonly jobPartId: string };

export interface SpawnOptions extends Act {
  /** The token of this spawning, an NMTOKEN never used before in the job. */
  readonly spawnId: string;
  /** The partitions that leave; the whole node where left out. */
  readonly parts?: readonly PartKeys[];
  /** IDs of resources that may be changed out there although they are inputs. */
  readonly readWrite?: readonly string[];
  /** IDs of resources that may only be read although they are outputs. */
  readonly readOnly?: readonly string[];
  /** Whether it never comes back to the same place; written up to version 1.4. */
  readonly independent?: boolean;
}

export interface Spawned {
  /** The ticket after the node has left. */
  readonly parent: XmlDocument;
  /** The ticket that leaves. */
  readonly child: XmlDocument;
}

/**
 * Takes a node, or some partitions of it, out into a ticket of its own, with a copy of every resource that it uses: what
 * it makes (and what is asked for) to be changed there, all else to be read, locked. The parent ticket keeps the node with
 * Status Spawned (for partitions: Part, and NodeStatus Spawned of those), the resources' SpawnStatus and SpawnIDs, and a
 * Spawned audit in the node around it (for partitions: in the node itself). Errors: JDF_SPAWN, JDF_PARTITION,
 * JDF_DANGLING, STEP_UNKNOWN, and those of a document that is no JDF.
 */
export function spawn(doc: XmlDocument, choice: NodeChoice, options: SpawnOptions): Result<Spawned> {
  const kind = kindOf(doc);
  if (!kind.ok) return kind;
  const found = chosen(doc, choice);
  if (!found.ok) return found;
  const nodeId = found.value;
  const refused = notNow(doc, inventoryOf(doc.root).nodes.get(nodeId)!, options);
  if (refused !== undefined) return refuse(refused);
  const parts = options.parts ?? [];
  const ready = parts.length === 0 ? done(doc) : withLeavesInside(doc, nodeId, options);
  return ready.ok ? leave(ready.value, nodeId, options) : ready;
}

function chosen(doc: XmlDocument, choice: NodeChoice): Result<string> {
  const [name, wanted] =
    'nodeId' in choice ? (['ID', choice.nodeId] as const) : (['JobPartID', choice.jobPartId] as const);
  const nodes = [...nodesOf(doc.root)].filter((node) => attributeOf(node, name) === wanted);
  const id = nodes[0] && attributeOf(nodes[0], 'ID');
  if (nodes.length === 1 && id !== undefined) return done(id);
  const message =
    nodes.length === 0
      ? `No node has ${name}="${wanted}".`
      : `${nodes.length} nodes have ${name}="${wanted}", or it has no ID.`;
  const ids = [...nodesOf(doc.root)].map((node) => attributeOf(node, name)).filter(Boolean);
  return refuse(error('STEP_UNKNOWN', message, { hint: `There are: ${ids.slice(0, 20).join(', ')}.` }));
}

const NMTOKEN = /^[\p{L}\p{N}._:-]+$/u;

/** Why a node can't leave as it is. */
function notNow(doc: XmlDocument, node: XmlElement, options: SpawnOptions): Problem | undefined {
  const at = (el: XmlElement, message: string, hint: string): Problem =>
    error('JDF_SPAWN', message, { ...where(doc, el), hint });
  const { spawnId, parts } = options;
  if (!NMTOKEN.test(spawnId))
    return at(node, `"${spawnId}" is no SpawnID.`, 'A SpawnID is one word of letters, digits and . _ - :');
  const ids = [doc.root, ...namedAncestors(doc.root)].map((el) => attributeOf(el, 'SpawnID'));
  if (ids.includes(spawnId) || recordsOf(doc.root).some(({ token }) => token === spawnId))
    return at(
      node,
      `The SpawnID "${spawnId}" has been used before.`,
      'Each spawning needs a SpawnID of its own.',
    );
  if (ancestorIds(doc, node).length === 0)
    return at(
      node,
      `${node.name} "${attributeOf(node, 'ID')}" has no node around it to come back to.`,
      'Send the whole ticket, or put the node into a Product or ProcessGroup node.',
    );
  const out = lineageOf(doc, node).find((one) => attributeOf(one, 'Status') === 'Spawned');
  if (out !== undefined)
    return at(
      out,
      `${out.name} "${attributeOf(out, 'ID')}" has been spawned already.`,
      'Merge it first, or spawn from the ticket that it left in.',
    );
  const { value: activation } = activationOf(doc, node);
  if (activation === 'Informative')
    return at(
      node,
      'The node is Informative: it is for reading only.',
      'Spawn from the ticket that is Active.',
    );
  if (parts === undefined) return undefined;
  const version = inheritedAttribute(doc, doc.root, 'Version')?.value ?? '';
  if (/^1\.[0-2]$/.test(version))
    return at(
      node,
      `Partitions can't have a status of their own in version ${version}.`,
      'Raise Version to 1.3 or later, or spawn the whole node.',
    );
  if (parts.length === 0 || parts.some((part) => Object.keys(part).length === 0))
    return at(
      node,
      'A partition to be spawned has no key.',
      'Name at least one key, such as SheetName, or leave out the parts.',
    );
  return partsWithin(doc.root, parts) === undefined
    ? at(
        node,
        'The ticket is itself for other partitions than those to be spawned.',
        'Name partitions within those of its AncestorPool.',
      )
    : undefined;
}

/** The document with NodeInfo leaves for the partitions of a node and of those inside that concern them. */
function withLeavesInside(doc: XmlDocument, nodeId: string, options: SpawnOptions): Result<XmlDocument> {
  const parts = options.parts ?? [];
  const node = inventoryOf(doc.root).nodes.get(nodeId)!;
  let at = doc;
  for (const one of nodesOf(narrowed(node, parts, options.spawnId))) {
    const made = withNodeInfoLeaves(at, attributeOf(one, 'ID') ?? '', nodeId, parts);
    if (!made.ok) return made;
    at = made.value;
  }
  return done(at);
}

function leave(doc: XmlDocument, nodeId: string, options: SpawnOptions): Result<Spawned> {
  const inventory = inventoryOf(doc.root);
  const node = inventory.nodes.get(nodeId)!;
  const { spawnId } = options;
  const parts = options.parts ?? [];
  const partial = parts.length > 0;
  const bare = partial ? narrowed(node, parts, spawnId) : node;
  const inside = bindingsIn(doc, node);
  const ancestors = ancestorPool(doc, node, partsWithin(doc.root, parts) ?? [], inside);
  const own = new Set([...nodesOf(bare)].flatMap((one) => pooledIn(one).map(({ id }) => id)));
  const used = resourcesUsed(inventory, [bare, ancestors]);
  const leaving = [...inventory.resources.values()].filter(({ id }) =>
    own.has(id) ? partial : used.has(id),
  );
  const infos = partial ? infosOf(inventory, bare) : [];
  const records = recordsOf(doc.root);
  const copies = copiesOf(doc, inventory, bare, leaving, records, {
    parts,
    readWrite: [...(options.readWrite ?? []), ...infos],
    readOnly: options.readOnly ?? [],
  });
  if (!copies.ok) return copies;
  const parent = withRecords(doc, node, bare, copies.value, records, options);
  const child = documentOf(childRoot(doc, node, bare, ancestors, copies.value, own, options));
  return done({ parent, child });
}

function infosOf(inventory: Inventory, node: XmlElement): string[] {
  return [...nodesOf(node)].flatMap((one) => {
    const info = nodeInfoOf(inventory, one);
    const id = info && attributeOf(info, 'ID');
    return id === undefined ? [] : [id];
  });
}

function childRoot(
  doc: XmlDocument,
  node: XmlElement,
  bare: XmlElement,
  ancestors: XmlElement,
  copies: readonly Copy[],
  own: ReadonlySet<string>,
  options: SpawnOptions,
): XmlElement {
  const parts = options.parts ?? [];
  const partial = parts.length > 0;
  const inventory = inventoryOf(doc.root);
  const pool = firstChild(node, 'ResourcePool');
  const inside = bindingsIn(doc, pool ?? node);
  const made = new Map(copies.map((copy) => [copy.pooled.id, copyFor(copy, partial)]));
  const outside = copies
    .filter(({ pooled }) => !own.has(pooled.id))
    .map(({ pooled }) => settled(made.get(pooled.id)!, bindingsIn(doc, pooled.root), inside));
  const inner = withOwnCopies(bare, made);
  const root = withPooled(partial ? withPartStatus(inventory, inner, parts) : inner, 'ResourcePool', outside);
  const inherited = (name: string): string | undefined =>
    attributeOf(node, name) ?? inheritedAttribute(doc, node, name)?.value ?? left(doc, name);
  const named = withAttributes(root, {
    SpawnID: options.spawnId,
    JobID: inherited('JobID'),
    Version: inherited('Version'),
    MaxVersion: inherited('MaxVersion'),
  });
  return settled(withFirst(named, ancestors, 0), bindingsIn(doc, node), new Map());
}

/** An attribute that only the ancestors left behind state. */
function left(doc: XmlDocument, name: string): string | undefined {
  return namedAncestors(doc.root)
    .map((ancestor) => attributeOf(ancestor, name))
    .findLast((value) => value !== undefined);
}

/** The node with the resources in its own pools exchanged for their copies. */
function withOwnCopies(node: XmlElement, made: ReadonlyMap<string, XmlElement>): XmlElement {
  return withExchanged(node, (child) => {
    if (child.uri !== node.uri) return child;
    if (child.local === 'JDF') return withOwnCopies(child, made);
    if (child.local !== 'ResourcePool') return child;
    return withExchanged(child, (resource) => made.get(attributeOf(resource, 'ID') ?? '') ?? resource);
  });
}

/** The status that a node, or some partitions of it, has when leaving. */
function statusLeaving(
  inventory: Inventory,
  node: XmlElement,
  parts: readonly PartKeys[],
): string | undefined {
  const info = parts.length === 0 ? undefined : nodeInfoOf(inventory, node);
  const statuses =
    info === undefined ? [] : placesOf(info, parts).map((place) => statusAt(node, info, place));
  return statusOfParts(statuses) ?? attributeOf(node, 'Status');
}

/** The node, and those inside it, with the status that the partitions have. */
function withPartStatus(inventory: Inventory, node: XmlElement, parts: readonly PartKeys[]): XmlElement {
  const inner = withExchanged(node, (child) =>
    child.local === 'JDF' && child.uri === node.uri ? withPartStatus(inventory, child, parts) : child,
  );
  return withAttributes(inner, { Status: statusLeaving(inventory, node, parts) });
}

/** The parent ticket: the node's status, the marks of the resources and the audit. */
function withRecords(
  doc: XmlDocument,
  node: XmlElement,
  bare: XmlElement,
  copies: readonly Copy[],
  records: readonly SpawnRecord[],
  options: SpawnOptions,
): XmlDocument {
  const { spawnId } = options;
  const parts = options.parts ?? [];
  const partial = parts.length > 0;
  const inventory = inventoryOf(doc.root);
  const infos = new Set(partial ? infosOf(inventory, bare) : []);
  const marked = copies.map(({ pooled, places }): [XmlElement, XmlElement] => {
    const before = modesOf(records, pooled.id);
    const modeOf: ModeOf = (token) => (token === spawnId ? (places.length > 0 ? 'RW' : 'RO') : before(token));
    const at = places.length > 0 ? places : [pooled.root];
    const out = withToken(pooled.root, spawnId, at, modeOf);
    return [pooled.root, infos.has(pooled.id) ? withLeavesSpawned(out, parts) : out];
  });
  const nodeId = attributeOf(node, 'ID')!;
  const audit = spawnedAudit(doc, node, copies, options);
  const ownerId = partial ? nodeId : attributeOf(lineageOf(doc, node)[1]!, 'ID')!;
  const leaving = new Set(partial ? [...nodesOf(bare)].map((one) => attributeOf(one, 'ID')) : [nodeId]);
  const withMarks = replaceElements(doc, new Map(marked));
  const visit = (at: XmlElement): XmlElement => {
    const id = attributeOf(at, 'ID');
    const inner = withExchanged(at, (child) =>
      child.local === 'JDF' && child.uri === at.uri ? visit(child) : child,
    );
    const own = leaving.has(id) ? withAttributes(inner, { Status: partial ? 'Part' : 'Spawned' }) : inner;
    return id === ownerId ? withPooled(own, 'AuditPool', [audit]) : own;
  };
  return { ...withMarks, root: visit(withMarks.root) };
}

function withLeavesSpawned(info: XmlElement, parts: readonly PartKeys[]): XmlElement {
  const places = new Set(placesOf(info, parts));
  return withPlaces(info, (place) => (places.has(place) ? withStatus(place, 'Spawned') : undefined));
}

function spawnedAudit(
  doc: XmlDocument,
  node: XmlElement,
  copies: readonly Copy[],
  options: SpawnOptions,
): XmlElement {
  const make = elementsLike(node);
  const ids = (some: readonly Copy[]): string | undefined =>
    some.length === 0 ? undefined : some.map(({ pooled }) => pooled.id).join(' ');
  const version = inheritedAttribute(doc, doc.root, 'Version')?.value ?? '';
  return make(
    'Spawned',
    {
      ...auditStamp(options),
      jRef: attributeOf(node, 'ID'),
      NewSpawnID: options.spawnId,
      Independent: /^1\.[0-4]$/.test(version) ? options.independent : undefined,
      rRefsROCopied: ids(copies.filter(({ places }) => places.length === 0)),
      rRefsRWCopied: ids(copies.filter(({ places }) => places.length > 0)),
      Status: statusLeaving(inventoryOf(doc.root), node, options.parts ?? []),
    },
    (options.parts ?? []).map((part) => make('Part', part)),
  );
}
