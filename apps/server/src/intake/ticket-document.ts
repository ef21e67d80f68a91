import type { Store, StoredDocument, TicketFile } from '#libs/flow';
import { readPackage } from '#libs/wire';
import { ticketOf } from './unpack.js';

/** The ticket as it came: the document itself, or the part of the package that was the ticket. */
export async function ticketDocument(
  store: Pick<Store, 'document'>,
  { ticket }: TicketFile,
): Promise<StoredDocument | null> {
  const stored = await store.document(ticket.documentId);
  if (stored === null || ticket.documentPart === null) return stored;
  const pack = await readPackage(stored.bytes, stored.mediaType);
  const part = pack.ok ? ticketOf(pack.value).ticket : null;
  return part === null ? stored : { ...stored, mediaType: 'application/vnd.cip4-jdf+xml', bytes: part.bytes };
}
