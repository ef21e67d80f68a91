import type { FastifyRequest } from 'fastify';
import { HttpProblem } from '../http/problem.js';
import type { Runtime } from '../runtime.js';
import {
  type Caller,
  hashOf,
  isLocal,
  type RequestFacts,
  sameOrigin,
  secretOf,
  tokenFault,
} from './caller.js';

declare module 'fastify' {
  interface FastifyRequest {
    caller?: Caller;
  }
}

/** Open to everyone: whether the server lives, the console's own files, which hold no data, and addresses that are secrets. */
const OPEN =
  /^\/(health\/(live|ready)|jmf\/tickets\/[^/]+\/[^/]+|(assets\/.*)?|index\.html|favicon\.svg|manifest\.webmanifest)$/;
/** A device speaks JMF, and registers itself; nothing else. */
const FOR_DEVICES = /^\/(jmf|api\/v1\/devices|health\/ready)$/;

/** Decides who a request comes from, before anything of it is read. */
export function accessHook(runtime: Runtime): (request: FastifyRequest) => Promise<void> {
  return async (request) => {
    const path = request.url.split('?')[0]!;
    const facts = factsOf(request, runtime.settings.TRUSTED_PROXY);
    if (isLocal(facts)) {
      request.caller = { kind: 'local', name: 'someone at the server' };
      return;
    }
    const given = secretOf(facts);
    if (given === null) {
      if (OPEN.test(path) || path === '/api/v1/session') return;
      throw new HttpProblem('UNAUTHENTICATED', 'This address answers only with a token.', [], 401, {
        'www-authenticate': 'Bearer realm="sidelay"',
      });
    }
    const token = await runtime.store.tokens.byHash(hashOf(given.secret));
    const fault = tokenFault(token, runtime.clock.now());
    if (token === null || fault !== null) {
      if (OPEN.test(path) || path === '/api/v1/session') return;
      throw new HttpProblem('UNAUTHENTICATED', `The token does not count: ${fault}.`);
    }
    // A browser sends the cookie along with whatever page asked; only our own pages may change anything.
    if (given.byCookie && request.method !== 'GET' && request.method !== 'HEAD' && !sameOrigin(facts)) {
      throw new HttpProblem('FORBIDDEN', 'The request comes from a page of another site.');
    }
    if (token.kind === 'device' && !FOR_DEVICES.test(path)) {
      throw new HttpProblem('FORBIDDEN', 'A device token reaches /jmf and its own registration only.');
    }
    request.caller = { kind: token.kind, name: token.name };
    // When a token was last used is worth nobody's wait and no failed request.
    runtime.store.tokens
      .touch(token.id, runtime.clock.now())
      .catch((cause) =>
        runtime.ports.log('warn', 'the use of a token could not be noted', { cause: String(cause) }),
      );
  };
}

function factsOf(request: FastifyRequest, trustedProxy: string | undefined): RequestFacts {
  const { headers } = request;
  const peer = request.socket.remoteAddress ?? '';
  const forwarded = headers['x-forwarded-for'];
  const chain = (Array.isArray(forwarded) ? forwarded.join(',') : (forwarded ?? ''))
    .split(',')
    .map((part) => part.trim());
  const viaProxy = trustedProxy !== undefined && peer === trustedProxy;
  return {
    remoteAddress: viaProxy ? (chain.at(-1) ?? peer) : peer,
    method: request.method,
    host: headers.host,
    origin: headers.origin,
    authorization: headers.authorization,
    cookie: headers.cookie,
    forwardedFor: chain[0] === '' ? undefined : chain.join(','),
  };
}
