import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import type { Package, PackagePart } from './package.js';
import { kindOfPart } from './part-kind.js';
import { packageKind, readPackage } from './read-package.js';

/** The ticket in what came in: the document itself, or a ticket of a package. */
export interface FoundTicket {
  readonly bytes: Uint8Array;
  /** Null for a plain document. */
  readonly within: { readonly pack: Package; readonly part: PackagePart } | null;
}

/** `contentType` as in `readPackage`; `wanted` as in `ticketOf`. Refusals: PACKAGE_BROKEN, PACKAGE_LIMIT, KIND_UNKNOWN (no ticket in the package). */
export async function ticketIn(
  bytes: Uint8Array,
  contentType: string | null,
  wanted: string | null = null,
): Promise<Result<FoundTicket>> {
  if (packageKind(bytes, contentType) === null) return done({ bytes, within: null });
  const pack = await readPackage(bytes, contentType);
  if (!pack.ok) return pack;
  const part = ticketOf(pack.value, wanted);
  return part.ok
    ? done({ bytes: part.value.bytes, within: { pack: pack.value, part: part.value } }, pack.problems)
    : part;
}

/** The ticket of a package that goes by the name or Content-ID `wanted`, else its first. Refusal: KIND_UNKNOWN. */
function ticketOf(pack: Package, wanted: string | null): Result<PackagePart> {
  const tickets = pack.parts.filter((candidate) => kindOfPart(candidate) === 'ticket');
  const part = tickets.find(({ name, contentId }) => name === wanted || contentId === wanted) ?? tickets[0];
  if (part !== undefined) return done(part);
  const hint = 'Add the JDF as a part of type application/vnd.cip4-jdf+xml.';
  return refuse(error('KIND_UNKNOWN', 'The package has no ticket in it.', { hint }));
}

/** A problem of a part, with its place in the package before it: `part!path`. */
export function withinPart(part: Pick<PackagePart, 'name'>, problem: Problem): Problem {
  return { ...problem, path: `${part.name}!${problem.path ?? ''}` };
}
