import { done, type Result } from '#libs/kernel';
import { type Package, refuseBroken } from './package.js';
import { kindOfPart } from './part-kind.js';

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
