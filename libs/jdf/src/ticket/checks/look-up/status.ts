import type { PartKeys } from '../../../elements/part.js';
import { type ResourceStatus, resourceStatuses } from '../../../enumerations.js';
import { partAttribute } from '../../../partition/index.js';
import { attributeOf, type XmlElement } from '../../../xml/index.js';
import { selectedLeaves } from './parts.js';

/** The lowest status among the parts that a selection means; undefined where none has one that the standard knows. */
export function lowestStatus(
  resource: XmlElement,
  selection: readonly PartKeys[],
): ResourceStatus | undefined {
  const found = selectedLeaves(resource, selection).map((leaf) => rank(partAttribute(leaf, 'Status')));
  const lowest = Math.min(...found.filter((one) => one >= 0));
  return resourceStatuses[lowest];
}

/** Whether a status is enough for a link: that of its MinStatus, where it states none Available. */
export function isEnough(status: ResourceStatus, link: XmlElement): boolean {
  const draft = attributeOf(link, 'DraftOK')?.trim() === 'true' ? 'Draft' : 'Available';
  return rank(status) >= rank(attributeOf(link, 'MinStatus') ?? draft);
}

function rank(status: string | undefined): number {
  return resourceStatuses.indexOf((status?.trim() ?? '') as ResourceStatus);
}
