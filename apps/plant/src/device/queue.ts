import type { Queue, QueueEntry, QueueFilter, QueueStatus } from '#libs/jdf';
import type { DeviceState, Entry } from './state.js';

/** Entries that one device takes before its queue is full. Ours. */
export const MOST_ENTRIES = 200;

const LIVE = new Set(['Waiting', 'Held', 'Running', 'Suspended', 'PendingReturn']);

export function isLive(entry: Entry): boolean {
  return LIVE.has(entry.status);
}

export function runningEntry(state: DeviceState): Entry | null {
  return state.entries.find(({ status }) => status === 'Running') ?? null;
}

/** Waiting and held entries in the order in which they will be made. */
export function pendingEntries(state: DeviceState): Entry[] {
  return state.entries
    .filter(({ status }) => status === 'Waiting' || status === 'Held')
    .sort((a, b) => b.priority - a.priority || a.order - b.order);
}

export function nextEntry(state: DeviceState): Entry | null {
  return pendingEntries(state).find(({ status }) => status === 'Waiting') ?? null;
}

/** Status of the queue from its two switches and its load. Source: JDF 1.4 specification, table 5-111. */
export function queueStatus(state: DeviceState): QueueStatus {
  if (state.closed) return state.held ? 'Blocked' : 'Closed';
  if (state.held) return 'Held';
  if (runningEntry(state) === null) return 'Waiting';
  return state.entries.filter(isLive).length >= MOST_ENTRIES ? 'Full' : 'Running';
}

export function queueView(state: DeviceState, deviceId: string, filter: QueueFilter = {}): Queue {
  const chosen = matching(state, filter);
  const shown =
    filter.queueEntryDetails === 'None' ? [] : chosen.slice(0, filter.maxEntries ?? chosen.length);
  return {
    deviceId,
    status: queueStatus(state),
    queueSize: state.entries.length,
    maxQueueSize: MOST_ENTRIES,
    entries: shown.map((entry) => entryView(entry, deviceId)),
  };
}

export function entryView(entry: Entry, deviceId: string): QueueEntry {
  return {
    queueEntryId: entry.id,
    status: entry.status,
    jobId: entry.work.jobId,
    jobPartId: entry.work.jobPartId,
    deviceId,
    priority: entry.priority,
    submissionTime: entry.submitted,
    startTime: entry.start ?? undefined,
    endTime: entry.end ?? undefined,
  };
}

/** The entries for which all conditions of a filter hold: what is being made first, then in queue order, then the ended. */
export function matching(state: DeviceState, filter: QueueFilter): Entry[] {
  const pending = pendingEntries(state);
  const started = state.entries.filter(({ status }) => status === 'Running' || status === 'Suspended');
  const ended = state.entries.filter((entry) => !pending.includes(entry) && !started.includes(entry));
  const ordered = [...started, ...pending, ...ended];
  const from = filter.firstEntry === undefined ? 0 : ordered.findIndex(({ id }) => id === filter.firstEntry);
  const last = filter.lastEntry === undefined ? -1 : ordered.findIndex(({ id }) => id === filter.lastEntry);
  const range = ordered.slice(Math.max(0, from), last < 0 ? undefined : last + 1);
  return range.filter((entry) => passes(entry, filter));
}

function passes(entry: Entry, filter: QueueFilter): boolean {
  const named = (filter.entries ?? []).map(({ queueEntryId }) => queueEntryId);
  return (
    (named.length === 0 || named.includes(entry.id)) &&
    (filter.statusList === undefined || filter.statusList.includes(entry.status)) &&
    (filter.jobId === undefined || filter.jobId === entry.work.jobId) &&
    (filter.jobPartId === undefined || filter.jobPartId === entry.work.jobPartId) &&
    entry.priority >= (filter.minPriority ?? 0) &&
    entry.priority <= (filter.maxPriority ?? 100) &&
    (filter.olderThan === undefined || entry.submitted < filter.olderThan) &&
    (filter.newerThan === undefined || entry.submitted > filter.newerThan)
  );
}

/** Puts a pending entry at a position, 0 first; it takes over the priority of the entry it displaces. */
export function moveEntry(state: DeviceState, entry: Entry, position: number): void {
  const others = pendingEntries(state).filter((other) => other !== entry);
  const at = Math.min(Math.max(0, position), others.length);
  entry.priority = (others[at] ?? others.at(-1) ?? entry).priority;
  const ordered = [...others.slice(0, at), entry, ...others.slice(at)];
  for (const one of ordered) one.order = state.orders++;
}
