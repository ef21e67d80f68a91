import { done, type Problem, type Result } from '#libs/kernel';
import { inheritedAttribute, lineageOf, nodesOf } from '../ticket/node.js';
import {
  attributeOf,
  elementsLike,
  firstChild,
  replaceElements,
  withAttributes,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';
import { type Act, auditStamp } from './agent.js';
import { bindingsAround, bindingsIn, settled } from './bindings.js';
import { freshIds, idsIn, withIds } from './fresh-ids.js';
import { elementsIn, inventoryOf, resourcesUsed } from './inventory.js';
import { withExchanged, withoutChildren } from './layout.js';
import { withoutToken } from './marks.js';
import { comingIn, mergedParts, withStatusInLeaves } from './merge-parts.js';
import { withPooled } from './node-info.js';
import { broughtBack, changedReadOnly, type Overwrite, overwritesOf } from './overwritten.js';
import { modesOf } from './records.js';
import { type Return, returnOf } from './returned.js';
import { lackingAudits, sameAudit, withAudits } from './united-audits.js';

/**
 * The ticket with a spawned one merged back: the node is exchanged for the one that came back (of a partitioned spawning:
 * united with it), resources that could be changed are overwritten in the places that were out, copies to be read are
 * dropped, marks taken off, and a Merged audit tells of it. What is new in the returned ticket stays, with other IDs where
 * its own are taken. Warnings: JDF_SPAWN (a copy to be read was changed), JDF_MERGE (something did not come back). Errors:
 * JDF_MERGE, and those of a document that is no JDF.
 */
export function merge(parent: XmlDocument, child: XmlDocument, act: Act): Result<XmlDocument> {
  const back = returnOf(parent, child);
  if (!back.ok) return back;
  const { value } = back;
  const told = value.partial ? withStatusInLeaves(child, value) : child;
  const returned = withFreshIds(parent, told, value);
  const { overwrites, problems } = overwritesOf(parent, returned, value);
  const changed = changedReadOnly(parent, returned, value.record, value.records);
  const resources = exchangedResources(parent, returned, overwrites, value);
  const hoisted = hoistedResources(parent, returned, overwrites, value);
  const before = replaceElements(parent, resources);
  const found: Problem[] = [...problems, ...changed.map(({ problem }) => problem)];
  const node = value.partial
    ? mergedParts(parent, before, returned, value, new Set(hoisted.keys()))
    : { element: returnedNode(parent, returned, value, new Set(hoisted.keys())), problems: [] };
  const audit = mergedAudit(value, overwrites, act);
  return done(installed(parent, before, returned, value, node.element, hoisted, audit), [
    ...found,
    ...node.problems,
  ]);
}

/** The returned ticket with new names for IDs that the ticket it comes back to uses for something else. */
function withFreshIds(parent: XmlDocument, child: XmlDocument, back: Return): XmlDocument {
  const { record, stub, partial } = back;
  const { overwrites } = overwritesOf(parent, child, back);
  const gone = new Set(overwrites.flatMap(({ places }) => places.map(({ before }) => before)));
  const taken = idsIn(parent.root, partial ? gone : new Set([...gone, stub]));
  const places = overwrites.flatMap((one) => one.places.map(({ after }) => after));
  const copies = inventoryOf(child.root).resources;
  const coming = partial
    ? comingIn(stub, child, record)
    : [
        ...idsIn(
          child.root,
          new Set([...record.readOnly, ...record.readWrite].flatMap((id) => copies.get(id)?.root ?? [])),
        ),
      ];
  const all = new Set([...coming, ...places.flatMap((place) => [...idsIn(place)])]);
  const names = freshIds(all, taken, idsIn(child.root), record.token);
  return names.size === 0 ? child : { ...child, root: withIds(child.root, names) };
}

function exchangedResources(
  parent: XmlDocument,
  child: XmlDocument,
  overwrites: readonly Overwrite[],
  back: Return,
): Map<XmlElement, XmlElement> {
  const { record, records } = back;
  const { resources } = inventoryOf(parent.root);
  const exchanged = new Map<XmlElement, XmlElement>();
  for (const id of [...record.readOnly, ...record.readWrite]) {
    const root = resources.get(id)?.root;
    if (root !== undefined) exchanged.set(root, withoutToken(root, record.token, modesOf(records, id)));
  }
  for (const one of overwrites) exchanged.set(one.pooled.root, broughtBack(parent, child, one, back));
  return exchanged;
}

/**
 * New resources that something outside the node refers to now, with the ID of the node whose pool they belong in: they
 * must lie where what refers to them lies, or it could not see them.
 */
function hoistedResources(
  parent: XmlDocument,
  child: XmlDocument,
  overwrites: readonly Overwrite[],
  { record, stub }: Return,
): Map<string, { readonly ownerId: string; readonly root: XmlElement }> {
  const copies = new Set([...record.readOnly, ...record.readWrite]);
  const inventory = inventoryOf(child.root);
  const around = lineageOf(parent, stub).slice(1).reverse();
  const found = new Map<string, { ownerId: string; root: XmlElement }>();
  for (const owner of around) {
    const places = overwrites
      .filter(({ pooled }) => pooled.owner === owner)
      .flatMap((one) => one.places.map(({ after }) => after));
    for (const { id, root } of resourcesUsed(inventory, places).values()) {
      if (copies.has(id) || found.has(id)) continue;
      found.set(id, { ownerId: attributeOf(owner, 'ID')!, root });
    }
  }
  return found;
}

/** The node as it goes back: without ancestors, copies and what was only stated because it stood alone. */
function returnedNode(
  parent: XmlDocument,
  child: XmlDocument,
  { record, stub }: Return,
  hoisted: ReadonlySet<string>,
): XmlElement {
  const { resources } = inventoryOf(parent.root);
  const copies = [...record.readOnly, ...record.readWrite].filter((id) => resources.has(id));
  const leaving = new Set([...copies, ...hoisted]);
  const bare = withoutResources(
    withoutChildren(child.root, (el) => el.local === 'AncestorPool' && el.uri === child.root.uri),
    leaving,
  );
  const pooled =
    firstChild(stub, 'ResourcePool') === undefined && elementsIn(bare, 'ResourcePool').length === 0
      ? withoutChildren(bare, (el) => el.local === 'ResourcePool' && el.uri === bare.uri)
      : bare;
  const inherited = (name: string): boolean =>
    attributeOf(stub, name) === undefined &&
    inheritedAttribute(parent, stub, name)?.value === attributeOf(child.root, name);
  const alone = ['JobID', 'Version', 'MaxVersion'].filter(inherited);
  const node = withAttributes(pooled, {
    SpawnID: attributeOf(stub, 'SpawnID'),
    ...Object.fromEntries(alone.map((name) => [name, undefined])),
  });
  return settled(
    withOldAudits(node, stub),
    bindingsIn(child, child.root),
    bindingsAround(parent, stub),
    stub,
  );
}

function withoutResources(node: XmlElement, ids: ReadonlySet<string>): XmlElement {
  return withExchanged(node, (child) => {
    if (child.uri !== node.uri) return child;
    if (child.local === 'JDF') return withoutResources(child, ids);
    if (child.local !== 'ResourcePool') return child;
    return withoutChildren(child, (resource) => ids.has(attributeOf(resource, 'ID') ?? ''));
  });
}

/** Audits are never taken away: those that did not come back are put back. */
function withOldAudits(node: XmlElement, stub: XmlElement): XmlElement {
  const old = firstChild(stub, 'AuditPool');
  if (old === undefined) return node;
  const pool = firstChild(node, 'AuditPool');
  const lacking = lackingAudits(elementsIn(stub, 'AuditPool'), elementsIn(node, 'AuditPool'), sameAudit);
  if (lacking.length === 0) return node;
  if (pool === undefined) return withPooled(node, 'AuditPool', lacking);
  return withExchanged(node, (child) => (child === pool ? withAudits(pool, lacking) : child));
}

function mergedAudit({ record }: Return, overwrites: readonly Overwrite[], act: Act): XmlElement {
  const make = elementsLike(record.owner);
  const ids = overwrites.map(({ pooled }) => pooled.id);
  return make(
    'Merged',
    {
      ...auditStamp(act),
      jRef: record.nodeId,
      MergeID: record.token,
      rRefsOverwritten: ids.length === 0 ? undefined : ids.join(' '),
    },
    record.parts.map((part) => make('Part', part)),
  );
}

/** The ticket with the node in its place, new resources in the pools where they belong, and the audit. */
function installed(
  parent: XmlDocument,
  before: XmlDocument,
  child: XmlDocument,
  { record }: Return,
  node: XmlElement,
  hoisted: ReadonlyMap<string, { readonly ownerId: string; readonly root: XmlElement }>,
  audit: XmlElement,
): XmlDocument {
  const ownerId = attributeOf(record.owner, 'ID');
  const originals = new Map([...nodesOf(parent.root)].map((one) => [attributeOf(one, 'ID'), one]));
  const visit = (at: XmlElement): XmlElement => {
    const id = attributeOf(at, 'ID');
    let next =
      id === record.nodeId
        ? node
        : withExchanged(at, (child) =>
            child.local === 'JDF' && child.uri === at.uri ? visit(child) : child,
          );
    const coming = [...hoisted.values()].filter((one) => one.ownerId === id);
    if (coming.length > 0) {
      const around = bindingsIn(parent, originals.get(id)!);
      next = withPooled(
        next,
        'ResourcePool',
        coming.map(({ root }) => settled(root, bindingsIn(child, root), around)),
      );
    }
    return id === ownerId ? withPooled(next, 'AuditPool', [audit]) : next;
  };
  return { ...before, root: visit(before.root) };
}
