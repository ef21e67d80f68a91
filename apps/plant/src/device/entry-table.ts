import type { EntryStatus } from './state.js';

export const entryCommands = [
  'AbortQueueEntry',
  'HoldQueueEntry',
  'ResumeQueueEntry',
  'SuspendQueueEntry',
  'RemoveQueueEntry',
  'ResubmitQueueEntry',
  'SetQueueEntryPosition',
  'SetQueueEntryPriority',
] as const;
export type EntryCommand = (typeof entryCommands)[number];

/** The status after the command, `Removed`, or the ReturnCode of its refusal, which leaves the entry as it was. */
export type Outcome = EntryStatus | 'Removed' | number;

type Row = Readonly<Record<EntryStatus, Outcome>>;

/** ReturnCode where there is no such entry. */
export const NO_SUCH_ENTRY = 105;

const row = (
  ...[W, H, Rn, S, PR, C, A]: readonly [Outcome, Outcome, Outcome, Outcome, Outcome, Outcome, Outcome]
): Row => ({
  Waiting: W,
  Held: H,
  Running: Rn,
  Suspended: S,
  PendingReturn: PR,
  Completed: C,
  Aborted: A,
});

/**
 * What each command does in each status of a queue entry. Source: JDF 1.4 specification, table 5-92. Where it leaves a
 * choice for ResubmitQueueEntry, this device takes no late change of a started job and queues an ended one again.
 */
export const entryTable: Readonly<Record<EntryCommand, Row>> = {
  AbortQueueEntry: row('Aborted', 'Aborted', 'Aborted', 'Aborted', 114, 114, 113),
  HoldQueueEntry: row('Held', 113, 106, 106, 114, 114, 114),
  ResumeQueueEntry: row(113, 'Waiting', 113, 'Running', 114, 114, 114),
  SuspendQueueEntry: row(115, 115, 'Suspended', 113, 114, 114, 114),
  RemoveQueueEntry: row('Removed', 'Removed', 106, 106, 106, 'Removed', 'Removed'),
  ResubmitQueueEntry: row('Waiting', 'Held', 107, 107, 114, 'Waiting', 'Waiting'),
  SetQueueEntryPosition: row('Waiting', 'Held', 107, 107, 114, 114, 114),
  SetQueueEntryPriority: row('Waiting', 'Held', 107, 107, 114, 114, 114),
};
