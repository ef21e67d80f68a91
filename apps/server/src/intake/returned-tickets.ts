import type { Store, TicketFile } from '#libs/flow';
import { ticketIn } from '#libs/wire';

/** More returns than any ticket has: a device repeats itself, but is booked once an entry. */
const MOST = 10_000;

/** The tickets that devices gave back for the steps of a ticket, by the id of the queue entry, out of their packages. */
export async function returnedTickets(
  store: Pick<Store, 'document' | 'eventsAfter'>,
  { ticket, entries }: TicketFile,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>();
  if (!entries.some(({ returned }) => returned)) return found;
  const filter = { ticketId: ticket.id, type: 'step.returned' };
  for (const { stepId, deviceId, data } of await store.eventsAfter(0, MOST, filter)) {
    const entry = entries.find(
      (row) => row.stepId === stepId && row.deviceId === deviceId && row.deviceEntryId === data.deviceEntryId,
    );
    const stored = entry && (await store.document(String(data.documentId)));
    if (!stored) continue;
    const inside = await ticketIn(stored.bytes, stored.mediaType);
    if (inside.ok) found.set(entry.id, inside.value.bytes);
  }
  return found;
}
