import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import { partsNamed, partsOf } from '../partition/index.js';
import { nodesOf } from '../ticket/node.js';
import { attributeOf, withAttributes, type XmlDocument, type XmlElement } from '../xml/index.js';
import { elementsIn, type Inventory, type Pooled } from './inventory.js';
import { withExchanged, withoutChildren } from './layout.js';
import { givenAway, unmarked } from './marks.js';
import { where } from './places.js';
import { modesOf, type SpawnRecord } from './records.js';
import { compatible, holds, placesOf } from './scope.js';

/** How one resource goes along: its places that may be changed out there, or none where it is only to be read. */
export interface Copy {
  readonly pooled: Pooled;
  readonly places: readonly XmlElement[];
}

export interface Wanted {
  readonly parts: readonly PartKeys[];
  /** IDs of resources to be changed out there although the node has them as input. */
  readonly readWrite: readonly string[];
  /** IDs of resources only to be read although the node has them as output. */
  readonly readOnly: readonly string[];
}

/**
 * How each resource that leaves with a node goes along: what the node or one inside it makes, and what is asked for, to
 * be changed, all else to be read. Nothing that is out to be changed may leave to be changed once more. Errors:
 * JDF_SPAWN, JDF_PARTITION.
 */
export function copiesOf(
  doc: XmlDocument,
  inventory: Inventory,
  node: XmlElement,
  leaving: Iterable<Pooled>,
  records: readonly SpawnRecord[],
  wanted: Wanted,
): Result<readonly Copy[]> {
  const problems: Problem[] = [];
  const outputs = outputsOf(inventory, node);
  const all = [...leaving];
  for (const id of [...wanted.readWrite, ...wanted.readOnly]) {
    if (all.some((pooled) => pooled.id === id)) continue;
    const message = `Nothing with the ID "${id}" leaves with ${attributeOf(node, 'ID')}.`;
    const hint = 'Name a resource outside the node that it or a node inside it uses.';
    const at = inventory.nodes.get(attributeOf(node, 'ID') ?? '') ?? node;
    problems.push(error('JDF_DANGLING', message, { ...where(doc, at), hint }));
  }
  const copies = all.map((pooled): Copy => {
    const places = wantedPlaces(pooled, outputs.get(pooled.id), wanted);
    const problem = places === undefined ? undefined : refusal(doc, pooled, places, records, wanted);
    if (problem !== undefined) problems.push(problem);
    return { pooled, places: places ?? [] };
  });
  return problems.length > 0 ? refuse(...problems) : done(copies);
}

/** The selections of the output links of a node and the nodes inside, by the ID of the resource. */
function outputsOf(inventory: Inventory, node: XmlElement): Map<string, PartKeys[][]> {
  const found = new Map<string, PartKeys[][]>();
  for (const one of nodesOf(node)) {
    for (const link of elementsIn(one, 'ResourceLinkPool')) {
      const id = attributeOf(link, 'rRef') ?? '';
      if (attributeOf(link, 'Usage') !== 'Output' || !inventory.resources.has(id)) continue;
      found.set(id, [...(found.get(id) ?? []), partsNamed(link)]);
    }
  }
  return found;
}

/** Where a resource is to be changed; undefined where it is only to be read. */
function wantedPlaces(
  { id, root }: Pooled,
  outputs: readonly (readonly PartKeys[])[] | undefined,
  { parts, readWrite, readOnly }: Wanted,
): XmlElement[] | undefined {
  if (readWrite.includes(id)) return placesOf(root, parts);
  if (readOnly.includes(id) || outputs === undefined || isLocked(root)) return undefined;
  const places = outputs.flatMap((linked) => placesOf(root, both(linked, parts)));
  return places.filter((place, i) => {
    if (places.indexOf(place) < i) return false;
    return !places.some((outer) => outer !== place && holds(outer, place));
  });
}

/** What two selections have in common. */
function both(a: readonly PartKeys[], b: readonly PartKeys[]): readonly PartKeys[] {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  return a.flatMap((one) => b.flatMap((two) => (compatible(one, two) ? [{ ...one, ...two }] : [])));
}

function isLocked(resource: XmlElement): boolean {
  return attributeOf(resource, 'Locked')?.trim() === 'true';
}

function refusal(
  doc: XmlDocument,
  { id, root }: Pooled,
  places: readonly XmlElement[],
  records: readonly SpawnRecord[],
  { parts }: Wanted,
): Problem | undefined {
  if (places.length === 0) {
    const named = parts.map((part) =>
      Object.entries(part)
        .map(([key, value]) => `${key}="${value}"`)
        .join(' '),
    );
    const hint = 'Add that part to the resource, or let it go along to be read only.';
    return error('JDF_PARTITION', `${root.name} "${id}" has no part ${named.join(' or ')}.`, {
      ...where(doc, root),
      hint,
    });
  }
  if (isLocked(root)) {
    const hint = 'Spawn it from the ticket that holds the original, or change a copy of it.';
    const message = `${root.name} "${id}" is locked here: it may only be read.`;
    return error('JDF_SPAWN', message, { ...where(doc, root), hint });
  }
  const taken = givenAway(root, places, modesOf(records, id));
  if (taken === undefined) return undefined;
  const hint = `Merge that ticket first, or let ${id} go along to be read only.`;
  const message = `${root.name} "${id}" is out to be changed already, with ${taken.token}.`;
  return error('JDF_SPAWN', message, { ...where(doc, taken.place), hint });
}

/** The resource as it goes into the new ticket. `narrow`: parts beside those to be changed stay behind. */
export function copyFor({ pooled: { root }, places }: Copy, narrow: boolean): XmlElement {
  if (places.length === 0) return withAttributes(unmarked(root), { Locked: true });
  return unmarked(limited(root, places, narrow));
}

/** The resource with only some of its parts to be changed; the others are locked or left out. */
function limited(at: XmlElement, places: readonly XmlElement[], narrow: boolean): XmlElement {
  if (places.includes(at)) return at;
  const parts = new Set(partsOf(at));
  const beside = (child: XmlElement): boolean =>
    parts.has(child) && !places.some((place) => holds(child, place) || holds(place, child));
  return withExchanged(narrow ? withoutChildren(at, beside) : at, (child) => {
    if (!parts.has(child)) return child;
    return beside(child) ? withAttributes(child, { Locked: true }) : limited(child, places, narrow);
  });
}
