import { createHash } from 'node:crypto';
import type { Incoming, PartsBeside } from '#libs/flow';
import { type Package, ticketIn } from '#libs/wire';

export type Unpacked = Pick<Incoming, 'ticket' | 'problems'>;

/** The ticket in what came in: the document itself, or the first ticket of a package. */
export async function unpack(bytes: Uint8Array, contentType: string | null): Promise<Unpacked> {
  const found = await ticketIn(bytes, contentType);
  if (!found.ok) return { ticket: null, problems: found.problems };
  const { bytes: ticket, within } = found.value;
  const part = within?.part.name ?? null;
  const beside = within === null ? null : besideOf(within.pack);
  return { ticket: { bytes: ticket, part, beside }, problems: found.problems };
}

/** The parts by what they are called, for whoever checks addresses. */
export function besideOf({ container, parts }: Package): PartsBeside {
  return { container, parts: parts.map(({ name, contentId }) => ({ name, contentId })) };
}

/** SHA-256 of bytes, in hexadecimal: what tells two documents apart. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
