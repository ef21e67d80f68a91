import type { QueueFilter } from '#libs/jdf';
import type { Instant } from '#libs/kernel';
import { type EntryCommand, entryTable, NO_SUCH_ENTRY } from './entry-table.js';
import type { Machine } from './machine.js';
import { matching, moveEntry, pendingEntries } from './queue.js';
import type { DeviceState, Entry } from './state.js';

/**
 * Does a command to every entry of a selection that allows it. Answers ReturnCode 0 when at least one did, else the reason
 * of the first, else 105: there is none.
 */
export function commandEntries(
  state: DeviceState,
  filter: QueueFilter,
  command: EntryCommand,
  act: (entry: Entry) => void,
): number {
  const chosen = matching(state, filter);
  let refusal: number | null = null;
  let done = false;
  for (const entry of chosen) {
    const outcome = entryTable[command][entry.status];
    if (typeof outcome === 'number') {
      refusal ??= outcome;
      continue;
    }
    act(entry);
    done = true;
  }
  return done ? 0 : (refusal ?? NO_SUCH_ENTRY);
}

/** What each simple command does to an entry whose status allows it. */
export function entryAction(
  command: 'HoldQueueEntry' | 'ResumeQueueEntry' | 'SuspendQueueEntry' | 'RemoveQueueEntry',
  state: DeviceState,
  machine: Machine,
  at: Instant,
): (entry: Entry) => void {
  switch (command) {
    case 'HoldQueueEntry':
      return (entry) => {
        entry.status = 'Held';
      };
    case 'ResumeQueueEntry':
      return (entry) => {
        if (entry.status === 'Suspended') machine.resume(entry, at);
        else {
          entry.status = 'Waiting';
          // It is queued anew, behind those of its priority (JDF specification, ResumeQueueEntry).
          entry.submitted = at;
          entry.order = state.orders++;
        }
      };
    case 'SuspendQueueEntry':
      return (entry) => machine.suspend(entry, at);
    case 'RemoveQueueEntry':
      return (entry) => {
        state.entries = state.entries.filter((other) => other !== entry);
      };
  }
}

/** Moves an entry to a position or next to a neighbour; false when the neighbour is not waiting here. */
export function positionEntry(
  state: DeviceState,
  entry: Entry,
  wanted: {
    readonly position: number | null;
    readonly previous: string | null;
    readonly next: string | null;
  },
): boolean {
  if (wanted.position !== null) {
    moveEntry(state, entry, wanted.position);
    return true;
  }
  const others = pendingEntries(state).filter((other) => other !== entry);
  const neighbour = others.findIndex(({ id }) => id === (wanted.previous ?? wanted.next));
  if (neighbour < 0) return false;
  moveEntry(state, entry, wanted.previous === null ? neighbour : neighbour + 1);
  return true;
}
