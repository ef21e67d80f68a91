import type { EntryStatus } from '../state/ticket.js';
import type { Machine } from './machine.js';

/** Status of a queue entry (JDF 1.4 specification, table of queue entry commands, and its internal transitions). */
export const entryStatus: Machine<EntryStatus> = {
  name: 'queue entry status',
  initial: 'Waiting',
  moves: {
    Waiting: ['Held', 'Running', 'PendingReturn', 'Completed', 'Aborted'],
    Held: ['Waiting', 'Running', 'Aborted'],
    Running: ['Suspended', 'PendingReturn', 'Completed', 'Aborted'],
    Suspended: ['Running', 'PendingReturn', 'Aborted'],
    PendingReturn: ['Completed', 'Aborted'],
    Completed: [],
    Aborted: [],
  },
};
