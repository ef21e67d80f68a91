import { done, type Result } from '#libs/kernel';
import { type Package, type PackagePart, refuseBroken } from './package.js';
import { kindOfPart } from './part-kind.js';

/** The part that `start` names (RFC 2387 section 3.2) goes first; without it, the order stays as sent. */
export function rootFirst(
  parts: readonly PackagePart[],
  start: string | undefined,
): Result<readonly PackagePart[]> {
  if (start === undefined) return done(parts);
  const wanted = start.replace(/^<|>$/g, '').toLowerCase();
  const root = parts.find(({ contentId }) => contentId?.toLowerCase() === wanted);
  if (root === undefined) return refuseBroken(`The package starts with <${wanted}>, but has no such part.`);
  return done([root, ...parts.filter((part) => part !== root)]);
}

/** First the message, if there is one; else the ticket. Anything else first, and nobody knows what the package is. */
export function checkOrder(pack: Package): Result<Package> {
  const first = pack.parts[0];
  if (first === undefined) return refuseBroken('The package has no part.');
  const kind = kindOfPart(first);
  if (kind === 'content') {
    return refuseBroken('The first part is neither a message nor a ticket (JMF or JDF).', first.name);
  }
  const late = kind === 'ticket' ? pack.parts.find((part) => kindOfPart(part) === 'message') : undefined;
  if (late !== undefined) return refuseBroken('A message (JMF) must be the first part.', late.name);
  return done(pack);
}
