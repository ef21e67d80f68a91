import { type Partition, partitionLeaves, partsNamed, resolveParts } from '../../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';
import type { TicketLink, TicketNode } from '../ticket-check.js';

/** The parts of a resource that a link means. */
export function leavesOf({ element, resource }: TicketLink): readonly Partition[] {
  if (resource === undefined) return [];
  const parts = partsNamed(element);
  // All leaves of a resource are asked for by many.
  return parts.length === 0 ? partitionLeaves(resource) : resolveParts(resource, parts).found;
}

/** The input link of a node to what it has one of. */
export function inputOf({ links }: TicketNode, wanted: string): TicketLink | undefined {
  return links.find(({ name, usage }) => name === wanted && usage === 'Input');
}

/** Input links to what a press needs of each separation that it prints; a proof is not printed from. */
export function perSeparation({ links }: TicketNode): TicketLink[] {
  return links.filter(
    ({ name, usage, role }) => usage === 'Input' && role !== 'Proof' && PER_SEPARATION.has(name),
  );
}

const PER_SEPARATION: ReadonlySet<string> = new Set(['ExposedMedia', 'InkZoneProfile', 'Ink']);

/** The separations that some levels of a ColorantControl print: the innermost ColorantOrder replaces those around. */
export function orderOf(levels: readonly XmlElement[]): string[] {
  const order = levels.flatMap((el) => childElements(el, 'ColorantOrder')).at(-1);
  if (order === undefined) return [];
  return childElements(order, 'SeparationSpec').flatMap((spec) => attributeOf(spec, 'Name')?.trim() ?? []);
}

/** A selection of parts in words; '' for the whole. */
export const spelled = (keys: Readonly<Record<string, string | undefined>>): string =>
  Object.entries(keys)
    .map(([key, value]) => `${key}="${value}"`)
    .join(' ');
