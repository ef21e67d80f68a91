import { hashOf, isLocal, newSecret, type RequestFacts, sameOrigin, secretOf, tokenFault } from './caller.js';

const facts = (change: Partial<RequestFacts> = {}): RequestFacts => ({
  remoteAddress: '127.0.0.1',
  method: 'GET',
  host: '127.0.0.1:7420',
  origin: undefined,
  authorization: undefined,
  cookie: undefined,
  forwardedFor: undefined,
  ...change,
});

describe('who needs no token', () => {
  it.each([
    ['a tool on this machine', {}],
    ['by IPv6', { remoteAddress: '::1', host: '[::1]:7420' }],
    ['by mapped IPv4', { remoteAddress: '::ffff:127.0.0.1', host: 'localhost:7420' }],
    ['the console in a browser on this machine', { origin: 'http://127.0.0.1:7420' }],
  ])('%s', (_who, change) => {
    expect(isLocal(facts(change))).toBe(true);
  });

  it.each([
    ['another machine', { remoteAddress: '192.0.2.7' }],
    ['somebody behind a proxy on this machine', { forwardedFor: '198.51.100.4' }],
    // A site can point its own name at 127.0.0.1 and have the browser here ask for it (DNS rebinding).
    ['a name that resolves to this machine', { host: 'evil.example:7420' }],
    ['a page of another site in a browser on this machine', { origin: 'https://evil.example' }],
    ['a page on another port', { origin: 'http://127.0.0.1:9999' }],
    ['a sandboxed page', { origin: 'null' }],
    ['a request without Host', { host: undefined }],
  ])('not %s', (_who, change) => {
    expect(isLocal(facts(change))).toBe(false);
  });
});

describe('tokens', () => {
  it('are read from the header first, then from the session cookie', () => {
    expect(secretOf(facts({ authorization: 'Bearer sl_a', cookie: 'sidelay_session=sl_b' }))).toEqual({
      secret: 'sl_a',
      byCookie: false,
    });
    expect(secretOf(facts({ cookie: 'theme=dark; sidelay_session=sl_b' }))).toEqual({
      secret: 'sl_b',
      byCookie: true,
    });
    expect(secretOf(facts({ authorization: 'Basic abc' }))).toBeNull();
  });

  it('are long, never alike, and kept as a hash that does not show them', () => {
    const [a, b] = [newSecret(), newSecret()];
    expect(a).not.toBe(b);
    expect(a.length).toBeGreaterThan(40);
    expect(hashOf(a)).toMatch(/^[0-9a-f]{64}$/);
  });

  it('stop counting when revoked or past their day', () => {
    const token = {
      id: '1',
      kind: 'person' as const,
      name: 'Ada',
      createdAt: 0,
      expiresAt: 100,
      revokedAt: null,
      lastUsedAt: null,
    };
    expect([
      tokenFault(token, 99),
      tokenFault(token, 100),
      tokenFault({ ...token, revokedAt: 5 }, 10),
      tokenFault(null, 0),
    ]).toEqual([null, 'the token has expired', 'the token was revoked', 'the token is not known']);
  });
});

describe('pages of other sites', () => {
  it('are told apart by Origin and Host, port included', () => {
    expect(sameOrigin(facts({ origin: 'http://127.0.0.1:7420' }))).toBe(true);
    expect(sameOrigin(facts({ origin: 'http://127.0.0.1' }))).toBe(false);
  });
});
