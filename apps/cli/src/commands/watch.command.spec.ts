import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { run } from '../run.js';

type Answer = (request: IncomingMessage, response: ServerResponse) => void;

const event = (id: number, type: string, data: Record<string, unknown>): string => {
  const envelope = {
    specversion: '1.0',
    id: String(id),
    type,
    time: '2027-03-01T06:00:00.000Z',
    data: { ticket: 't-1', step: null, device: null, ...data },
  };
  return `id: ${id}\nevent: ${type}\ndata: ${JSON.stringify(envelope)}\n\n`;
};
const counted = event(11, 'step.counted', {
  step: 'print-1',
  device: 'press-full',
  good: 100,
  waste: 12,
  planned: 400,
  unit: 'sheets',
});
const ended = (id: number, to: string): string =>
  event(id, 'ticket.statusChanged', { from: 'InProgress', to });
const ticket = (status: string): Record<string, unknown> => ({
  id: 't-1',
  name: 'Paper Boat',
  status,
  progressPct: 10,
  steps: [{ id: 'print-1', status: 'InProgress', good: 50, planned: 400, unit: 'sheets' }],
  problems: [],
});

describe('watch', () => {
  let server: Server;
  let base: string;
  let streams: Answer[];
  let statuses: string[];
  let resumedFrom: (string | undefined)[];

  beforeAll(async () => {
    server = createServer((request, response) => {
      if (request.url!.startsWith('/api/v1/events')) {
        resumedFrom.push(request.headers['last-event-id'] as string | undefined);
        streams.shift()!(request, response);
        return;
      }
      const status = statuses.length > 1 ? statuses.shift()! : statuses[0]!;
      response.writeHead(status === '404' ? 404 : 200, { 'content-type': 'application/json' });
      response.end(JSON.stringify(status === '404' ? { detail: 'There is no ticket t-1.' } : ticket(status)));
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  beforeEach(() => {
    streams = [];
    statuses = ['InProgress'];
    resumedFrom = [];
  });
  afterAll(() => {
    server.closeAllConnections();
    server.close();
  });

  const stream =
    (end: 'open' | 'cut', ...pieces: string[]): Answer =>
    (_request, response) => {
      response.writeHead(200, { 'content-type': 'text/event-stream' });
      response.write(`retry: 1\n\n${pieces.join('')}`);
      if (end === 'cut') response.end();
    };
  const watch = async (isTerminal: boolean, ...argv: string[]) => {
    const said = { out: '', err: '' };
    const exit = await run(['watch', '--server', base, ...argv], {
      env: {},
      folder: '.',
      isTerminal,
      out: (text) => {
        said.out += `${text}\n`;
      },
      err: (text) => {
        said.err += `${text}\n`;
      },
      raw: (data) => {
        said.out += String(data);
      },
    });
    return { exit, ...said };
  };

  it.each([
    ['Completed', 0],
    ['Aborted', 1],
  ])('ends with the ticket: %s gives exit status %i', async (to, status) => {
    streams = [stream('open', counted, ended(12, to))];
    const { exit, out } = await watch(false, 't-1');
    expect(exit).toBe(status);
    expect(out).toContain('100 sheets good');
    expect(out).toContain(`The ticket is ${to}.`);
  });

  it('goes on where a cut stream stopped, and gives no event twice', async () => {
    streams = [stream('cut', counted), stream('open', ended(12, 'Completed'))];
    const { exit, out } = await watch(false, 't-1', '--json');
    expect(exit).toBe(0);
    expect(resumedFrom).toEqual([undefined, '11']);
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => (JSON.parse(line) as { id: string }).id)).toEqual(['11', '12']);
  });

  it('notices a ticket that ended before its events began', async () => {
    statuses = ['Completed'];
    streams = [stream('open')];
    expect((await watch(false, 't-1')).exit).toBe(0);
  });

  it('notices a ticket that ended while the line was cut before the first event', async () => {
    statuses = ['InProgress', 'Aborted'];
    streams = [stream('cut'), stream('open')];
    expect((await watch(false, 't-1')).exit).toBe(1);
  });

  it('draws bars on a terminal, from the ticket first and then from the counts', async () => {
    streams = [stream('open', counted, ended(12, 'Completed'))];
    const { out } = await watch(true, 't-1');
    expect(out).toContain('13 %  print-1 InProgress 50/400 sheets');
    expect(out).toContain('25 %  press-full print-1 InProgress 100/400 sheets');
  });

  it('tells events of a newer server that it has no sentence for', async () => {
    streams = [stream('open', event(11, 'step.admired', { by: 'all' }), ended(12, 'Completed'))];
    expect((await watch(false, 't-1')).out).toContain('step.admired {"by":"all"}');
  });

  it('exits 1 for a ticket that there is not', async () => {
    statuses = ['404'];
    streams = [stream('open')];
    expect(await watch(false, 't-1')).toMatchObject({ exit: 1, err: 'There is no ticket t-1.\n' });
  });

  it('exits 2 when a token is wanted', async () => {
    streams = [
      (_request, response) => {
        response.writeHead(401, { 'content-type': 'application/problem+json' });
        response.end(
          JSON.stringify({ detail: 'This address answers only with a token.', remedy: 'Send one.' }),
        );
      },
    ];
    expect(await watch(false)).toMatchObject({
      exit: 2,
      err: 'This address answers only with a token. Send one.\n',
    });
  });
});
