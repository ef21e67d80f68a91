import type { PartKeys } from '../elements/part.js';
import { partitionKeysOf, partsOf } from '../partition/index.js';
import { attributeOf, type XmlElement } from '../xml/index.js';

/** Whether two selections can mean the same thing: no key has another value in each. */
export function compatible(a: PartKeys, b: PartKeys): boolean {
  return Object.entries(a).every(([key, value]) => b[key] === undefined || b[key] === value);
}

/** Whether a selection fits one of several; no selection at all fits everything. */
export function fitsOne(part: PartKeys, parts: readonly PartKeys[]): boolean {
  return parts.length === 0 || parts.some((one) => compatible(part, one));
}

/**
 * The places in the partition tree of a resource that a selection means: the parts that hold its keys, or the nearest
 * part around them where the tree ends before; the whole resource where it is not partitioned by any of the keys. None
 * where the resource has parts for other values only.
 */
export function placesOf(resource: XmlElement, parts: readonly PartKeys[]): XmlElement[] {
  const keys = partitionKeysOf(resource);
  const found = new Set((parts.length === 0 ? [{}] : parts).flatMap((part) => below(resource, keys, part)));
  // One selection never finds a part inside another that it finds.
  if (parts.length <= 1) return [...found];
  return [...found].filter((place) => ![...found].some((other) => other !== place && holds(other, place)));
}

function below(at: XmlElement, keys: readonly string[], part: PartKeys): XmlElement[] {
  const [key, ...deeper] = keys;
  const inner = partsOf(at);
  if (key === undefined || inner.length === 0 || !keys.some((one) => part[one] !== undefined)) return [at];
  const wanted = part[key];
  const next = wanted === undefined ? inner : inner.filter((child) => attributeOf(child, key) === wanted);
  return next.flatMap((child) => below(child, deeper, part));
}

/** Whether a part is the other or lies in it. */
export function holds(outer: XmlElement, place: XmlElement): boolean {
  return outer === place || partsOf(outer).some((child) => holds(child, place));
}

/** The parts from a resource down to one of its parts, both included; empty for a part of another. */
export function chainTo(resource: XmlElement, place: XmlElement): XmlElement[] {
  if (resource === place) return [resource];
  for (const child of partsOf(resource)) {
    const chain = chainTo(child, place);
    if (chain.length > 0) return [resource, ...chain];
  }
  return [];
}

/** The keys that lead from a resource to a part of it. */
export function keysTo(resource: XmlElement, place: XmlElement): PartKeys {
  const [, ...parts] = chainTo(resource, place);
  const keys = partitionKeysOf(resource);
  return Object.fromEntries(parts.map((part, i) => [keys[i]!, attributeOf(part, keys[i]!) ?? '']));
}

/** The part with exactly these keys. */
export function placeAt(resource: XmlElement, keys: PartKeys): XmlElement | undefined {
  let at: XmlElement | undefined = resource;
  for (const key of partitionKeysOf(resource).slice(0, Object.keys(keys).length)) {
    at = at && partsOf(at).find((child) => attributeOf(child, key) === keys[key]);
  }
  return at;
}

/** The resource with some of its parts exchanged, wherever in its tree they are. */
export function withPlaces(
  at: XmlElement,
  exchange: (place: XmlElement) => XmlElement | undefined,
): XmlElement {
  const own = exchange(at);
  if (own !== undefined) return own;
  const parts = new Set(partsOf(at));
  let changed = false;
  const children = at.children.map((child) => {
    if (child.kind !== 'element' || !parts.has(child)) return child;
    const next = withPlaces(child, exchange);
    changed ||= next !== child;
    return next;
  });
  return changed ? { ...at, children } : at;
}
