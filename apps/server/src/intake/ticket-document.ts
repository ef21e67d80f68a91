import type { Store, StoredDocument, TicketFile } from '#libs/flow';
import { ticketIn } from '#libs/wire';

/** The ticket as it came: the document itself, or the part of the package that was the ticket. */
export async function ticketDocument(
  store: Pick<Store, 'document'>,
  { ticket }: TicketFile,
): Promise<StoredDocument | null> {
  const stored = await store.document(ticket.documentId);
  if (stored === null || ticket.documentPart === null) return stored;
  const found = await ticketIn(stored.bytes, stored.mediaType, ticket.documentPart);
  if (!found.ok) return stored;
  const { bytes, within } = found.value;
  return { ...stored, mediaType: within?.part.mediaType ?? stored.mediaType, bytes };
}
