import type { Findings } from '../../codec/index.js';
import { processRules } from '../../standard/index.js';
import { firstChild } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/**
 * JDF Type, Types: a node that names its processes holds no nodes, Combined names them, and each
 * is a process of the standard or one of somebody else's namespace.
 */
export const nodeStructure: TicketCheck = {
  number: 10,
  name: 'node structure',
  run({ nodes }, findings) {
    for (const node of nodes) {
      checkProcesses(node, findings);
      checkInner(node, findings);
    }
  },
};

function checkProcesses({ element, type, types, processes, grayBox }: TicketNode, findings: Findings): void {
  if (type === 'Combined' && types.length === 0) {
    const hint = 'Name its processes in order in Types.';
    findings.error('JDF_STRUCTURE', element, 'A Combined node has no Types.', hint);
  }
  // A gray box may name other gray boxes, whose names nobody lists.
  if (grayBox) return;
  for (const name of processes) {
    if (processRules.has(name) || name.includes(':')) continue;
    const hint = 'A process that is not of the standard has a name with a prefix, such as my:Name.';
    findings.error('JDF_STRUCTURE', element, `"${name}" is no process of the standard.`, hint);
  }
}

function checkInner({ element, type, grayBox }: TicketNode, findings: Findings): void {
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
