import http from 'node:http';
import https from 'node:https';
import type { LookupFunction } from 'node:net';
import { isIP } from 'node:net';
import type { CheckedAddress } from '../address-guard/address-guard.js';
import { agents } from './agents.js';

export interface ExchangeLimits {
  /** Largest body that is read back, in bytes. */
  readonly maxBytes: number;
  /** Real milliseconds until the whole exchange must be over. */
  readonly timeoutMs: number;
}

export interface Request {
  readonly method: 'GET' | 'POST';
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array | null;
}

/** What one exchange came to. `tooLarge` and `silent` differ: a device that talks too much is at least there. */
export type Exchange =
  | {
      readonly kind: 'answered';
      readonly status: number;
      readonly contentType: string;
      readonly location: string | null;
      readonly body: Uint8Array;
    }
  | { readonly kind: 'silent'; readonly reason: string }
  | { readonly kind: 'tooLarge' };

type WebAddress = Extract<CheckedAddress, { kind: 'web' }>;

/**
 * One HTTP request to an address that the guard has checked. The connection goes to the checked IP addresses, never to
 * what the name resolves to a moment later. A kept connection that the other side closed while it was idle is tried
 * once more on a fresh one. Never throws.
 */
export async function exchange(to: WebAddress, request: Request, limits: ExchangeLimits): Promise<Exchange> {
  const first = await once(to, request, limits);
  return first.kind === 'stale' ? settle(await once(to, request, limits)) : first;
}

type Attempt = Exchange | { readonly kind: 'stale' };

function settle(attempt: Attempt): Exchange {
  return attempt.kind === 'stale' ? { kind: 'silent', reason: 'the connection was reset' } : attempt;
}

function once(to: WebAddress, request: Request, limits: ExchangeLimits): Promise<Attempt> {
  return new Promise((resolve) => {
    const secure = to.url.protocol === 'https:';
    const sent = (secure ? https : http).request({
      agent: secure ? agents['https:'] : agents['http:'],
      host: to.host,
      port: to.port,
      path: `${to.url.pathname}${to.url.search}`,
      method: request.method,
      headers: {
        ...request.headers,
        host: to.url.host,
        'accept-encoding': 'identity',
        ...(request.body === null ? {} : { 'content-length': request.body.length }),
      },
      lookup: lookupOf(to.addresses),
    });
    // A deadline for the whole exchange; Node's own socket timeout starts again with every byte that trickles in.
    const deadline = AbortSignal.timeout(limits.timeoutMs);
    const late = (): void => finish({ kind: 'silent', reason: `no answer within ${limits.timeoutMs} ms` });
    deadline.addEventListener('abort', late, { once: true });
    let over = false;
    const finish = (attempt: Attempt): void => {
      if (over) return;
      over = true;
      deadline.removeEventListener('abort', late);
      if (attempt.kind !== 'answered') sent.destroy();
      resolve(attempt);
    };
    sent.on('error', (cause: NodeJS.ErrnoException) => {
      const stale = sent.reusedSocket && (cause.code === 'ECONNRESET' || cause.code === 'EPIPE');
      finish(stale ? { kind: 'stale' } : { kind: 'silent', reason: causeInWords(cause) });
    });
    sent.on('response', (response) => readBody(response, limits.maxBytes, finish));
    sent.end(request.body ?? undefined);
  });
}

function readBody(
  response: http.IncomingMessage,
  maxBytes: number,
  finish: (attempt: Attempt) => void,
): void {
  const chunks: Buffer[] = [];
  let size = 0;
  response.on('data', (chunk: Buffer) => {
    size += chunk.length;
    if (size > maxBytes) finish({ kind: 'tooLarge' });
    else chunks.push(chunk);
  });
  response.on('error', (cause) => finish({ kind: 'silent', reason: causeInWords(cause) }));
  response.on('aborted', () => finish({ kind: 'silent', reason: 'the answer broke off' }));
  response.on('end', () => {
    const encoding = response.headers['content-encoding'] ?? 'identity';
    if (encoding !== 'identity') {
      finish({ kind: 'silent', reason: `the answer is packed as "${encoding}", which was not asked for` });
      return;
    }
    finish({
      kind: 'answered',
      status: response.statusCode ?? 0,
      contentType: response.headers['content-type'] ?? '',
      location: response.headers.location ?? null,
      body: Buffer.concat(chunks),
    });
  });
}

/** Answers every look-up with the checked addresses, in their order. */
function lookupOf(addresses: readonly string[]): LookupFunction {
  const found = addresses.map((address) => ({ address, family: isIP(address) }));
  return (_host, options, callback) => {
    if (options.all) callback(null, found);
    else callback(null, found[0]!.address, found[0]!.family);
  };
}

function causeInWords(cause: NodeJS.ErrnoException): string {
  switch (cause.code) {
    case 'ECONNREFUSED':
      return 'nothing listens at its address';
    case 'EHOSTUNREACH':
    case 'ENETUNREACH':
      return 'there is no way to its address';
    case 'ECONNRESET':
    case 'EPIPE':
      return 'the connection was reset';
    case 'ETIMEDOUT':
      return 'no connection in time';
    default:
      return cause.code === undefined ? 'the exchange failed' : `the exchange failed (${cause.code})`;
  }
}
