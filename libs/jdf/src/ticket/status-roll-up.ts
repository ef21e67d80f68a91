import type { NodeStatus } from '../enumerations.js';

/** Statuses of work that is still to come or going on, from what says least of the whole to what says most. */
const OPEN: readonly NodeStatus[] = [
  // Work that is elsewhere says nothing here but that it is not done.
  'Spawned',
  'Ready',
  'Waiting',
  'TestRunInProgress',
  'FailedTestRun',
  'Suspended',
  'Stopped',
  'Cleanup',
  'Setup',
  'InProgress',
];

const ENDED: readonly NodeStatus[] = ['Completed', 'Aborted'];

/**
 * The status of a whole from those of its parts, such as the nodes inside a node: what they all have; else Aborted once
 * all have ended and one was aborted; InProgress as soon as one is, or some have ended and others not; else what most is
 * being done (set-up before a stop, a stop before waiting). Neither order nor grouping matters. Undefined of nothing.
 * The standard's text has meanings and no table: this is derived from them (from memory where it says nothing).
 */
export function rollUpStatus<S extends NodeStatus>(statuses: Iterable<S>): S | 'InProgress' | undefined {
  const found = new Set(statuses);
  const [first] = found;
  if (found.size <= 1) return first;
  const lists = [ENDED, OPEN];
  const list = lists.find((known) => [...found].every((status) => known.includes(status)));
  if (list === undefined) return 'InProgress';
  return list.findLast((status) => found.has(status as S)) as S;
}

/**
 * The status of a node from those of its partitions (NodeInfo leaves): what they all have, else Part, which says that
 * each has its own. Undefined of nothing.
 */
export function statusOfParts(statuses: Iterable<NodeStatus>): NodeStatus | undefined {
  const [first, ...others] = new Set(statuses);
  return others.length > 0 ? 'Part' : first;
}
