import { readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeAddressGuard } from './address-guard.js';

/**
 * Every line of three published path-traversal lists (swisskyrepo/PayloadsAllTheThings, "Directory Traversal/Intruder",
 * MIT; commit in the check data's README). A lane of its own: it needs SIDELAY_CHECKDATA_DIR, and file-address.spec.ts
 * keeps the main forms for a clone without them.
 */
const folder = join(process.env.SIDELAY_CHECKDATA_DIR ?? '', 'attacks', 'traversal');
const files = ['directory_traversal.txt', 'deep_traversal.txt', 'traversals-8-deep-exotic-encoding.txt'];

describe('published traversal lists', () => {
  it('never lead out of the root, whatever they are hung onto', async () => {
    const base = await mkdtemp(join(tmpdir(), 'sidelay-traversal-'));
    const root = join(base, 'a', 'b', 'c', 'd', 'e', 'f', 'g', 'jobs');
    await mkdir(root, { recursive: true });
    await writeFile(join(base, 'secret'), 'secret');
    await writeFile(join(root, 'secret'), 'open');
    const guard = makeAddressGuard({ fileRoots: [root], allowedHosts: ['*'], registeredDevices: () => [] });
    const at = pathToFileURL(root).href;
    let tried = 0;
    const led: string[] = [];
    for (const file of files) {
      for (const line of readFileSync(join(folder, file), 'utf8').split('\n')) {
        const payload = line.trim().replaceAll('{FILE}', 'secret');
        if (payload === '') continue;
        for (const url of [`${at}/${payload}`, `${at}${payload}`, `file://${payload}`, payload]) {
          tried++;
          const answer = await guard.check(url);
          if (answer.ok) led.push(url);
        }
      }
    }
    await rm(base, { recursive: true });
    expect(tried).toBeGreaterThan(4 * 1900);
    expect(led.filter((url) => !url.startsWith(at))).toEqual([]);
    expect(led).toEqual([]);
  }, 30_000);
});
