import type { Findings } from '../../codec/index.js';
import { type NodeStatus, nodeStatuses } from '../../enumerations.js';
import { partAttribute, partitionLeaves, partsNamed } from '../../partition/index.js';
import { attributeOf, childElements } from '../../xml/index.js';
import { rollUpStatus, statusOfParts } from '../status-roll-up.js';
import { isEnough, lowestStatus } from './look-up/status.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

const AT_WORK: ReadonlySet<string> = new Set(['Setup', 'InProgress', 'Cleanup']);

/**
 * JDF/@Status agrees with that of the nodes inside, with NodeStatus of the node's own parts (NodeInfo), with the Status of
 * its resources and with its log (ProcessRun EndStatus).
 */
export const nodeStatus: TicketCheck = {
  number: 12,
  name: 'status of nodes',
  run({ nodes }, findings) {
    for (const node of nodes) {
      const status = statusOf(node);
      checkInner(node, status, findings);
      checkParts(node, status, findings);
      if (status === 'Completed') checkCompleted(node, findings);
      if (AT_WORK.has(status)) checkInputs(node, status, findings);
    }
  },
};

const statusOf = ({ element }: TicketNode): string => attributeOf(element, 'Status')?.trim() ?? '';

/** The statuses that the NodeInfo of a node has of its parts. */
function partStatuses({ links }: TicketNode): NodeStatus[] {
  const leaves = links.flatMap(({ name, resource }) =>
    name === 'NodeInfo' && resource !== undefined ? partitionLeaves(resource) : [],
  );
  return leaves.flatMap((leaf) => {
    const stated = partAttribute(leaf, 'NodeStatus')?.trim();
    return nodeStatuses.find((status) => status === stated) ?? [];
  });
}

/** Not begun, at work, ended well, ended badly: within one of these a node may differ from what is inside. */
const STAGES: readonly (readonly NodeStatus[])[] = [
  ['Waiting', 'Ready', 'TestRunInProgress', 'FailedTestRun'],
  ['Setup', 'InProgress', 'Cleanup', 'Stopped', 'Suspended'],
  ['Completed'],
  ['Aborted'],
];

const stageOf = (status: string): number => STAGES.findIndex((stage) => stage.some((one) => one === status));

function checkInner(node: TicketNode, status: string, findings: Findings): void {
  const inner = node.children.map(statusOf);
  if (inner.length === 0 || stageOf(status) < 0) return;
  const wanted = statusOfInner(inner);
  const exact = wanted === 'InProgress' && inner.includes('InProgress');
  if (wanted === undefined || wanted === status || (!exact && stageOf(wanted) === stageOf(status))) return;
  const all = new Set(inner);
  const what = all.size === 1 ? 'all nodes inside are' : exact ? 'a node inside is' : 'the nodes inside are';
  const message = `Status="${status}" does not fit: ${what} ${exact ? wanted : [...all].join(', ')}.`;
  findings.warning('JDF_STATUS', node.element, message, `Set Status="${wanted}".`);
}

/** Undefined where it cannot be told: by nodes that are elsewhere, and by those that only say that their parts differ. */
function statusOfInner(inner: readonly string[]): NodeStatus | undefined {
  if (inner.includes('InProgress')) return 'InProgress';
  const known = nodeStatuses.filter((status) => inner.includes(status) && stageOf(status) >= 0);
  return inner.every((status) => stageOf(status) >= 0) ? rollUpStatus(known) : undefined;
}

/** Each part has its status in NodeInfo; they differ only where the node says so (NodeInfo NodeStatus, JDF Status). */
function checkParts(node: TicketNode, status: string, findings: Findings): void {
  const parts = partStatuses(node);
  if (status === 'Part' && parts.length === 0) {
    const hint = 'Give each part of NodeInfo its NodeStatus, or the node one status.';
    findings.warning('JDF_STATUS', node.element, 'Status="Part", but no part has a NodeStatus.', hint);
  }
  const whole = statusOfParts(parts);
  if (stageOf(status) < 0 || whole === undefined || whole === status) return;
  const message = `Status="${status}" does not fit: its parts are ${[...new Set(parts)].join(', ')}.`;
  findings.warning('JDF_STATUS', node.element, message, `Set Status="${whole}", or correct NodeStatus.`);
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
  return childElements(element, 'AuditPool')
    .flatMap((pool) => childElements(pool, 'ProcessRun'))
    .some((run) => attributeOf(run, 'EndStatus')?.trim() === 'Completed');
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
