import type { Findings } from '../../codec/index.js';
import { partAttribute, partitionLeaves, partsNamed } from '../../partition/index.js';
import { attributeOf, childElements } from '../../xml/index.js';
import { isEnough, lowestStatus } from './look-up/status.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

const AT_WORK: ReadonlySet<string> = new Set(['Setup', 'InProgress', 'Cleanup']);

/** Standard reference, section 9, check 12: the status of a node agrees with its nodes, its resources and its log. */
export const nodeStatus: TicketCheck = {
  number: 12,
  name: 'status of nodes',
  run({ nodes }, findings) {
    for (const node of nodes) {
      const status = statusOf(node);
      checkInner(node, status, findings);
      if (status === 'Part' && !hasPartStatus(node)) {
        const hint = 'Give each part of NodeInfo its NodeStatus, or the node one status.';
        findings.warning('JDF_STATUS', node.element, 'Status="Part", but no part has a NodeStatus.', hint);
      }
      if (status === 'Completed') checkCompleted(node, findings);
      if (AT_WORK.has(status)) checkInputs(node, status, findings);
    }
  },
};

const statusOf = ({ element }: TicketNode): string => attributeOf(element, 'Status')?.trim() ?? '';

function hasPartStatus({ links }: TicketNode): boolean {
  return links.some(
    ({ name, resource }) =>
      name === 'NodeInfo' &&
      resource !== undefined &&
      partitionLeaves(resource).some((leaf) => partAttribute(leaf, 'NodeStatus') !== undefined),
  );
}

function checkInner(node: TicketNode, status: string, findings: Findings): void {
  const inner = node.children.map(statusOf);
  if (inner.length === 0 || ['Part', 'Pool', 'Spawned'].includes(status)) return;
  const wanted = inner.every((one) => one === 'Completed')
    ? 'Completed'
    : inner.includes('InProgress')
      ? 'InProgress'
      : status;
  if (wanted === status) return;
  const what = wanted === 'Completed' ? 'all nodes inside are' : 'a node inside is';
  const message = `Status="${status}" does not fit: ${what} ${wanted}.`;
  findings.warning('JDF_STATUS', node.element, message, `Set Status="${wanted}".`);
}

function checkCompleted(node: TicketNode, findings: Findings): void {
  if (node.processes.length > 0 && !node.grayBox && !hasRun(node)) {
    const hint = 'Add a ProcessRun audit with EndStatus="Completed".';
    findings.warning('JDF_STATUS', node.element, 'The node is Completed, but no ProcessRun says so.', hint);
  }
  for (const { element, usage, resource } of node.links) {
    if (usage !== 'Output' || resource === undefined) continue;
    if (lowestStatus(resource, partsNamed(element)) !== 'Unavailable') continue;
    const message = `The node is Completed, but its ${resource.name} is Unavailable.`;
    findings.warning('JDF_STATUS', element, message, 'Set the Status of what was made.');
  }
}

function hasRun({ element }: TicketNode): boolean {
  return childElements(element, 'AuditPool').some((pool) => childElements(pool, 'ProcessRun').length > 0);
}

/** What is in use may be in use by this very node. */
function checkInputs(node: TicketNode, status: string, findings: Findings): void {
  for (const { element, usage, resource } of node.links) {
    if (usage !== 'Input' || resource === undefined || attributeOf(resource, 'PipeID') !== undefined)
      continue;
    const lowest = lowestStatus(resource, partsNamed(element));
    if (lowest === undefined || lowest === 'InUse' || isEnough(lowest, element)) continue;
    const message = `The node is ${status}, but its ${resource.name} is ${lowest}.`;
    findings.warning(
      'JDF_STATUS',
      element,
      message,
      'Set the Status of the resource, or MinStatus of the link.',
    );
  }
}
