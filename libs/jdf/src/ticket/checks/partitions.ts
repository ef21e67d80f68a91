import type { Findings } from '../../codec/index.js';
import { checkIdenticals, checkInline, checkPartTree } from '../../partition/index.js';
import type { XmlElement } from '../../xml/index.js';
import { isNode } from '../node.js';
import { ticketElements } from './scope.js';
import type { TicketCheck } from './ticket-check.js';

/** JDF PartIDKeys: the partition tree of each resource. */
export const partitions: TicketCheck = {
  number: 5,
  name: 'partitions',
  run({ nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) {
        checkPartTree(resource, findings);
        checkInside(resource, findings);
      }
    }
  },
};

function checkInside(resource: XmlElement, findings: Findings): void {
  for (const el of ticketElements(resource)) {
    for (const child of el.children) {
      if (child.kind !== 'element' || child.uri !== el.uri) continue;
      if (child.local !== el.local && !isNode(child)) checkInline(child, findings);
    }
  }
}

/** JDF Identical: parts that are identical to others. */
export const identicals: TicketCheck = {
  number: 7,
  name: 'identical parts',
  run({ nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) checkIdenticals(resource, findings);
    }
  },
};
