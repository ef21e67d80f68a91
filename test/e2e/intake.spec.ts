import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { checkDocument, convertDocument, writeXml, type XmlDocument } from '#libs/jdf';
import { demoData, Hub, type TicketJson } from '../kit/journey.js';
import { until } from '../kit/server-process.js';
import { parsedXml } from '../kit/value-in.js';

const JDF = 'application/vnd.cip4-jdf+xml';
const JMF = 'application/vnd.cip4-jmf+xml';
const XJDF = 'application/vnd.cip4-xjdf+xml';
const NAMESPACE = 'http://www.CIP4.org/JDFSchema_1_1';

const INKS = ['Cyan', 'Magenta', 'Yellow', 'Black'];
const order = (change: Record<string, unknown> = {}): string =>
  JSON.stringify({
    jobId: 'J',
    name: 'Slip',
    quantity: 300,
    trimWidthMm: 210,
    trimHeightMm: 297,
    pages: 16,
    binding: 'SaddleStitch',
    stock: 'silk-115-full-sg',
    inksFront: INKS,
    inksBack: INKS,
    ...change,
  });
const ticket = demoData('tickets/paper-boat-300.jdf').toString();
const parsed = (text: string): XmlDocument => {
  return parsedXml(text);
};
const converted = convertDocument(parsed(ticket), 'xjdf');
const newer = converted.ok ? writeXml(converted.value.doc) : '';
const jmf = (message: string, attributes = ''): string =>
  `<JMF xmlns="${NAMESPACE}" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" SenderID="tester" TimeStamp="2026-01-05T08:00:00Z" Version="1.9" ${attributes}>${message}</JMF>`;
const returnCode = (text: string): string | undefined => /ReturnCode="(\d+)"/.exec(text)?.[1];

interface Refusal {
  readonly status: number;
  readonly code: string;
  readonly problems: readonly {
    code: string;
    line: number | null;
    path: string | null;
    message: string;
    hint: string | null;
  }[];
}

