import type { NodeStatus, TicketStatus } from '../state/ticket.js';
import type { Machine } from './machine.js';

/**
 * Status of a node. The standard's text gives meanings, not a matrix; the moves are derived from them. A device may start
 * with any productive status, for crews skip set-up; Completed and Aborted are final.
 */
export const nodeStatus: Machine<NodeStatus> = {
  name: 'node status',
  initial: 'Waiting',
  moves: {
    Waiting: ['Ready', 'Setup', 'InProgress', 'Stopped', 'Completed', 'Aborted'],
    Ready: ['Setup', 'InProgress', 'Stopped', 'Waiting', 'Completed', 'Aborted'],
    Setup: ['InProgress', 'Cleanup', 'Stopped', 'Suspended', 'Waiting', 'Completed', 'Aborted'],
    InProgress: ['Setup', 'Cleanup', 'Stopped', 'Suspended', 'Waiting', 'Completed', 'Aborted'],
    Cleanup: ['Setup', 'InProgress', 'Stopped', 'Completed', 'Aborted'],
    Stopped: ['Setup', 'InProgress', 'Cleanup', 'Suspended', 'Waiting', 'Completed', 'Aborted'],
    Suspended: ['Setup', 'InProgress', 'Waiting', 'Aborted'],
    Completed: [],
    Aborted: [],
  },
};

/** What a ticket can be: the statuses of its node that occur here, and Rejected. */
export const ticketStatuses: readonly TicketStatus[] = [
  ...(Object.keys(nodeStatus.moves) as NodeStatus[]),
  'Rejected',
];
