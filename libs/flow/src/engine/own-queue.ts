import type { MessageBody, Queue, QueueEntry as WireEntry } from '#libs/jdf';

import type { QueueEntry, TicketFile } from '../state/ticket.js';
import type { EnginePorts } from './ports.js';

/** A queue with its entries listed. */
export type WireQueue = Queue & { readonly entries: readonly WireEntry[] };
type Filter = MessageBody<'QueryQueueStatus'>;

/** A ticket as an entry of this server's own queue: one entry a ticket. */
export function ticketEntry(file: TicketFile, deviceId: string): WireEntry {
  const { ticket } = file;
  const done = ticket.status === 'Completed' || ticket.status === 'Aborted' ? ticket.status : null;
  const ended = Math.max(0, ...file.steps.map((step) => step.end ?? 0));
  const started = file.steps.flatMap((step) => (step.start === null ? [] : [step.start]));
  return {
    queueEntryId: ticket.id,
    status:
      done ?? (ticket.activation === 'Held' ? 'Held' : ticket.status === 'Waiting' ? 'Waiting' : 'Running'),
    jobId: ticket.jobId,
    deviceId,
    priority: ticket.priority,
    submissionTime: ticket.createdAt,
    ...(started.length > 0 ? { startTime: Math.min(...started) } : {}),
    ...(done !== null && ended > 0 ? { endTime: ended } : {}),
    parts: [],
    jobPhases: [],
  };
}

/** A step as an entry of its device's queue. */
export function stepEntry(entry: QueueEntry): WireEntry {
  return {
    queueEntryId: entry.id,
    status: entry.status,
    ...(entry.lastError === null ? {} : { statusDetails: entry.lastError }),
    jobPartId: entry.stepId,
    deviceId: entry.deviceId,
    priority: entry.priority,
    submissionTime: entry.submitted,
    ...(entry.start === null ? {} : { startTime: entry.start }),
    ...(entry.end === null ? {} : { endTime: entry.end }),
    parts: [],
    jobPhases: [],
  };
}

const MOST_ENTRIES = 1000;

/** The queue a message asks for: this server's own, or that of the device it names; null for an unknown DeviceID. */
export async function readQueue(
  ports: EnginePorts,
  wanted: string | undefined,
  filter: Filter = {},
): Promise<WireQueue | null> {
  const deviceId = wanted ?? ports.deviceId;
  let entries: WireEntry[];
  if (deviceId === ports.deviceId) {
    const page = await ports.store.tickets({ limit: MOST_ENTRIES });
    entries = page.items
      .filter((file) => file.ticket.status !== 'Rejected')
      .map((file) => ticketEntry(file, deviceId));
  } else {
    if ((await ports.store.device(deviceId)) === null) return null;
    entries = (await ports.store.entries(deviceId, MOST_ENTRIES)).map(stepEntry);
  }
  const chosen = entries.filter((entry) => passes(entry, filter));
  const shown = filter.queueEntryDetails === 'None' ? [] : chosen.slice(0, filter.maxEntries ?? MOST_ENTRIES);
  const status = entries.some((entry) => entry.status === 'Running') ? 'Running' : 'Waiting';
  return { deviceId, status, queueSize: chosen.length, devices: [], entries: shown };
}

/** All conditions of a filter must hold. */
function passes(entry: WireEntry, filter: Filter): boolean {
  const named = (filter.entries ?? []).map((def) => def.queueEntryId);
  return (
    (named.length === 0 || named.includes(entry.queueEntryId)) &&
    (filter.statusList === undefined || filter.statusList.includes(entry.status)) &&
    (filter.jobId === undefined || filter.jobId === entry.jobId) &&
    (filter.jobPartId === undefined || filter.jobPartId === entry.jobPartId) &&
    (filter.minPriority === undefined || (entry.priority ?? 1) >= filter.minPriority) &&
    (filter.maxPriority === undefined || (entry.priority ?? 1) <= filter.maxPriority) &&
    (filter.olderThan === undefined || (entry.submissionTime ?? 0) < filter.olderThan) &&
    (filter.newerThan === undefined || (entry.submissionTime ?? 0) > filter.newerThan)
  );
}