describe('what comes in by each door', () => {
  let hub: Hub;
  const tickets = (): string => join(hub.folder, 'tickets');

  beforeAll(async () => {
    hub = await Hub.open({
      env: (folder) => ({ SIDELAY_FILE_ROOTS: join(folder, 'tickets'), SIDELAY_BODY_LIMIT_MB: '1' }),
    });
    mkdirSync(tickets(), { recursive: true });
    writeFileSync(join(tickets(), 'paper-boat.jdf'), ticket);
  }, 120_000);
  afterAll(() => hub?.close());

  const refusal = async (body: string | Uint8Array, type = JDF): Promise<Refusal> => {
    const answer = await hub.post('/api/v1/tickets', body, type);
    expect(answer.headers.get('content-type')).toContain('application/problem+json');
    return (await answer.json()) as Refusal;
  };

  it('takes in a ticket of the newer generation, and gives it out in either', async () => {
    const taken = await hub.post('/api/v1/tickets', newer.replace('JobID="T-300"', 'JobID="T-301"'), XJDF);
    expect(taken.status).toBe(201);
    const { id, jobId, steps } = (await taken.json()) as TicketJson & { jobId: string };
    expect([jobId, steps.length > 3]).toEqual(['T-301', true]);
    const path = `/api/v1/tickets/${id}/document`;
    const older = await hub.get<string>(path, JDF);
    const newest = await hub.get<string>(path, XJDF);
    expect(older).toContain('<JDF ');
    expect(newest).toMatch(/<XJDF JobID="T-301"[^>]* Types="[^"]*ConventionalPrinting/);
    expect([older, newest].map((text) => checkDocument(parsed(text)).problems)).toEqual([[], []]);
  });

  describe('a document that is no sound, possible ticket', () => {
    it.each([
      ['is not XML', 'not a ticket at all', 'XML_NOT_WELL_FORMED', 1, null],
      ['is cut short', ticket.slice(0, 900), 'XML_NOT_WELL_FORMED', null, '/JDF/ResourcePool'],
      ['is of another namespace', ticket.replaceAll(NAMESPACE, 'urn:other'), 'XML_NAMESPACE', 2, '/JDF'],
      [
        'has a document type',
        ticket.replace('<JDF', '<!DOCTYPE JDF [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n<JDF'),
        'XML_DOCTYPE',
        2,
        null,
      ],
      [
        'refers to nothing',
        ticket.replace('rRef="R3"', 'rRef="R9"'),
        'JDF_DANGLING',
        29,
        '/JDF/ResourceLinkPool/MediaIntentLink',
      ],
      [
        'lacks what is required',
        ticket.replace('ID="R3" Class="Intent" ', 'ID="R3" '),
        'JDF_MISSING',
        9,
        '/JDF/ResourcePool/MediaIntent',
      ],
    ])('%s: is refused with code, line and path, kept and listed', async (_what, body, code, line, path) => {
      const { status, problems } = await refusal(body);
      expect(status).toBe(422);
      const problem = problems.find((row) => row.code === code);
      expect(problem).toBeDefined();
      if (line !== null) expect(problem!.line).toBe(line);
      if (path !== null) expect(problem!.path).toContain(path);
      const [kept] = (await hub.get<{ items: TicketJson[] }>('/api/v1/tickets?status=Rejected&limit=1'))
        .items;
      expect(kept).toMatchObject({ status: 'Rejected', steps: [] });
      expect(await hub.get<string>(`/api/v1/tickets/${kept!.id}/document`, JDF)).toBe(body);
    });

    it('is given as it came, in the other generation where it can be, or not where Accept does not want it', async () => {
      const body = ticket.replace('rRef="R3"', 'rRef="R9"').replace('T-300', 'T-302');
      await refusal(body);
      const [kept] = (await hub.get<{ items: TicketJson[] }>('/api/v1/tickets?status=Rejected&limit=1'))
        .items;
      const path = `/api/v1/tickets/${kept!.id}/document`;
      const asked = (accept: string): Promise<Response> =>
        fetch(`${hub.server.url}${path}`, { headers: { accept } });
      expect(await (await asked('*/*')).text()).toBe(body);
      const newest = await asked(XJDF);
      expect([newest.headers.get('content-type'), await newest.text()]).toEqual([
        `${XJDF}; charset=utf-8`,
        expect.stringContaining('<XJDF '),
      ]);
      const image = await asked('image/png');
      expect([image.status, await image.json()]).toEqual([
        406,
        expect.objectContaining({ code: 'NOT_ACCEPTABLE', detail: expect.stringContaining(JDF) }),
      ]);
    });

    it('is looked for by a status that there is', async () => {
      const answer = await fetch(`${hub.server.url}/api/v1/tickets?status=Bogus`);
      expect([answer.status, await answer.json()]).toEqual([
        400,
        expect.objectContaining({ code: 'REQUEST_INVALID', detail: expect.stringContaining('Rejected') }),
      ]);
    });

    it('names what is wrong in an XJDF at its place there, though it is read as JDF', async () => {
      const { status, problems } = await refusal(newer.replace('Amount="300"', ''), XJDF);
      expect([status, problems[0]?.code, problems[0]?.path]).toEqual([
        422,
        'JDF_AMOUNT',
        '/XJDF/ProductList/Product',
      ]);
    });

    it('says of an impossible order what would be possible', async () => {
      const { problems } = await refusal(
        order({ stock: 'vellum', colour: 'red', quantity: 0 }),
        'application/json',
      );
      expect(problems.map((row) => row.path)).toEqual(expect.arrayContaining(['/colour', '/quantity']));
      const paper = await refusal(order({ stock: 'vellum' }), 'application/json');
      expect(paper.problems[0]).toMatchObject({ path: '/stock' });
      expect(`${paper.problems[0]!.message} ${paper.problems[0]!.hint}`).toContain('silk-115-full-sg');
    });

    it('of a type that is no ticket is answered 415', async () => {
      expect((await refusal(ticket, 'image/png')).status).toBe(415);
    });

    it('too large is answered 413, and an empty body 400', async () => {
      expect((await refusal(Buffer.alloc(1_200_000, 0x20))).status).toBe(413);
      expect((await refusal('')).status).toBe(400);
    });
  });

  describe('a ticket over HTTP', () => {
    it('is created once under one Idempotency-Key, and refused under it with another body', async () => {
      const post = (body: string): Promise<Response> =>
        hub.post('/api/v1/tickets', body, 'application/json', { 'idempotency-key': 'k1' });
      const first = await post(order());
      const again = await post(order());
      expect([first.status, again.status]).toEqual([201, 200]);
      const [one, two] = [(await first.json()) as TicketJson, (await again.json()) as TicketJson];
      expect(two.id).toBe(one.id);
      expect(first.headers.get('location')).toBe(`/api/v1/tickets/${one.id}`);
      expect((await post(order({ quantity: 301 }))).status).toBe(409);
    });

    it('has its revision as ETag, and a stale If-Match changes nothing', async () => {
      const made = await hub.post('/api/v1/tickets', order(), 'application/json');
      const { id } = (await made.json()) as TicketJson;
      const tag = async (): Promise<string> =>
        (await fetch(`${hub.server.url}/api/v1/tickets/${id}`)).headers.get('etag')!;
      const hold = (match: string): Promise<Response> =>
        hub.post(`/api/v1/tickets/${id}/hold`, '', 'application/json', { 'if-match': match });
      expect((await hold('"0"')).status).toBe(412);
      // Deliveries that fail move the revision on; a fresh tag holds sooner or later.
      await until(async () => (await hold(await tag())).status === 200, 'a hold with a fresh tag');
      expect((await hold('*')).status).toBe(409);
    });

    it('is taken from a multipart package and from the standard’s own sample', async () => {
      const boundary = 'part';
      const body = `--${boundary}\r\nContent-Type: ${JDF}\r\nContent-ID: <t@plant>\r\n\r\n${ticket}\r\n--${boundary}--\r\n`;
      expect(
        (await hub.post('/api/v1/tickets', body, `multipart/related; boundary=${boundary}; type="${JDF}"`))
          .status,
      ).toBe(201);
      const standards = process.env.SIDELAY_STANDARDS_DIR;
      if (!standards) return;
      const sample = readFileSync(join(standards, 'jdf/samples/lifecycle/ProductIntentNode.jdf'));
      const answer = await hub.post('/api/v1/tickets', sample, JDF);
      const made = (await answer.json()) as TicketJson & { problems: { code: string; severity: string }[] };
      expect([answer.status, made.quantity]).toEqual([201, 10_000]);
      // It names no binding, inks or stock: each comes from the plant's defaults with a warning.
      expect(made.problems.filter((row) => row.code === 'DEFAULT_TAKEN').length).toBeGreaterThanOrEqual(3);
      expect(made.problems.every((row) => row.severity === 'warning')).toBe(true);
    });
  });

  describe('a message at /jmf', () => {
    const say = async (message: string, attributes = ''): Promise<{ status: number; text: string }> => {
      const answer = await hub.post('/jmf', jmf(message, attributes), JMF);
      return { status: answer.status, text: await answer.text() };
    };
    const submit = (url: string): string =>
      `<Command ID="c1" Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"><QueueSubmissionParams URL="${url}"/></Command>`;

    it('submits a ticket by a file address inside the allowed folders only', async () => {
      const inside = await say(submit(pathToFileURL(join(tickets(), 'paper-boat.jdf')).href));
      expect(returnCode(inside.text)).toBe('0');
      const entry = /QueueEntryID="([^"]+)"/.exec(inside.text)![1]!;
      expect(await hub.get<TicketJson>(`/api/v1/tickets/${entry}`)).toMatchObject({ jobId: 'T-300' });
      for (const url of [
        'file:///etc/passwd',
        `${pathToFileURL(tickets()).href}/../secret.jdf`,
        'http://169.254.169.254/latest',
        'http://127.0.0.1:1/x',
      ]) {
        expect([url, returnCode((await say(submit(url))).text)]).toEqual([url, '120']);
      }
    });

    it('submits a ticket that travels in the same package', async () => {
      const part = (type: string, id: string, text: string): string =>
        `--p\r\nContent-Type: ${type}\r\nContent-ID: <${id}>\r\n\r\n${text}\r\n`;
      const body = `${part(JMF, 'm@plant', jmf(submit('cid:t@plant')))}${part(JDF, 't@plant', ticket)}--p--\r\n`;
      const answer = await hub.post('/jmf', body, `multipart/related; boundary=p; type="${JMF}"`);
      expect(returnCode(await answer.text())).toBe('0');
      const lost = await hub.post(
        '/jmf',
        body.replace('cid:t@plant', 'cid:none@plant'),
        `multipart/related; boundary=p; type="${JMF}"`,
      );
      expect(returnCode(await lost.text())).toBe('120');
    });

    it('answers with the ReturnCodes of the standard', async () => {
      expect(await say('<Query ID="q1" Type="KnownMessages" xsi:type="QueryKnownMessages"/>')).toMatchObject({
        status: 200,
        text: expect.stringContaining('Type="SubmitQueueEntry"'),
      });
      expect(returnCode((await say('<Query ID="q1" Type="Weather"/>')).text)).toBe('5');
      expect(
        returnCode(
          (await say('<Command ID="c1" Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"/>')).text,
        ),
      ).toMatch(/^[67]$/);
      expect(
        returnCode(
          (await say('<Query ID="q1" Type="QueueStatus" xsi:type="QueryQueueStatus"/>', 'DeviceID="nobody"'))
            .text,
        ),
      ).toBe('121');
      expect(
        returnCode(
          (
            await say(
              '<Command ID="c1" Type="AbortQueueEntry" xsi:type="CommandAbortQueueEntry"><AbortQueueEntryParams EndStatus="Aborted"><QueueFilter><QueueEntryDef QueueEntryID="none"/></QueueFilter></AbortQueueEntryParams></Command>',
            )
          ).text,
        ),
      ).toBe('105');
    });

    it('that is not well-formed is answered 400 with ReturnCode 3, and one of a wrong type 415', async () => {
      const broken = await hub.post('/jmf', '<JMF', JMF);
      expect([broken.status, returnCode(await broken.text())]).toEqual([400, '3']);
      expect((await hub.post('/jmf', 'x', 'image/png')).status).toBe(415);
      const large = await hub.post('/jmf', Buffer.alloc(1_200_000, 0x20), JMF);
      expect([large.status, returnCode(await large.text())]).toEqual([413, '3']);
    });

    it('is a signal: nothing is answered, not even by an unknown device', async () => {
      const signal =
        '<Signal ID="s1" Type="Status" xsi:type="SignalStatus"><DeviceInfo DeviceID="nobody" DeviceStatus="Idle"/></Signal>';
      expect(await say(signal)).toEqual({ status: 200, text: '' });
      const reliable = await say(signal.replace('ID="s1"', 'ID="s1" ChannelMode="Reliable"'));
      expect(returnCode(reliable.text)).toBe('121');
    });
  });

  describe('a file in the inbox', () => {
    const inbox = (...parts: string[]): string => join(hub.folder, 'inbox', ...parts);
    const drop = (name: string, text: string): void => {
      writeFileSync(inbox(`${name}.part`), text);
      renameSync(inbox(`${name}.part`), inbox(name));
    };

    it('moves to accepted or, with its reasons beside it, to rejected', async () => {
      drop('boat.jdf', ticket);
      drop('odd.json', order({ pages: 15 }));
      // The name is taken in the other folder a moment before the file comes: a move is over when the file has left.
      await until(
        async () => ['boat.jdf', 'odd.json'].every((name) => !existsSync(inbox(name))),
        'the moves',
      );
      expect(readdirSync(inbox('rejected')).sort()).toEqual(['odd.json', 'odd.json.reasons.json']);
      expect(readFileSync(inbox('rejected', 'odd.json'), 'utf8')).toBe(order({ pages: 15 }));
      expect(
        JSON.stringify(JSON.parse(readFileSync(inbox('rejected', 'odd.json.reasons.json'), 'utf8'))),
      ).toContain('/pages');
    });
  });

  describe('what cannot be delivered', () => {
    it('shows why: a device that has no address yet, then one that does not answer', async () => {
      const made = (await (
        await hub.post('/api/v1/tickets', order(), 'application/json')
      ).json()) as TicketJson;
      type StepShape = { id: string; statusDetails: string; waitsFor: string; status: string };
      const step = async (): Promise<StepShape> =>
        (await hub.get<{ steps: StepShape[] }>(`/api/v1/tickets/${made.id}`)).steps.find(
          ({ id }) => id === 'plates-1',
        )!;
      // Prepress is our own workstation and takes its planned minutes; then the plates want a machine.
      await until(async () => (await step()).statusDetails === 'WaitingForDevice', 'the first try');
      expect((await step()).waitsFor).toMatch(/platesetter: .*address/);
      await hub.post(
        '/api/v1/devices',
        JSON.stringify({
          id: 'platesetter',
          kind: 'platesetter',
          driver: 'jmf',
          url: 'http://127.0.0.1:9/jmf',
        }),
        'application/json',
      );
      await until(async () => {
        const { items } = await hub.get<{ items: { id: string; silent: string | null }[] }>(
          '/api/v1/devices',
        );
        return items.find((device) => device.id === 'platesetter')!.silent !== null;
      }, 'the silence to show');
      expect((await step()).status).toBe('Waiting');
    });
  });
});
