import { createHash } from 'node:crypto';
import type { Incoming } from '#libs/flow';
import { error } from '#libs/kernel';
import { kindOfPart, type Package, packageKind, readPackage } from '#libs/wire';

export type Unpacked = Pick<Incoming, 'ticket' | 'problems'>;

/** The ticket in what came in: the document itself, or the first ticket of a package. */
export async function unpack(bytes: Uint8Array, contentType: string | null): Promise<Unpacked> {
  if (packageKind(bytes, contentType) === null) return { ticket: { bytes, part: null }, problems: [] };
  const pack = await readPackage(bytes, contentType);
  return pack.ok ? ticketOf(pack.value) : { ticket: null, problems: pack.problems };
}

export function ticketOf(pack: Package): Unpacked {
  const part = pack.parts.find((candidate) => kindOfPart(candidate) === 'ticket');
  if (part !== undefined) {
    return { ticket: { bytes: part.bytes, part: part.contentId ?? part.name }, problems: [] };
  }
  const problem = error('KIND_UNKNOWN', 'The package has no ticket in it.', {
    hint: 'Add the JDF as a part of type application/vnd.cip4-jdf+xml.',
  });
  return { ticket: null, problems: [problem] };
}

export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
