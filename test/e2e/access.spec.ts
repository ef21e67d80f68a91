import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { Hub } from '../kit/journey.js';
import { until } from '../kit/server-process.js';

/** As a proxy in front would say it: then the request is not of this machine, whatever address the proxy has. */
const FROM_ELSEWHERE = { 'x-forwarded-for': '192.0.2.7' };

describe('who may reach a server', () => {
  let hub: Hub;

  beforeAll(async () => {
    hub = await Hub.open();
  }, 120_000);
  afterAll(() => hub?.close());

  const ask = (
    path: string,
    headers: Record<string, string> = {},
    init: RequestInit = {},
  ): Promise<Response> => fetch(`${hub.server.url}${path}`, { ...init, headers });
  const token = (...args: string[]): string =>
    execFileSync(
      process.execPath,
      [fileURLToPath(new URL('../../scripts/sidelay.mjs', import.meta.url)), 'token', ...args],
      {
        env: { PATH: process.env.PATH, SIDELAY_DATABASE_URL: hub.database.url, SIDELAY_DATA_DIR: hub.folder },
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'ignore'],
      },
    ).trim();
  const bearer = (secret: string): Record<string, string> => ({
    ...FROM_ELSEWHERE,
    authorization: `Bearer ${secret}`,
  });

  it('is everybody on the machine itself, and from elsewhere nobody without a token', async () => {
    expect((await ask('/api/v1/tickets')).status).toBe(200);
    for (const path of ['/api/v1/tickets', '/api/v1/events', '/metrics', '/api/v1/stock/moves']) {
      const answer = await ask(path, FROM_ELSEWHERE);
      expect([path, answer.status, ((await answer.json()) as { code: string }).code]).toEqual([
        path,
        401,
        'UNAUTHENTICATED',
      ]);
    }
    expect(
      (
        await ask(
          '/jmf',
          { ...FROM_ELSEWHERE, 'content-type': 'application/vnd.cip4-jmf+xml' },
          { method: 'POST', body: '<JMF/>' },
        )
      ).status,
    ).toBe(401);
    expect((await ask('/health/live', FROM_ELSEWHERE)).status).toBe(200);
  });

  it('is not a page of another site in a browser on the machine', async () => {
    expect((await ask('/api/v1/tickets', { origin: 'https://elsewhere.example' })).status).toBe(401);
  });

  it('is a person with a token until it is revoked', async () => {
    const secret = token('create', '--name', 'Ada');
    expect((await ask('/api/v1/tickets', bearer(secret))).status).toBe(200);
    const [row] = JSON.parse(token('list', '--json')) as { id: string; name: string }[];
    expect(row!.name).toBe('Ada');
    expect(token('list')).not.toContain(secret);
    token('revoke', row!.id);
    expect((await ask('/api/v1/tickets', bearer(secret))).status).toBe(401);
  });

  it('is a device with its token at its own doors only, and only in its own name', async () => {
    const secret = token('create', '--name', 'press-full', '--kind', 'device');
    expect((await ask('/api/v1/tickets', bearer(secret))).status).toBe(403);
    const register = (id: string): Promise<Response> =>
      ask(
        '/api/v1/devices',
        { ...bearer(secret), 'content-type': 'application/json' },
        { method: 'POST', body: JSON.stringify({ id, kind: 'press', url: 'http://127.0.0.1:9/jmf' }) },
      );
    expect([(await register('press-full')).status, (await register('press-half')).status]).toEqual([
      200, 403,
    ]);
    const speak = async (id: string): Promise<string | undefined> => {
      const jmf = `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="${id}" TimeStamp="2026-01-05T08:00:00Z" Version="1.9"><Signal ID="s" Type="Status" ChannelMode="Reliable"><DeviceInfo DeviceID="${id}" DeviceStatus="Idle"/></Signal></JMF>`;
      const answer = await ask(
        '/jmf',
        { ...bearer(secret), 'content-type': 'application/vnd.cip4-jmf+xml' },
        { method: 'POST', body: jmf },
      );
      return /ReturnCode="(\d+)"/.exec(await answer.text())?.[1];
    };
    expect([await speak('press-full'), await speak('press-half')]).toEqual(['0', '300']);
    const abortAll = async (deviceId: string): Promise<string | undefined> => {
      const jmf = `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="press-full" DeviceID="${deviceId}" TimeStamp="2026-01-05T08:00:00Z" Version="1.9"><Command ID="c" Type="AbortQueueEntry"><AbortQueueEntryParams EndStatus="Aborted"><QueueFilter/></AbortQueueEntryParams></Command></JMF>`;
      const answer = await ask(
        '/jmf',
        { ...bearer(secret), 'content-type': 'application/vnd.cip4-jmf+xml' },
        { method: 'POST', body: jmf },
      );
      return /ReturnCode="(\d+)"/.exec(await answer.text())?.[1];
    };
    const codes = [await abortAll('press-full'), await abortAll('press-half'), await abortAll('sidelay')];
    expect(codes).toEqual(['0', '300', '300']);
  });

  it('signs in at the console with a cookie that scripts and other sites cannot use', async () => {
    const secret = token('create', '--name', 'Ben');
    const signIn = await ask(
      '/api/v1/session',
      { ...FROM_ELSEWHERE, 'content-type': 'application/json' },
      { method: 'POST', body: JSON.stringify({ token: secret }) },
    );
    expect(signIn.status).toBe(204);
    const cookie = signIn.headers.get('set-cookie')!;
    expect(cookie).toMatch(/HttpOnly; SameSite=Strict/);
    const session = { ...FROM_ELSEWHERE, cookie: cookie.split(';')[0]! };
    expect((await ask('/api/v1/tickets', session)).status).toBe(200);
    const hold = (origin: Record<string, string>): Promise<Response> =>
      ask('/api/v1/tickets/none/hold', { ...session, ...origin }, { method: 'POST' });
    expect((await hold({ origin: 'https://elsewhere.example' })).status).toBe(403);
    expect((await hold({ origin: hub.server.url })).status).toBe(404);
  });

  it('gets headers that keep scripts, frames and guesses out, on every kind of answer', async () => {
    for (const path of ['/', '/api/v1/tickets', '/api/v1/tickets/none', '/health/ready', '/nowhere']) {
      const { headers } = await ask(path);
      expect([path, headers.get('x-content-type-options'), headers.get('content-security-policy')]).toEqual([
        path,
        'nosniff',
        expect.stringMatching(/default-src 'self'.*frame-ancestors 'none'/),
      ]);
      expect(headers.get('content-security-policy')).not.toContain('unsafe');
    }
  });
});

