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
  const ranks =
    selection.length === 0
      ? ranksBelow(partTreeOf(resource).root, -1)
      : selectedLeaves(resource, selection).map((leaf) => rank(partAttribute(leaf, 'Status')));
  let lowest: number = resourceStatuses.length;
  for (const one of ranks) if (one >= 0 && one < lowest) lowest = one;
  return resourceStatuses[lowest];
}

/** The ranks of the leaves below a part, each its own or that of the nearest level that states one. */
function* ranksBelow({ element, parts }: PartNode, around: number): Generator<number> {
  const stated = attributeOf(element, 'Status');
  const here = stated === undefined ? around : rank(stated);
  if (parts.length === 0) yield here;
  // Never deeper than there are keys.
  for (const part of parts) yield* ranksBelow(part, here);
}

/** Whether a status is enough for a link: that of its MinStatus, where it states none Available. */
export function isEnough(status: ResourceStatus, link: XmlElement): boolean {
  const draft = attributeOf(link, 'DraftOK')?.trim() === 'true' ? 'Draft' : 'Available';
  return rank(status) >= rank(attributeOf(link, 'MinStatus') ?? draft);
}

function rank(status: string | undefined): number {
  return resourceStatuses.indexOf((status?.trim() ?? '') as ResourceStatus);
}
