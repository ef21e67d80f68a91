import type { Findings } from '../../codec/index.js';
import { firstChild } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/** Standard reference, section 9, check 10: a node that names its processes holds no nodes, and Combined names them. */
export const nodeStructure: TicketCheck = {
  number: 10,
  name: 'node structure',
  run({ nodes }, findings) {
    for (const node of nodes) checkNode(node, findings);
  },
};

function checkNode({ element, type, types, grayBox }: TicketNode, findings: Findings): void {
  if (type === 'Combined' && types.length === 0) {
    const hint = 'Name its processes in order in Types.';
    findings.error('JDF_STRUCTURE', element, 'A Combined node has no Types.', hint);
  }
  const inner = firstChild(element, 'JDF');
  if (inner === undefined) return;
  if (type === 'Combined' || grayBox) {
    const hint = 'Leave out Types, or the nodes inside.';
    findings.error('JDF_STRUCTURE', inner, `A node of Type="${type}" with Types holds another node.`, hint);
  } else if (type !== '' && type !== 'Product' && type !== 'ProcessGroup') {
    const hint = 'Only Product and ProcessGroup nodes hold nodes.';
    findings.error('JDF_STRUCTURE', inner, `A node of Type="${type}" holds another node.`, hint);
  }
}
