import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gathered, type Package, type PartToSend, readPackage, writeMultipart, writeZip } from '#libs/wire';
import { callCli, type Said } from '../../../test/kit/call-cli.js';
import { valueIn } from '../../../test/kit/value-in.js';

const JDF = 'application/vnd.cip4-jdf+xml';
const ticket = readFileSync(
  fileURLToPath(new URL('../../../demo-data/tickets/paper-boat-300.jdf', import.meta.url)),
);
const partsOf = (content: Buffer): PartToSend[] => [
  { name: 'boat.jdf', contentId: 'boat@x', mediaType: JDF, content },
];

describe('packages at the command line', () => {
  let folder: string;
  let server: Server;
  let base: string;
  let accepted: string | undefined;
  let answer: { type: string; body: Buffer };

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'sidelay-cli-packages-'));
    server = createServer((request, response) => {
      accepted = request.headers.accept;
      response.writeHead(200, { 'content-type': answer.type }).end(answer.body);
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    server.close();
    rmSync(folder, { recursive: true });
  });

  const call = (...argv: string[]): Promise<Said> => callCli(argv, folder, base);
  const written = async (content: Buffer) => {
    const { body, contentType } = writeMultipart(
      { parts: partsOf(content), encoding: '8bit' },
      { next: () => 'cli' },
    );
    return { contentType, body: Buffer.from(await gathered(body)) };
  };
  const asFile = async (name: string, content: Buffer): Promise<string> => {
    const { contentType, body } = await written(content);
    const head = Buffer.from(`MIME-Version: 1.0\r\nContent-Type: ${contentType}\r\n\r\n`);
    writeFileSync(join(folder, name), Buffer.concat([head, body]));
    return name;
  };

  it('are planned like the ticket in them', async () => {
    writeFileSync(join(folder, 'boat.jdf'), ticket);
    writeFileSync(
      join(folder, 'boat.zip'),
      await gathered(writeZip(partsOf(ticket), Date.parse('2026-03-02T08:00:00Z'))),
    );
    const bare = JSON.parse((await call('plan', '--json', 'boat.jdf')).out) as { sheets: unknown };
    for (const pack of [await asFile('boat.mjd', ticket), 'boat.zip']) {
      const { exit, out } = await call('plan', '--json', pack);
      expect(exit).toBe(0);
      expect((JSON.parse(out) as { sheets: unknown }).sheets).toEqual(bare.sheets);
    }
  });

  it('of the second generation are ZIPs, planned as well', async () => {
    writeFileSync(join(folder, 'boat.jdf'), ticket);
    const xjdf = (await call('convert', 'boat.jdf', '--to', 'xjdf')).out;
    const parts = [
      { name: 'tickets/boat.xjdf', contentId: null, mediaType: '', content: Buffer.from(xjdf) },
      { name: 'art/cover.pdf', contentId: null, mediaType: '', content: Buffer.from('%PDF') },
    ];
    writeFileSync(
      join(folder, 'xboat.zip'),
      await gathered(writeZip(parts, Date.parse('2026-03-02T08:00:00Z'))),
    );
    const bare = JSON.parse((await call('plan', '--json', 'boat.jdf')).out) as { sheets: unknown };
    const { exit, out } = await call('plan', '--json', 'xboat.zip');
    expect(exit).toBe(0);
    expect((JSON.parse(out) as { sheets: unknown }).sheets).toEqual(bare.sheets);
    const checked = JSON.parse((await call('check', '--json', 'xboat.zip')).out) as {
      problems: { code: string }[];
    }[];
    expect(checked[0]).toMatchObject({ kind: 'package', ok: true });
    expect(checked[0]!.problems.map(({ code }) => code)).toContain('PACKAGE_PART_UNUSED');
  });

  it('that cannot be planned say in which part, or why there is none', async () => {
    const faulty = Buffer.from(ticket.toString().replace('rRef="R3"', 'rRef="R9"'));
    const { exit, out } = await call('plan', '--json', await asFile('faulty.mjd', faulty));
    expect(exit).toBe(1);
    const { problems } = JSON.parse(out) as { problems: { code: string; path: string }[] };
    expect(problems.find(({ code }) => code === 'JDF_DANGLING')?.path).toMatch(/^boat\.jdf!\/JDF\//);
    writeFileSync(join(folder, 'cut.mjd'), readFileSync(join(folder, 'boat.mjd')).subarray(0, 900));
    const cut = await call('plan', '--json', 'cut.mjd');
    expect(cut.exit).toBe(1);
    expect(JSON.parse(cut.out)).toMatchObject({ problems: [{ code: 'PACKAGE_BROKEN' }] });
  });

  it('are exported as a file that is a package by itself', async () => {
    const { contentType, body } = await written(ticket);
    answer = { type: contentType, body };
    expect(await call('export', 't-1', '--as', 'package', '--out', 'out.mjd')).toMatchObject({ exit: 0 });
    expect(accepted).toBe('multipart/related');
    await call('export', 't-1', '--as', 'xjdf-zip', '--out', 'out.zip');
    expect(accepted).toBe('application/zip, application/vnd.cip4-xjdf+xml');
    const { exit, out } = await call('check', '--json', 'out.mjd');
    expect(JSON.parse(out)).toMatchObject([{ kind: 'package', ok: true }]);
    expect(exit).toBe(0);
  });

  describe('converted', () => {
    const XJDF = 'application/vnd.cip4-xjdf+xml';
    const artwork = Buffer.from('%PDF-1.7 artwork');
    const naming = (url: string): Buffer =>
      Buffer.from(
        ticket
          .toString()
          .replace('<JDF ', '<JDF Template="false" ')
          .replace(
            '</ResourcePool>',
            `<RunList ID="Art" Class="Parameter" Status="Available"><LayoutElement><FileSpec URL="${url}"/></LayoutElement></RunList></ResourcePool>`,
          ),
      );
    const message = Buffer.from(
      `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" SenderID="office" TimeStamp="2026-03-02T08:00:00Z" Version="1.7"><Command ID="c1" Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"><QueueSubmissionParams URL="cid:boat@x"/></Command></JMF>`,
    );
    const multipart = async (name: string): Promise<string> => {
      const parts: PartToSend[] = [
        {
          name: 'message.jmf',
          contentId: 'm@x',
          mediaType: 'application/vnd.cip4-jmf+xml',
          content: message,
        },
        { name: 'boat.jdf', contentId: 'boat@x', mediaType: JDF, content: naming('cid:art@x') },
        { name: 'art.pdf', contentId: 'art@x', mediaType: 'application/pdf', content: artwork },
      ];
      const { body, contentType } = writeMultipart({ parts, encoding: 'base64' }, { next: () => 'cli' });
      const head = Buffer.from(`MIME-Version: 1.0\r\nContent-Type: ${contentType}\r\n\r\n`);
      writeFileSync(join(folder, name), Buffer.concat([head, await gathered(body)]));
      return name;
    };
    const opened = async (name: string): Promise<Package> => {
      return valueIn(await readPackage(readFileSync(join(folder, name)), null));
    };
    const checked = async (name: string) =>
      (
        JSON.parse((await call('check', '--json', name)).out) as {
          ok: boolean;
          problems: { code: string }[];
        }[]
      )[0]!;

    it.each([
      ['multipart', 'multipart.mjm', 'cid:art@x'],
      ['zip', 'out.zip', 'art.pdf'],
    ])('into a %s keep their files, and what refers to a part finds it', async (as, out, address) => {
      const from = await multipart('all.mjm');
      expect(await call('convert', from, '--to', 'xjdf', '--as', as, '--out', out)).toMatchObject({
        exit: 0,
      });
      const { container, parts } = await opened(out);
      expect(container).toBe(as);
      expect(parts.map(({ name, mediaType }) => [name, mediaType])).toEqual([
        ['message.xjmf', 'application/vnd.cip4-xjmf+xml'],
        ['boat.xjdf', XJDF],
        ['art.pdf', 'application/pdf'],
      ]);
      expect(Buffer.from(parts[2]!.bytes)).toEqual(artwork);
      expect(Buffer.from(parts[1]!.bytes).toString()).toContain(`URL="${address}"`);
      const { ok, problems } = await checked(out);
      expect([ok, problems.filter(({ code }) => code.startsWith('PACKAGE'))]).toEqual([true, []]);
    });

    it('and back again are what they were', async () => {
      await call('convert', await multipart('all.mjm'), '--to', 'xjdf', '--as', 'zip', '--out', 'there.zip');
      const { exit } = await call(
        'convert',
        'there.zip',
        '--to',
        'jdf',
        '--as',
        'multipart',
        '--out',
        'back.mjm',
      );
      const { parts } = await opened('back.mjm');
      expect([exit, parts.map(({ name }) => name)]).toEqual([0, ['message.jmf', 'boat.jdf', 'art.pdf']]);
      expect(Buffer.from(parts[1]!.bytes).toString()).toMatch(/URL="cid:[^"]+"/);
      expect((await checked('back.mjm')).problems.filter(({ code }) => code.startsWith('PACKAGE'))).toEqual(
        [],
      );
    });

    it('list their losses by part, and what stays behind where only the ticket goes on', async () => {
      const from = await multipart('all.mjm');
      const { out } = await call('convert', from, '--to', 'xjdf', '--as', 'document', '--json');
      const { document, lost } = JSON.parse(out) as { document: string; lost: { path: string }[] };
      expect(document).toContain('<XJDF ');
      expect(lost.map(({ path }) => path)).toEqual(expect.arrayContaining(['message.jmf!', 'art.pdf!']));
      const whole = JSON.parse((await call('convert', from, '--to', 'xjdf', '--json')).out) as typeof lost & {
        lost: { path: string }[];
      };
      expect(whole.lost.length).toBeGreaterThan(0);
      expect(whole.lost.every(({ path }) => /^(message\.jmf|boat\.jdf)!\//.test(path))).toBe(true);
    });

    it('can be made of a document by itself', async () => {
      writeFileSync(join(folder, 'boat.jdf'), ticket);
      const { exit } = await call(
        'convert',
        'boat.jdf',
        '--to',
        'xjdf',
        '--as',
        'zip',
        '--out',
        'single.zip',
      );
      const { parts } = await opened('single.zip');
      expect([exit, parts.map(({ name }) => name)]).toEqual([0, ['ticket.xjdf']]);
    });
  });

  describe('a JDF of several steps', () => {
    const node = (id: string, type: string): string =>
      `<JDF ID="${id}" Type="${type}" JobPartID="part ${id}" Status="Waiting"><ResourceLinkPool><ComponentLink rRef="c" Usage="Input"/></ResourceLinkPool></JDF>`;
    const text = `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="p" Type="Product" JobID="J" Status="Waiting" Version="1.7"><ResourcePool><Component ID="c" Class="Quantity" ComponentType="Sheet" Status="Available"/></ResourcePool>${node('cut', 'Cutting')}${node('fold', 'Folding')}</JDF>`;
    beforeAll(() => writeFileSync(join(folder, 'steps.jdf'), text));

    it('is converted node by node into a folder, with what is in no file listed', async () => {
      const { exit, out } = await call('convert', 'steps.jdf', '--to', 'xjdf', '--out', 'steps/', '--json');
      const said = JSON.parse(out) as {
        documents: { file: string; node: string }[];
        lost: { path: string }[];
      };
      expect([exit, said.documents]).toEqual([
        0,
        [
          { file: '1-part_cut.xjdf', node: 'cut' },
          { file: '2-part_fold.xjdf', node: 'fold' },
        ],
      ]);
      const first = readFileSync(join(folder, 'steps', '1-part_cut.xjdf'), 'utf8');
      expect(first).toContain('Types="Cutting"');
      expect(said.lost.some(({ path }) => path.includes('/JDF[2]'))).toBe(false);
    });

    it('gives one node by its ID or JobPartID, and says which there are', async () => {
      for (const id of ['fold', 'part fold']) {
        const { exit, out } = await call('convert', 'steps.jdf', '--to', 'xjdf', '--node', id);
        expect([exit, out]).toEqual([0, expect.stringContaining('Types="Folding"')]);
      }
      const unknown = await call('convert', 'steps.jdf', '--to', 'xjdf', '--node', 'glue');
      expect([unknown.exit, unknown.err]).toEqual([1, expect.stringContaining('p, cut, fold')]);
      expect((await call('convert', 'steps.jdf', '--to', 'jdf', '--node', 'cut')).exit).toBe(2);
    });
  });
});