describe('a hub and a worker as two processes over one database', () => {
  it('share the work: the hub takes in and answers, the worker delivers', async () => {
    const hub = await Hub.open({ env: () => ({ SIDELAY_ROLE: 'hub' }) });
    try {
      const made = await hub.post(
        '/api/v1/tickets',
        JSON.stringify({
          jobId: 'J',
          name: 'Slip',
          quantity: 300,
          trimWidthMm: 210,
          trimHeightMm: 297,
          pages: 16,
          binding: 'SaddleStitch',
          stock: 'silk-115-full-sg',
          inksFront: ['Black'],
          inksBack: ['Black'],
        }),
        'application/json',
      );
      const { id } = (await made.json()) as { id: string };
      const first = async (): Promise<string> =>
        (await hub.get<{ steps: { status: string }[] }>(`/api/v1/tickets/${id}`)).steps[0]!.status;
      expect(await first()).toBe('Waiting');
      const worker = await hub.second({ SIDELAY_ROLE: 'worker' });
      try {
        expect((await fetch(`${worker.url}/health/ready`)).status).toBe(200);
        expect((await fetch(`${worker.url}/api/v1/tickets`)).status).toBe(404);
        await until(async () => (await first()) !== 'Waiting', 'the worker to begin');
      } finally {
        await worker.kill('SIGTERM');
      }
    } finally {
      await hub.close();
    }
  });
});
