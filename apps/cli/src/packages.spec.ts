import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gathered, type PartToSend, writeMultipart, writeZip } from '#libs/wire';
import { callCli, type Said } from '../../../test/kit/call-cli.js';

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
    const { exit, out } = await call('check', '--json', 'out.mjd');
    expect(JSON.parse(out)).toMatchObject([{ kind: 'package', ok: true }]);
    expect(exit).toBe(0);
  });
});
