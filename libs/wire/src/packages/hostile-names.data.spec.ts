import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { readFileName } from './file-name.js';
import { readZip } from './read-zip.js';
import { resolveReference } from './resolve-reference.js';

/**
 * Every line of three published path-traversal lists (swisskyrepo/PayloadsAllTheThings, "Directory Traversal/Intruder",
 * MIT; commit in the check data's README), as what a package could call a part, an entry or an address.
 */
const folder = join(process.env.SIDELAY_CHECKDATA_DIR ?? '', 'attacks', 'traversal');
const payloads = [
  'directory_traversal.txt',
  'deep_traversal.txt',
  'traversals-8-deep-exotic-encoding.txt',
].flatMap((file) =>
  readFileSync(join(folder, file), 'utf8')
    .split('\n')
    .map((line) => line.trim().replaceAll('{FILE}', 'secret'))
    .filter((line) => line !== ''),
);

describe('published path-traversal lists', () => {
  it('never make a part’s name more than one plain step', () => {
    expect(payloads.length).toBeGreaterThan(1900);
    for (const payload of payloads) {
      const escaped = encodeURIComponent(payload.replace(/[\ud800-\udfff]/g, ''));
      for (const value of [
        `filename="${payload.replace(/["\\]/g, '\\$&')}"`,
        `filename*=UTF-8''${escaped}`,
      ]) {
        const name = readFileName(`attachment; ${value}`, undefined);
        expect([payload, name === null || !/[/\\]|^\.\.?$/.test(name)]).toEqual([payload, true]);
      }
    }
  });

  it('never give a ZIP a part whose name climbs or is absolute', async () => {
    let named = 0;
    for (const payload of payloads) {
      const zip = zipSync({ 'job.jdf': Buffer.from('<JDF/>'), [payload]: Buffer.from('x') });
      const pack = await readZip(zip);
      const names = pack.ok ? pack.value.parts.map(({ name }) => name) : [];
      if (names.length > 1) named++;
      expect([payload, names.filter((name) => /^[/\\]|(^|[/\\])\.\.([/\\]|$)/.test(name))]).toEqual([
        payload,
        [],
      ]);
    }
    // Some are plain names as long as nobody unescapes them; were every ZIP refused, nothing would be shown.
    expect(named).toBeGreaterThan(0);
  }, 60_000);

  it('never lead out of a package as an address, even to a file of that very name', () => {
    const inside = { name: 'a/b/job.xjdf', contentId: null };
    const pack = { container: 'zip' as const, parts: [inside, { name: 'a/b/secret', contentId: null }] };
    for (const payload of payloads) {
      const answer = resolveReference(pack, inside, payload);
      const name = answer.ok ? answer.value.name : null;
      expect([payload, name === null || name.startsWith('a/b/')]).toEqual([payload, true]);
    }
  });
});
