import { createHash, randomBytes } from 'node:crypto';
import type { Token, TokenKind } from '#libs/flow';

/** Who a request comes from. */
export interface Caller {
  readonly kind: 'local' | TokenKind;
  /** What the log and the story call them. */
  readonly name: string;
}

export interface RequestFacts {
  readonly remoteAddress: string;
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  readonly authorization: string | undefined;
  readonly cookie: string | undefined;
  readonly forwardedFor: string | undefined;
}

const LOOPBACK = /^(127(\.\d{1,3}){3}|::1|::ffff:127(\.\d{1,3}){3})$/;
const LOOPBACK_NAMES = new Set(['localhost', '127.0.0.1', '[::1]', '::1']);
/** Name of the cookie that holds a signed-in session. */
export const SESSION_COOKIE = 'sidelay_session';

/** Tokens are 256 random bits, shown once; only their hash is kept. */
export function newSecret(): string {
  return `sl_${randomBytes(32).toString('base64url')}`;
}

/** SHA-256 of a secret, in hexadecimal; one of 256 random bits needs no salt. */
export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

/**
 * A request from this machine itself needs no token. Three things must hold, for a page of any website can make the
 * browser on this machine call 127.0.0.1: the peer is loopback, no proxy stands between, and the browser says that it
 * asked for this server by a loopback name (Host) from a page of this server (Origin).
 */
export function isLocal(facts: RequestFacts): boolean {
  if (!LOOPBACK.test(facts.remoteAddress) || facts.forwardedFor !== undefined) return false;
  const name = hostName(facts.host);
  if (name === null || !LOOPBACK_NAMES.has(name)) return false;
  return facts.origin === undefined || sameOrigin(facts);
}

/** The page that sends a request lies on the host the request is for. */
export function sameOrigin(facts: RequestFacts): boolean {
  return (
    facts.origin !== undefined && URL.canParse(facts.origin) && new URL(facts.origin).host === facts.host
  );
}

function hostName(host: string | undefined): string | null {
  if (host === undefined || !URL.canParse(`http://${host}`)) return null;
  return new URL(`http://${host}`).hostname;
}

/** The secret that a request carries: in the Authorization header, or in the session cookie of the console. */
export function secretOf(facts: RequestFacts): { secret: string; byCookie: boolean } | null {
  const bearer = /^Bearer\s+(\S+)$/i.exec(facts.authorization ?? '');
  if (bearer !== null) return { secret: bearer[1]!, byCookie: false };
  const cookie = (facts.cookie ?? '').split(';').map((part) => part.trim().split('='));
  const session = cookie.find(([name]) => name === SESSION_COOKIE)?.[1];
  return session === undefined ? null : { secret: session, byCookie: true };
}

/** Why a token does not count any more, or null when it does. */
export function tokenFault(token: Token | null, now: number): string | null {
  if (token === null) return 'the token is not known';
  if (token.revokedAt !== null) return 'the token was revoked';
  if (token.expiresAt !== null && token.expiresAt <= now) return 'the token has expired';
  return null;
}
