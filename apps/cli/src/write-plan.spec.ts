import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkTicket, nodesOf, parseXml, processesOf } from '#libs/jdf';
import { callCli } from '../../../test/kit/call-cli.js';
import { parsedXml } from '../../../test/kit/value-in.js';

const demo = (name: string): string =>
  fileURLToPath(new URL(`../../../demo-data/orders/${name}`, import.meta.url));
const order = demo('01-salt-harbour.json');
const flyer = demo('05-flyer.json');

/** Names of the drawings in a folder, each of which must be well-formed XML. */
function drawingsIn(folder: string): readonly string[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.svg'));
  const broken = names.filter((name) => !parseXml(readFileSync(join(folder, name))).ok);
  expect(broken).toEqual([]);
  return names.toSorted((a, b) => a.localeCompare(b, 'en'));
}

describe('plan --out', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'sidelay-plan-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const plan = async (...argv: string[]): Promise<number> => (await callCli(['plan', ...argv], folder)).exit;

  it('writes drawings for each machine, the plan, and a process ticket that is sound', async () => {
    expect(await plan(order, '--out', 'new/place')).toBe(0);
    const out = join(folder, 'new/place');
    const names = readdirSync(out);
    expect(names).toEqual(expect.arrayContaining(['plan.json', 'ticket.jdf']));
    expect(drawingsIn(out)).toEqual(['body-1-folds.svg', 'S1-back.svg', 'S1-front.svg']);
    const ticket = parsedXml(readFileSync(join(out, 'ticket.jdf')));
    expect(checkTicket(ticket)).toEqual([]);
    const processes = [...nodesOf(ticket.root)].flatMap((node) => processesOf(node));
    expect(processes).toEqual(expect.arrayContaining(['ConventionalPrinting', 'Folding', 'Stitching']));
  });

  it('draws the cuts of flat work that is printed several up', async () => {
    expect(await plan(flyer, '--out', 'flat')).toBe(0);
    expect(drawingsIn(join(folder, 'flat'))).toContain('S1-cuts.svg');
  });

  it('gives each of several jobs a folder, also where their files have one name', async () => {
    const twin = join(folder, '01-salt-harbour.json');
    const { jobId: _jobId, ...rest } = JSON.parse(readFileSync(order, 'utf8')) as Record<string, unknown>;
    writeFileSync(twin, JSON.stringify({ ...rest, jobId: 'TWIN' }));
    expect(await plan(order, twin, '--out', 'out')).toBe(0);
    const jobs = readdirSync(join(folder, 'out')).map((name) => {
      const document = JSON.parse(readFileSync(join(folder, 'out', name, 'plan.json'), 'utf8')) as {
        jobId: string;
      };
      return [name, document.jobId];
    });
    expect(jobs).toEqual([
      ['01-salt-harbour', 'D1-01'],
      ['01-salt-harbour-2', 'TWIN'],
    ]);
  });

  it('exits 2 where the place cannot be written', async () => {
    writeFileSync(join(folder, 'taken'), '');
    expect(await plan(order, '--out', 'taken')).toBe(2);
  });
});
