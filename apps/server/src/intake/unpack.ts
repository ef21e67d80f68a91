import { createHash } from 'node:crypto';
import type { Incoming } from '#libs/flow';
import { ticketIn } from '#libs/wire';

export type Unpacked = Pick<Incoming, 'ticket' | 'problems'>;

/** The ticket in what came in: the document itself, or the first ticket of a package. */
export async function unpack(bytes: Uint8Array, contentType: string | null): Promise<Unpacked> {
  const found = await ticketIn(bytes, contentType);
  if (!found.ok) return { ticket: null, problems: found.problems };
  const { bytes: ticket, within } = found.value;
  return { ticket: { bytes: ticket, part: within?.part.name ?? null }, problems: found.problems };
}

export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
