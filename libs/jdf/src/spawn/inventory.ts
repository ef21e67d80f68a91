import { nodesOf } from '../ticket/node.js';
import { attributeOf, childElements, descendants, type XmlElement } from '../xml/index.js';

/** A resource of a pool with the node that the pool belongs to. */
export interface Pooled {
  readonly id: string;
  readonly root: XmlElement;
  readonly owner: XmlElement;
}

/** Nodes and resources of a ticket by their IDs. Foreign elements may use the same words as IDs and are no matter. */
export interface Inventory {
  readonly nodes: ReadonlyMap<string, XmlElement>;
  readonly resources: ReadonlyMap<string, Pooled>;
  /** The resource that has or holds the element with an ID. */
  readonly holding: ReadonlyMap<string, Pooled>;
}

/** Nodes, resources and what holds an ID, of a node and all below it. Where an ID is there twice, the first counts. */
export function inventoryOf(root: XmlElement): Inventory {
  const nodes = new Map<string, XmlElement>();
  const resources = new Map<string, Pooled>();
  const holding = new Map<string, Pooled>();
  for (const owner of nodesOf(root)) {
    const nodeId = attributeOf(owner, 'ID');
    if (nodeId !== undefined && !nodes.has(nodeId)) nodes.set(nodeId, owner);
    for (const pooled of pooledIn(owner)) {
      if (!resources.has(pooled.id)) resources.set(pooled.id, pooled);
      for (const el of descendants(pooled.root)) {
        const id = el.uri === owner.uri || el === pooled.root ? attributeOf(el, 'ID') : undefined;
        if (id !== undefined && !holding.has(id)) holding.set(id, pooled);
      }
    }
  }
  return { nodes, resources, holding };
}

/** The resources in the pool of a node itself, those of foreign namespaces too. */
export function pooledIn(owner: XmlElement): Pooled[] {
  return childElements(owner, 'ResourcePool').flatMap((pool) =>
    pool.children.flatMap((child): Pooled[] => {
      const id = child.kind === 'element' ? attributeOf(child, 'ID') : undefined;
      return child.kind === 'element' && id !== undefined ? [{ id, root: child, owner }] : [];
    }),
  );
}

/** The elements of a pool of a node, whatever namespace they are of. */
export function elementsIn(node: XmlElement, pool: string): XmlElement[] {
  return childElements(node, pool).flatMap((found) =>
    found.children.filter((child): child is XmlElement => child.kind === 'element'),
  );
}

const REFERS = /(^r|R)efs?$/;

/** The IDs that an element's own attributes refer to: rRef, rSubRef, rRefs, ContentRefs and the like. */
function idsReferredTo(el: XmlElement): string[] {
  return el.attributes.flatMap(({ local, uri, value }) =>
    uri === '' && REFERS.test(local) && local !== 'jRef' ? value.split(/\s+/).filter(Boolean) : [],
  );
}

/** The resources that elements use: those they refer to, and those that these refer to, and so on. */
export function resourcesUsed(inventory: Inventory, roots: Iterable<XmlElement>): Map<string, Pooled> {
  const found = new Map<string, Pooled>();
  const open = [...roots];
  for (let root = open.pop(); root !== undefined; root = open.pop()) {
    for (const el of descendants(root)) {
      for (const id of idsReferredTo(el)) {
        const pooled = inventory.holding.get(id);
        if (pooled === undefined || found.has(pooled.id)) continue;
        found.set(pooled.id, pooled);
        open.push(pooled.root);
      }
    }
  }
  return found;
}
