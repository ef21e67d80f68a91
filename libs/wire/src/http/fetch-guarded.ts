import { done, type Result, refuse } from '#libs/kernel';
import type { AddressGuard } from '../address-guard/address-guard.js';
import { readCheckedFile, urlRefused, urlUnreadable } from '../address-guard/file-address.js';
import { type ExchangeLimits, exchange } from './exchange.js';

export interface Fetched {
  readonly bytes: Uint8Array;
  /** As the other side names it; empty for files. */
  readonly contentType: string;
  /** The address that was read in the end, after redirects. */
  readonly url: string;
}

/** Hops that are followed; each is checked like the first (ASVS 5.0 V1.3.6). */
const MAX_REDIRECTS = 3;
const REDIRECTS: ReadonlySet<number> = new Set([301, 302, 303, 307, 308]);

/**
 * Reads what a ticket or message points at, if `guard` lets it. At most `maxBytes`; `timeoutMs` holds for each hop.
 * Refusals: URL_REFUSED (not allowed), URL_UNREADABLE (allowed, but absent, silent, too large or answering with an
 * error).
 */
export async function fetchGuarded(
  url: string,
  guard: AddressGuard,
  limits: ExchangeLimits,
): Promise<Result<Fetched>> {
  let next = url;
  for (let hop = 0; hop <= MAX_REDIRECTS; hop++) {
    const checked = await guard.check(next);
    if (!checked.ok) return checked;
    const address = checked.value;
    if (address.kind === 'file') {
      if (hop > 0) return refuse(urlRefused(next, 'a redirect must not lead to a file'));
      const bytes = await readCheckedFile(next, address.path, limits.maxBytes);
      return bytes.ok ? done({ bytes: bytes.value, contentType: '', url: next }) : bytes;
    }
    const answer = await exchange(address, { method: 'GET', headers: {}, body: null }, limits);
    if (answer.kind === 'silent') return refuse(urlUnreadable(next, answer.reason));
    if (answer.kind === 'tooLarge') {
      return refuse(urlUnreadable(next, `it is larger than ${limits.maxBytes} bytes`));
    }
    if (answer.status >= 200 && answer.status < 300) {
      return done({ bytes: answer.body, contentType: answer.contentType, url: next });
    }
    if (!REDIRECTS.has(answer.status) || answer.location === null) {
      return refuse(urlUnreadable(next, `the other side answered with HTTP ${answer.status}`));
    }
    const target = URL.canParse(answer.location, next) ? new URL(answer.location, next) : null;
    if (target === null) return refuse(urlUnreadable(next, 'it redirects to something that is no address'));
    if (address.url.protocol === 'https:' && target.protocol === 'http:') {
      return refuse(urlRefused(target.href, 'a redirect must not leave https'));
    }
    next = target.href;
  }
  return refuse(urlUnreadable(url, `it redirects more than ${MAX_REDIRECTS} times`));
}
