import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { callCli, type Said } from '../../../test/kit/call-cli.js';

const demo = (path: string): string => fileURLToPath(new URL(`../../../demo-data/${path}`, import.meta.url));

interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

describe('the command line', () => {
  let folder: string;
  let server: Server;
  let base: string;
  let asked: Asked[];
  let answer: {
    status: number;
    statusOf?: (path: string) => number;
    headers?: Record<string, string>;
    body: unknown | (() => unknown);
  };

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'sidelay-cli-'));
    server = createServer((request, response) => {
      let body = '';
      request.on('data', (chunk: Buffer) => {
        body += chunk.toString();
      });
      request.on('end', () => {
        asked.push({ method: request.method!, path: request.url!, headers: request.headers, body });
        const status = answer.statusOf?.(request.url!) ?? answer.status;
        response.writeHead(status, { 'content-type': 'application/json', ...answer.headers });
        const content = typeof answer.body === 'function' ? answer.body() : answer.body;
        response.end(typeof content === 'string' ? content : JSON.stringify(content));
      });
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  beforeEach(() => {
    asked = [];
    answer = { status: 200, body: {} };
  });
  afterAll(() => {
    server.close();
    rmSync(folder, { recursive: true });
  });

  const call = (...argv: string[]): Promise<Said> => callCli(argv, folder, base);
  const file = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return name;
  };

  describe('in wrong use exits 2', () => {
    it.each([
      ['no command', [], 'COMMAND'],
      ['an unknown command', ['impose'], 'There is no command "impose"'],
      ['an unknown option, and names what is possible', ['check', '--colour', 'x'], '--plant'],
      ['too few arguments', ['show'], 'show needs'],
      [
        'a kind of device that there is not',
        ['device', '--kind', 'kettle', '--hub', 'http://127.0.0.1:1'],
        'press',
      ],
      ['a file that is not there', ['check', 'none.jdf'], 'none.jdf'],
      ['a token without a name', ['token', 'create'], '--name'],
    ])('with %s', async (_what, argv, words) => {
      const { exit, out, err } = await call(...argv);
      expect([exit, out]).toEqual([2, '']);
      expect(err).toContain(words);
    });
  });

  it('answers who asks for help on stdout', async () => {
    for (const argv of [['help'], ['--help'], ['show', '--help']]) {
      const { exit, out, err } = await call(...argv);
      expect([exit, err]).toEqual([0, '']);
      expect(out).toContain('sidelay');
    }
  });

  it.each([
    ['check', [], /^\[\s*\{\s*"file": "none\.jdf"/],
    ['plan', [], /"file": "none\.jdf"/],
    ['convert', ['--to', 'xjdf'], /"document": null/],
    ['submit', [], /"file": "none\.jdf"/],
  ])('%s --json says of a file that cannot be read what is wrong with it', async (command, more, shape) => {
    const { exit, out } = await call(command, 'none.jdf', ...more, '--json');
    expect([exit, out]).toEqual([2, expect.stringMatching(shape)]);
    expect(out).toContain('"code": "FILE_UNREADABLE"');
  });

  it('refuses a status that no ticket has, and names those that there are', async () => {
    const { exit, err } = await call('tickets', '--status', 'Bogus');
    expect([exit, asked]).toEqual([2, []]);
    expect(err).toMatch(/no status Bogus: Waiting, .*Completed.*Rejected/);
  });

  describe('finds a ticket by its JobID', () => {
    const tickets = (...ids: string[]) =>
      ids.map((id) => ({
        id,
        jobId: 'J-1',
        name: 'Boat',
        status: 'Waiting',
        quantity: 1,
        progressPct: 0,
        steps: [],
        problems: [],
        activation: 'Active',
      }));
    const serving = (...ids: string[]) => {
      answer = {
        status: 200,
        body: () => {
          const { path } = asked.at(-1)!;
          return path.startsWith('/api/v1/tickets?')
            ? { items: [...tickets(...ids), { ...tickets('other')[0], jobId: 'J-10' }], next: null }
            : tickets(ids[0]!)[0];
        },
        statusOf: (path) => (path === '/api/v1/tickets/J-1' ? 404 : 200),
      };
    };

    it('where only one has it', async () => {
      serving('t-7');
      expect(await call('show', 'J-1')).toMatchObject({
        exit: 0,
        out: expect.stringContaining('Boat (J-1)'),
      });
      expect(asked.at(-1)!.path).toBe('/api/v1/tickets/t-7');
    });

    it('and lists them where several have it', async () => {
      serving('t-7', 't-8');
      const { exit, err } = await call('show', 'J-1');
      expect([exit, err]).toEqual([1, expect.stringMatching(/t-7 [\s\S]*t-8 /)]);
      expect(err).not.toContain('other');
    });
  });

  it('exits 3 with a plain sentence when no server answers', async () => {
    const { exit, err } = await call('tickets', '--server', 'http://127.0.0.1:9');
    expect([exit, err]).toEqual([3, expect.stringContaining('No Sidelay answers at http://127.0.0.1:9')]);
  });

  describe('check', () => {
    it('judges each file and says the whole as one JSON document', async () => {
      const broken = file('broken.jdf', '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1"><ResourcePool>');
      const { exit, out } = await call('check', '--json', demo('tickets/paper-boat-300.jdf'), broken);
      const [sound, faulty] = JSON.parse(out) as {
        kind: string;
        version: string;
        ok: boolean;
        problems: Record<string, unknown>[];
      }[];
      expect(exit).toBe(1);
      expect(sound).toMatchObject({ kind: 'jdf', version: '1.9', ok: true });
      expect(faulty).toMatchObject({
        ok: false,
        problems: [{ severity: 'error', code: 'XML_NOT_WELL_FORMED', path: '/JDF/ResourcePool' }],
      });
      expect(Object.keys(faulty!.problems[0]!).sort()).toEqual([
        'code',
        'hint',
        'line',
        'message',
        'path',
        'severity',
      ]);
    });

    it('reads the tickets of a package, with the part in the path', async () => {
      const ticket =
        '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="N" Type="Product" Status="Wrong" Version="1.9"/>';
      const pack = file(
        'job.mjd',
        `MIME-Version: 1.0\r\nContent-Type: multipart/related; boundary=b\r\n\r\n--b\r\nContent-Type: application/vnd.cip4-jdf+xml\r\nContent-ID: <t@plant>\r\n\r\n${ticket}\r\n--b--\r\n`,
      );
      const { out } = await call('check', '--json', pack);
      const [verdict] = JSON.parse(out) as { kind: string; ok: boolean; problems: { path: string }[] }[];
      expect(verdict).toMatchObject({ kind: 'package', ok: false });
      expect(verdict!.problems[0]!.path).toMatch(/^t@plant!\/JDF/);
    });

    it('tells with --plant what that plant cannot do, and is content all the same', async () => {
      const ticket = file(
        'foil.jdf',
        '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="N" JobPartID="P" Type="Embossing" Status="Waiting" Version="1.9"/>',
      );
      const codes = async (...more: string[]): Promise<string[]> => {
        const { out } = await call('check', '--json', ticket, ...more);
        return (JSON.parse(out) as { problems: { code: string }[] }[])[0]!.problems.map(({ code }) => code);
      };
      expect(await codes()).not.toContain('PLANT_CANNOT');
      expect(await codes('--plant', demo('plant.yaml'))).toContain('PLANT_CANNOT');
      const { exit } = await call('check', demo('tickets/paper-boat-300.jdf'), '--plant', demo('plant.yaml'));
      expect(exit).toBe(0);
    });

    it('is content with sound files', async () => {
      expect((await call('check', demo('orders/05-flyer.json'))).exit).toBe(0);
    });
  });

  describe('plan', () => {
    it('plans one order as one plan document', async () => {
      const { exit, out } = await call('plan', '--json', demo('orders/01-salt-harbour.json'));
      expect(exit).toBe(0);
      expect(JSON.parse(out)).toMatchObject({
        jobId: 'D1-01',
        sheets: [{ goodSheets: 311, sheetsToPress: 436, plates: 8 }],
      });
    });

    it('changes over from the job before, where two follow each other on a press', async () => {
      const { out } = await call(
        'plan',
        '--json',
        demo('tickets/paper-boat-300.jdf'),
        demo('tickets/ferrymans-hat-400.jdf'),
      );
      const plans = JSON.parse(out) as {
        changeovers: { fromJob: string | null; toJob: string; differs: { what: string }[] }[];
      }[];
      expect(plans.map((plan) => plan.changeovers[0])).toMatchObject([
        { fromJob: null, toJob: 'T-300' },
        { fromJob: 'T-300', toJob: 'T-400' },
      ]);
      expect(plans[1]!.changeovers[0]!.differs.map(({ what }) => what)).toEqual(['plates']);
    });

    it('exits 1 with the reasons for what cannot be made', async () => {
      const odd = file(
        'odd.json',
        JSON.stringify({
          ...JSON.parse('{}'),
          jobId: 'X',
          name: 'X',
          quantity: 10,
          trimWidthMm: 210,
          trimHeightMm: 297,
          pages: 15,
          binding: 'SaddleStitch',
          stock: 'silk-115-full-sg',
          inksFront: ['Black'],
          inksBack: ['Black'],
        }),
      );
      const { exit, err } = await call('plan', odd);
      expect([exit, err]).toEqual([1, expect.stringContaining('/pages')]);
    });
  });

  describe('at a server', () => {
    it('submits with the kind and a key of its own, so that the same file is taken once', async () => {
      answer = { status: 201, body: { id: 't-1', status: 'Waiting', problems: [] } };
      const { exit, out } = await call('submit', demo('tickets/paper-boat-300.jdf'));
      expect([exit, out]).toEqual([0, expect.stringContaining('t-1')]);
      expect(asked[0]).toMatchObject({ method: 'POST', path: '/api/v1/tickets' });
      expect(asked[0]!.headers['content-type']).toContain('application/vnd.cip4-jdf+xml');
      expect(asked[0]!.headers['idempotency-key']).toMatch(/.{16,}/);
      await call('submit', '--again', demo('tickets/paper-boat-300.jdf'));
      expect(asked[1]!.headers['idempotency-key']).toBeUndefined();
    });

    it('says why a ticket was refused, and exits 1', async () => {
      const problem = {
        severity: 'error',
        code: 'JDF_DANGLING',
        line: 7,
        path: '/JDF',
        message: 'R9 is nowhere.',
        hint: 'Add it.',
      };
      answer = {
        status: 422,
        headers: { location: '/api/v1/tickets/t-2' },
        body: { code: 'JDF_DANGLING', detail: 'R9 is nowhere.', problems: [problem] },
      };
      const { exit, out, err } = await call('submit', demo('tickets/paper-boat-300.jdf'));
      expect(exit).toBe(1);
      expect(`${out}${err}`).toMatch(/t-2[\s\S]*R9 is nowhere\.[\s\S]*Add it\./);
    });

    it('sends the token it was given, and holds a step', async () => {
      answer = {
        status: 200,
        body: {
          id: 't-1',
          name: 'N',
          status: 'Waiting',
          activation: 'Held',
          steps: [],
          problems: [],
          progressPct: 0,
          quantity: 1,
        },
      };
      const { exit } = await call('hold', 't-1', '--step', 'print-1', '--token', 'sl_secret');
      expect(exit).toBe(0);
      expect(asked[0]).toMatchObject({ method: 'POST', path: '/api/v1/tickets/t-1/steps/print-1/hold' });
      expect(asked[0]!.headers.authorization).toBe('Bearer sl_secret');
    });

    it('lists the tickets of all pages as one, and shows no control character of a name', async () => {
      const row = {
        id: 't-1',
        jobId: 'J',
        name: 'Paper\u001b[2JBoat',
        status: 'Waiting',
        progressPct: 0,
        quantity: 1,
        problems: [],
      };
      const pages = [
        { items: [row], next: 'c2' },
        { items: [{ ...row, id: 't-2' }], next: null },
      ];
      answer = { status: 200, body: () => pages.shift() };
      const { exit, out } = await call('tickets', '--status', 'Waiting', '--q', 'Paper Boat');
      expect(exit).toBe(0);
      expect(out).toMatch(/^t-1 .*Paper�\[2JBoat\nt-2 /);
      expect(asked.map(({ path }) => path)).toEqual([
        '/api/v1/tickets?limit=200&status=Waiting&q=Paper+Boat',
        '/api/v1/tickets?limit=200&status=Waiting&q=Paper+Boat&cursor=c2',
      ]);
    });

    it('shows each step with its counts and what it waits for', async () => {
      const step = {
        id: 'print-1',
        device: 'press-full',
        status: 'Waiting',
        statusDetails: null,
        good: 0,
        waste: 0,
        planned: 311,
        unit: 'sheets',
        waitsFor: 'waits for plates-1',
      };
      const shown = {
        name: 'Boat',
        jobId: 'T-300',
        quantity: 300,
        status: 'Waiting',
        activation: 'Held',
        progressPct: 0,
        steps: [step],
        problems: [],
      };
      answer = { status: 200, body: shown };
      const { out } = await call('show', 't-1');
      expect(out).toMatch(/Boat \(T-300\), 300 copies: Waiting, held, 0 %/);
      expect(out).toMatch(/print-1 .*press-full .*0\/311 sheets, 0 waste {2}waits for plates-1/);
      expect(JSON.parse((await call('show', 't-1', '--json')).out)).toEqual(shown);
    });

    it('exits 3 where the server is in trouble or something else listens, 2 where it wants a token', async () => {
      answer = { status: 503, body: { detail: 'The database does not answer.' } };
      expect(await call('tickets')).toMatchObject({ exit: 3, err: 'The database does not answer.\n' });
      answer = { status: 200, body: '<html></html>' };
      expect((await call('tickets')).exit).toBe(3);
      answer = { status: 401, body: { detail: 'This address answers only with a token.' } };
      expect((await call('show', 't-1')).exit).toBe(2);
    });

    it('names in its list of outcomes also the file that could not be read', async () => {
      answer = { status: 200, body: { id: 't-1', status: 'Waiting', problems: [] } };
      const { exit, out } = await call('submit', '--json', 'none.jdf', demo('orders/05-flyer.json'));
      expect(exit).toBe(1);
      expect(JSON.parse(out)).toMatchObject([
        { http: 200, ticket: 't-1' },
        { file: 'none.jdf', problems: [{ code: 'FILE_UNREADABLE' }] },
      ]);
      expect(asked[0]!.headers['content-type']).toBe('application/json');
    });

    it('gives the exported document as it is', async () => {
      answer = { status: 200, body: '<JDF/>\n' };
      expect(await call('export', 't-1')).toMatchObject({ exit: 0, out: '<JDF/>\n' });
      expect((await call('export', 't-1', '--as', 'xjdf')).exit).toBe(0);
      expect(asked.map(({ headers }) => headers.accept)).toEqual([
        'application/vnd.cip4-jdf+xml, */*;q=0.1',
        'application/vnd.cip4-xjdf+xml',
      ]);
      expect((await call('export', 't-1', '--as', 'pdf')).exit).toBe(2);
    });
  });
});
