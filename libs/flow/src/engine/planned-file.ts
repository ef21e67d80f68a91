import type { Plant } from '#libs/craft';
import { type IdSource, type Instant } from '#libs/kernel';
import { acceptTicket } from '../decide/accept.js';
import type { StoredDocument } from '../ports.js';
import type { TicketFile } from '../state/ticket.js';
import type { Reading } from './reading.js';

/** What a ticket would be if it were taken in now, without a store: for planning at a desk. Null when it has no plan. */
export function plannedFile(
  reading: Reading,
  document: StoredDocument,
  plant: Plant,
  context: { now: Instant; ids: IdSource },
): TicketFile | null {
  if (reading.order === null || reading.plan === null) return null;
  const arrival = {
    ticketId: context.ids.next(),
    documentId: document.id,
    documentPart: null,
    kind: reading.kind,
    intake: 'commandLine',
    jobId: reading.jobId,
    name: reading.name,
    problems: reading.problems,
    returnUrl: null,
    priority: null,
    hold: false,
  };
  const change = acceptTicket(arrival, reading.order, reading.plan, plant, new Map(), new Map(), context);
  return change.tickets?.[0] ?? null;
}
