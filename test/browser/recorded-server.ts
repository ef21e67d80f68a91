import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { consumption, deviceViews, story } from './recorded-hall.js';
import { NOW, ticketViews } from './recorded-plant.js';
import { recordedPlan } from './recorded-sheet.js';

const CONSOLE = fileURLToPath(new URL('../../dist/console', import.meta.url));
const AXE = fileURLToPath(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
};
/** As strict as the server's own, so that a page that breaks it is noticed here. */
const POLICY =
  "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

export interface Received {
  readonly method: string;
  readonly path: string;
  readonly type: string;
  readonly body: string;
}

/** Gives the built console and recorded JSON; what it answers can be changed between two looks. */
export interface RecordedServer {
  readonly url: string;
  readonly tickets: Map<string, Record<string, unknown>>;
  devices: Record<string, unknown>[];
  /** Token that the API asks for; null leaves it open. */
  token: string | null;
  /** What the next order is answered with. */
  orderAnswer: { status: number; body: unknown; location?: string };
  readonly received: Received[];
  /** Sends one event to everybody on the stream. */
  emit(type: string, data: Record<string, unknown>): void;
  /** Ends every stream; while cut, new ones are answered with 503. */
  cut(is: boolean): void;
  /** Behind which event each stream was asked for, in order; null for a first one. */
  readonly streamsFrom: (string | null)[];
  close(): Promise<void>;
}

export async function startRecordedServer(): Promise<RecordedServer> {
  const open = new Set<ServerResponse>();
  let cut = false;
  let position = 100;
  const self = {
    url: '',
    tickets: new Map(ticketViews().map((view) => [view.id as string, view])),
    devices: deviceViews(),
    token: null as string | null,
    orderAnswer: { status: 201, body: {} } as RecordedServer['orderAnswer'],
    received: [] as Received[],
    streamsFrom: [] as (string | null)[],
  };

  const json = (
    out: ServerResponse,
    status: number,
    body: unknown,
    more: Record<string, string> = {},
  ): ServerResponse => {
    const type = status >= 400 ? 'application/problem+json' : 'application/json';
    return out
      .writeHead(status, { 'content-type': type, ...more })
      .end(body === null ? '' : JSON.stringify(body));
  };
  const problem = (out: ServerResponse, status: number, code: string, detail: string): ServerResponse =>
    json(out, status, { type: 'about:blank', title: code, status, detail, instance: '', code });

  const api = (method: string, path: string, query: URLSearchParams, out: ServerResponse): ServerResponse => {
    const listing = (items: readonly unknown[]): ServerResponse => json(out, 200, { items, next: null });
    const [kind, id, verb, stepId, stepVerb] = path.replace('/api/v1/', '').split('/');
    if (kind === 'devices') return listing(self.devices);
    if (kind === 'stock') {
      return listing([
        { item: 'silk-115-full-sg', name: 'Coated silk 115', unit: 'sheets', onHand: 5200, reserved: 0 },
      ]);
    }
    if (kind !== 'tickets') return problem(out, 404, 'NOT_FOUND', `Nothing is at ${path}.`);
    if (id === undefined && method === 'POST') {
      const { status, body: answer, location } = self.orderAnswer;
      return json(out, status, answer, location === undefined ? {} : { location });
    }
    if (id === undefined) {
      const status = query.get('status');
      return listing([...self.tickets.values()].filter((view) => status === null || view.status === status));
    }
    const ticket = self.tickets.get(id);
    if (ticket === undefined) return problem(out, 404, 'NOT_FOUND', `There is no ticket ${id}.`);
    if (verb === undefined) return json(out, 200, ticket);
    if (verb === 'plan') return json(out, 200, recordedPlan);
    if (verb === 'consumption') return listing(consumption);
    if (verb === 'story') return listing(story.filter((row) => Number(row.id) > Number(query.get('cursor'))));
    if (method === 'POST' && stepVerb === 'start' && stepId === 'pack') {
      return problem(out, 409, 'STATE_FORBIDS', 'The step still waits for what it needs.');
    }
    if (method === 'POST' && verb === 'hold') {
      const held = { ...ticket, activation: 'Held', revision: Number(ticket.revision) + 1 };
      self.tickets.set(id, held);
      return json(out, 200, held);
    }
    return json(out, 200, ticket);
  };

  const answer = async (request: IncomingMessage, out: ServerResponse): Promise<ServerResponse> => {
    const url = new URL(request.url ?? '/', 'http://recorded');
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    const body = Buffer.concat(chunks).toString('utf8');
    const method = request.method ?? 'GET';
    const path = url.pathname;
    if (method !== 'GET') {
      self.received.push({ method, path, type: request.headers['content-type'] ?? '', body });
    }
    out.setHeader('content-security-policy', POLICY);
    if (path === '/axe.js')
      return out.writeHead(200, { 'content-type': TYPES['.js']! }).end(await readFile(AXE));
    if (path === '/health/ready') {
      const clock = { plantStart: NOW, realStart: 0, factor: 1 };
      const plantTime = new Date(NOW).toISOString();
      return json(out, 200, {
        status: 'ready',
        because: [],
        version: '0.1.0',
        role: 'all',
        demo: true,
        plantTime,
        clock,
      });
    }
    if (path === '/api/v1/session') {
      if (method === 'DELETE')
        return out.writeHead(204, { 'set-cookie': 'sidelay_session=; Max-Age=0' }).end();
      const { token } = JSON.parse(body) as { token: string };
      if (token !== self.token) return problem(out, 401, 'UNAUTHENTICATED', 'The token does not count.');
      return out
        .writeHead(204, { 'set-cookie': `sidelay_session=${token}; HttpOnly; SameSite=Strict; Path=/` })
        .end();
    }
    if (!path.startsWith('/api/')) return file(path, out);
    const cookie = request.headers.cookie ?? '';
    if (self.token !== null && !cookie.includes(`sidelay_session=${self.token}`)) {
      return problem(out, 401, 'UNAUTHENTICATED', 'This address answers only with a token.');
    }
    if (path !== '/api/v1/events') return api(method, path, url.searchParams, out);
    const from = request.headers['last-event-id'] ?? url.searchParams.get('after');
    self.streamsFrom.push(typeof from === 'string' ? from : null);
    if (cut) return problem(out, 503, 'NOT_READY', 'The stream is cut.');
    out.writeHead(200, { 'content-type': 'text/event-stream' }).write('retry: 200\n\n');
    open.add(out);
    return out.on('close', () => open.delete(out));
  };

  const server = createServer((request, out) => void answer(request, out));
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return Object.assign(self, {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    emit: (type: string, data: Record<string, unknown>): void => {
      position += 1;
      const event = {
        specversion: '1.0',
        id: String(position),
        source: 'urn:sidelay:test',
        type,
        time: new Date(NOW).toISOString(),
        data,
      };
      for (const out of open)
        out.write(`id: ${position}\nevent: ${type}\ndata: ${JSON.stringify(event)}\n\n`);
    },
    cut: (is: boolean): void => {
      cut = is;
      if (is) for (const out of open) out.destroy();
    },
    close: () =>
      new Promise<void>((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  });
}

async function file(path: string, out: ServerResponse): Promise<ServerResponse> {
  const name = path === '/' ? 'index.html' : path.slice(1);
  try {
    const bytes = await readFile(join(CONSOLE, name));
    return out
      .writeHead(200, { 'content-type': TYPES[extname(name)] ?? 'application/octet-stream' })
      .end(bytes);
  } catch {
    return out.writeHead(404).end();
  }
}
