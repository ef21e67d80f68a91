import type { Problem } from '#libs/kernel';
import type { AddressGuard } from '../address-guard/address-guard.js';
import { urlRefused } from '../address-guard/file-address.js';
import { type ExchangeLimits, exchange } from './exchange.js';

/** How a message to a device ended. `refused`: the guard does not let the server reach that address at all. */
export type PostOutcome =
  | {
      readonly kind: 'answered';
      readonly status: number;
      readonly contentType: string;
      readonly body: Uint8Array;
    }
  | { readonly kind: 'silent'; readonly reason: string }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

export interface PostOptions extends ExchangeLimits {
  readonly guard: AddressGuard;
  /** For example Authorization. */
  readonly headers?: Readonly<Record<string, string>>;
}

/**
 * Sends one JMF document or package to a device and waits for its answer (JDF specification, "JMF messaging over HTTP":
 * every message is a POST, the response body holds the Response). Redirects are not followed: a device has one address.
 * A name that cannot be resolved counts as silence, because that passes; only what is forbidden is `refused`.
 */
export async function postXml(
  url: string,
  body: string | Uint8Array,
  contentType: string,
  options: PostOptions,
): Promise<PostOutcome> {
  const checked = await options.guard.check(url);
  if (!checked.ok) {
    const passing = checked.problems.every(({ code }) => code === 'URL_UNREADABLE');
    return passing
      ? { kind: 'silent', reason: 'its host name has no address' }
      : { kind: 'refused', problems: checked.problems };
  }
  if (checked.value.kind !== 'web') {
    return { kind: 'refused', problems: [urlRefused(url, 'messages are posted to http and https alone')] };
  }
  const bytes = typeof body === 'string' ? Buffer.from(body, 'utf8') : body;
  const headers = { ...options.headers, 'content-type': contentType };
  const answer = await exchange(checked.value, { method: 'POST', headers, body: bytes }, options);
  switch (answer.kind) {
    case 'answered':
      return {
        kind: 'answered',
        status: answer.status,
        contentType: answer.contentType,
        body: answer.body,
      };
    case 'tooLarge':
      return { kind: 'silent', reason: `its answer is larger than ${options.maxBytes} bytes` };
    case 'silent':
      return answer;
  }
}
