import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../../../elements/part.js';
import { type ResourceStatus, resourceStatuses } from '../../../enumerations.js';
import { type PartNode, partAttribute, partTreeOf } from '../../../partition/index.js';
import { attributeOf, type XmlElement } from '../../../xml/index.js';
import { selectedLeaves } from './parts.js';

/** The lowest status among the parts that a selection means; undefined where none has one that the standard knows. */
export function lowestStatus(
  resource: XmlElement,
  selection: readonly PartKeys[],
): ResourceStatus | undefined {
  if (selection.length === 0) return lowestOfAll(resource);
  let lowest: number = NONE;
  for (const leaf of selectedLeaves(resource, selection)) {
    const one = rank(partAttribute(leaf, 'Status'));
    if (one >= 0 && one < lowest) lowest = one;
  }
  return resourceStatuses[lowest];
}

const lowestOfAll = oncePer(
  (resource: XmlElement): ResourceStatus | undefined =>
    resourceStatuses[lowestBelow(partTreeOf(resource).root, -1)],
);

/** The rank of no status at all: above every other. */
const NONE: number = resourceStatuses.length;

/** The lowest rank of the leaves below a part, each its own or that of the nearest level that states one. */
function lowestBelow({ element, parts }: PartNode, around: number): number {
  const stated = attributeOf(element, 'Status');
  const here = stated === undefined ? around : rank(stated);
  if (parts.length === 0) return here < 0 ? NONE : here;
  let lowest: number = NONE;
  // Never deeper than there are keys.
  for (const part of parts) lowest = Math.min(lowest, lowestBelow(part, here));
  return lowest;
}

/** Whether a status is enough for a link: that of its MinStatus, where it states none Available. */
export function isEnough(status: ResourceStatus, link: XmlElement): boolean {
  const draft = attributeOf(link, 'DraftOK')?.trim() === 'true' ? 'Draft' : 'Available';
  return rank(status) >= rank(attributeOf(link, 'MinStatus') ?? draft);
}

function rank(status: string | undefined): number {
  return resourceStatuses.indexOf((status?.trim() ?? '') as ResourceStatus);
}
