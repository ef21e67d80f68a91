import { link, mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeAddressGuard } from './address-guard.js';
import { readCheckedFile, readFileUrl } from './file-address.js';

describe('the address guard on files', () => {
  let base: string;
  let root: string;
  beforeAll(async () => {
    base = await mkdtemp(join(tmpdir(), 'sidelay-guard-'));
    root = join(base, 'jobs');
    await mkdir(join(root, 'in'), { recursive: true });
    await mkdir(join(base, 'jobs-of-others'));
    await writeFile(join(root, 'in', 'Programmheft ä%2e.jdf'), 'inside');
    await writeFile(join(base, 'secret.txt'), 'secret');
    await writeFile(join(base, 'jobs-of-others', 'a.jdf'), 'other');
    await symlink(join(base, 'secret.txt'), join(root, 'link.jdf'));
    await symlink(base, join(root, 'out'));
    await symlink(root, join(base, 'way-in'));
    await link(join(root, 'in', 'Programmheft ä%2e.jdf'), join(root, 'twin.jdf'));
  });
  afterAll(() => rm(base, { recursive: true }));

  const check = (url: string, roots = [root]) =>
    makeAddressGuard({ fileRoots: roots, allowedHosts: ['*'], registeredDevices: () => [] }).check(url);

  it('reads a file below a root, under a name that needs escaping', async () => {
    const url = `${pathToFileURL(root).href}/in/Programmheft%20%C3%A4%252e.jdf`;
    const answer = await check(url);
    expect(answer).toMatchObject({ ok: true, value: { kind: 'file' } });
    if (!answer.ok || answer.value.kind !== 'file') throw new Error('refused');
    const bytes = await readCheckedFile(url, answer.value.path, 1000);
    expect(bytes.ok && Buffer.from(bytes.value).toString()).toBe('inside');
    expect(await readCheckedFile(url, answer.value.path, 5)).toMatchObject({
      ok: false,
      problems: [{ code: 'URL_UNREADABLE' }],
    });
  });

  it('accepts a root that is itself reached through a link', async () => {
    expect((await check(`${pathToFileURL(root).href}/twin.jdf`, [join(base, 'way-in')])).ok).toBe(true);
  });

  it('refuses links, folders whose name only begins like a root, and what is outside', async () => {
    const at = pathToFileURL(base).href;
    for (const path of [
      'jobs/link.jdf',
      'jobs/out/secret.txt',
      'jobs-of-others/a.jdf',
      'secret.txt',
      'jobs/absent',
    ]) {
      const answer = await check(`${at}/${path}`);
      expect([path, answer.ok]).toEqual([path, false]);
    }
  });

  it('gives one answer for what is absent and what is outside, so that it cannot be used to look around', async () => {
    const at = pathToFileURL(base).href;
    const say = async (path: string): Promise<string> => {
      const answer = await check(`${at}/${path}`);
      return answer.ok ? 'open' : answer.problems[0]!.message.replace(path, '');
    };
    expect(await say('secret.txt')).toBe(await say('nothing-here.txt'));
  });

  it('opens no file when there is no root, and reads no folder', async () => {
    expect((await check(`${pathToFileURL(root).href}/twin.jdf`, [])).ok).toBe(false);
    expect((await readCheckedFile('file:///x', join(root, 'in'), 10)).ok).toBe(false);
  });

  // The standard's own sample of an escaped address: JDF 1.9 samples, ap_encoding/simpleType_URL_EscapedChars.jdf.
  it('refuses the address of another machine', () => {
    expect(readFileUrl('file://myHost/a/c%20%c3%a4%c3%b6%c3%bc%25.pdf').ok).toBe(false);
    expect(readFileUrl('file:///a/c%20%c3%a4%c3%b6%c3%bc%25.pdf')).toMatchObject({
      ok: true,
      value: '/a/c äöü%.pdf',
    });
  });

  it.each([
    'file:///a/../b',
    'file:///a/%2e%2e/b',
    'file:///a/.%2E/b',
    'file:///a/./b',
    'file:///a/..%2fb',
    'file:///a\\..\\b',
    'file:///a/..%5cb',
    'file:///a%00.jdf',
    'file:///a\u0000',
    'file:///a/%c0%ae%c0%ae/b',
    'file:///a/．．/b',
    'file:///a／..／b',
    'file:////server/share/a',
    'file://server/share/a',
    'file:/a',
    'file:a',
    'file:///C:/a',
    'file:///a?x',
    'file:///a#x',
    'file:///a/.. /b',
    'file:///a/..;/b',
  ])('refuses an address that reads in two ways: %j', (url) => {
    expect(readFileUrl(url)).toMatchObject({ ok: false, problems: [{ code: 'URL_REFUSED' }] });
  });
});
