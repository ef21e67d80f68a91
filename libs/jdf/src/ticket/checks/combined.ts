import { type Findings, integers } from '../../codec/index.js';
import { attributeOf } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/** Standard reference, section 9, check 9: what a link says of the processes of its node fits them. */
export const combined: TicketCheck = {
  number: 9,
  name: 'combined processes',
  run({ nodes }, findings) {
    for (const node of nodes) checkIndexes(node, findings);
  },
};

/** CombinedProcessIndex counts in Types. Without Types there is nothing that it could count. */
function checkIndexes({ types, links }: TicketNode, findings: Findings): void {
  if (types.length === 0) return;
  for (const { element } of links) {
    for (const index of integers.read(attributeOf(element, 'CombinedProcessIndex') ?? '') ?? []) {
      if (index >= 0 && index < types.length) continue;
      findings.error(
        'JDF_LINK',
        element,
        `CombinedProcessIndex ${index} of ${element.name} names no process.`,
        `Types has ${types.length}, counted from 0.`,
      );
    }
  }
}
