import { mkdir, mkdtemp, readdir, readFile, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { error, plantClock, VirtualClock } from '#libs/kernel';
import type { HotFolderAnswer, HotFolderFile } from './settings.js';
import { type HotFolderWatch, watchHotFolder } from './watch-hot-folder.js';

const START = Date.parse('2025-03-03T06:00:00Z');

describe('the hot folder', () => {
  let folder: string;
  let clock: VirtualClock;
  let watches: HotFolderWatch[];
  let files: HotFolderFile[];
  let troubles: string[];
  beforeEach(async () => {
    folder = join(await mkdtemp(join(tmpdir(), 'sidelay-hot-')), 'inbox');
    clock = new VirtualClock(START);
    [watches, files, troubles] = [[], [], []];
  });
  afterEach(async () => {
    for (const watch of watches) await watch.stop();
    await rm(join(folder, '..'), { recursive: true });
  });

  async function start(onFile?: (file: HotFolderFile) => Promise<HotFolderAnswer>): Promise<HotFolderWatch> {
    const watch = await watchHotFolder({
      folder,
      clock,
      maxBytes: 1000,
      onFile: async (file) => {
        files.push(file);
        return onFile === undefined ? { accepted: 'T1' } : onFile(file);
      },
      onTrouble: (name) => troubles.push(name),
    });
    watches.push(watch);
    return watch;
  }
  const seconds = (n: number): Promise<void> => clock.runUntil(clock.now() + n * 1000);
  const drop = (name: string, text: string): Promise<void> => writeFile(join(folder, name), text);
  const list = async (place = ''): Promise<string[]> => (await readdir(join(folder, place))).sort();

  it('hands over a finished file and moves it to accepted', async () => {
    await start();
    await drop('Plakat.jdf', '<JDF/>');
    await seconds(2);
    expect(files).toEqual([]);
    await seconds(1);
    expect(files.map(({ name, bytes }) => [name, Buffer.from(bytes).toString()])).toEqual([
      ['Plakat.jdf', '<JDF/>'],
    ]);
    expect([await list(), await list('accepted')]).toEqual([['accepted', 'rejected'], ['Plakat.jdf']]);
  });

  it('waits until a file no longer grows', async () => {
    await start();
    for (let i = 1; i <= 5; i++) {
      await drop('a.jdf', 'x'.repeat(i));
      await seconds(2);
    }
    expect(files).toEqual([]);
    await seconds(2);
    expect(files.map(({ bytes }) => bytes.length)).toEqual([5]);
  });

  it('gives an empty file longer, for its writer may have only just opened it', async () => {
    await start();
    await drop('a.jdf', '');
    await seconds(15);
    await drop('a.jdf', '<JDF/>');
    await seconds(4);
    await drop('b.jdf', '');
    await seconds(30);
    expect(files.map(({ name, bytes }) => [name, bytes.length])).toEqual([
      ['a.jdf', 6],
      ['b.jdf', 0],
    ]);
  });

  it('writes the reasons beside a rejected file', async () => {
    const why = error('XML_NOT_WELL_FORMED', 'The element is not closed.', { line: 3 });
    await start(async () => ({ rejected: [why] }));
    await drop('a.jdf', '<JDF>');
    await seconds(3);
    expect(await list('rejected')).toEqual(['a.jdf', 'a.jdf.reasons.json']);
    const reasons = JSON.parse(await readFile(join(folder, 'rejected', 'a.jdf.reasons.json'), 'utf8'));
    expect(reasons).toEqual({ file: 'a.jdf', time: '2025-03-03T06:00:03.000Z', problems: [why] });
  });

  it('numbers a file when its name is taken, and overwrites nothing', async () => {
    await start(async ({ bytes }) => (bytes[0] === 0x21 ? { rejected: [] } : { accepted: 'T' }));
    for (const text of ['one', 'two', '!1', 'three', '!2']) {
      await drop('a.jdf', text);
      await seconds(4);
    }
    const texts = (place: string, names: string[]): Promise<string[]> =>
      Promise.all(names.map((name) => readFile(join(folder, place, name), 'utf8')));
    expect(await texts('accepted', ['a.jdf', 'a-2.jdf', 'a-3.jdf'])).toEqual(['one', 'two', 'three']);
    expect(await texts('rejected', ['a.jdf', 'a-2.jdf'])).toEqual(['!1', '!2']);
    expect(await list('rejected')).toContain('a-2.jdf.reasons.json');
  });

  it('leaves hidden and half-written files and folders where they are', async () => {
    await start();
    for (const name of ['.hidden', 'a.jdf.tmp', 'b.PART']) await drop(name, '<JDF/>');
    await mkdir(join(folder, 'sub'));
    await seconds(60);
    expect(files).toEqual([]);
    expect(await list()).toEqual(['.hidden', 'a.jdf.tmp', 'accepted', 'b.PART', 'rejected', 'sub']);
  });

  it('puts links and pipes away unread, and what they point at stays', async () => {
    await start();
    await writeFile(join(folder, '..', 'secret'), 'secret');
    await symlink(join(folder, '..', 'secret'), join(folder, 'link.jdf'));
    const server = createServer();
    await new Promise<void>((resolve) => server.listen(join(folder, 'pipe.jdf'), resolve));
    await seconds(5);
    expect(files).toEqual([]);
    expect(await list('rejected')).toEqual([
      'link.jdf',
      'link.jdf.reasons.json',
      'pipe.jdf',
      'pipe.jdf.reasons.json',
    ]);
    expect(await readFile(join(folder, '..', 'secret'), 'utf8')).toBe('secret');
    await new Promise((resolve) => server.close(resolve));
  });

  it('rejects a file beyond the size limit without reading it', async () => {
    await start();
    await drop('a.jdf', 'x'.repeat(1001));
    await seconds(3);
    expect(files).toEqual([]);
    expect(await readFile(join(folder, 'rejected', 'a.jdf.reasons.json'), 'utf8')).toContain(
      'BODY_TOO_LARGE',
    );
  });

  it('comes again with the same key when the server died between the answer and the move', async () => {
    await start(async () => {
      throw new Error('killed');
    });
    await drop('a.jdf', '<JDF/>');
    await seconds(3);
    await watches[0]!.stop();
    expect([troubles, await list()]).toEqual([['a.jdf'], ['a.jdf', 'accepted', 'rejected']]);
    await start();
    await seconds(3);
    expect(files.length).toBe(2);
    expect(files[1]!.key).toBe(files[0]!.key);
    expect(await list('accepted')).toEqual(['a.jdf']);
  });

  it('has another key for another content or another name', async () => {
    await start();
    await drop('a.jdf', '<JDF/>');
    await drop('b.jdf', '<JDF/>');
    await drop('c.jdf', '<JDF />');
    await seconds(3);
    expect(new Set(files.map(({ key }) => key)).size).toBe(3);
  });

  it('judges a file anew that was replaced while the first was judged', async () => {
    await start(async ({ bytes }) => {
      if (bytes.length === 3) {
        await drop('a.jdf', 'second');
        await utimes(join(folder, 'a.jdf'), 1, 1);
      }
      return { accepted: 'T' };
    });
    await drop('a.jdf', 'one');
    await seconds(10);
    expect(files.map(({ bytes }) => Buffer.from(bytes).toString())).toEqual(['one', 'second']);
    expect(await readFile(join(folder, 'accepted', 'a.jdf'), 'utf8')).toBe('second');
  });

  it('leaves a file to whoever moves it first when two servers watch one folder', async () => {
    await Promise.all([start(), start()]);
    await drop('a.jdf', '<JDF/>');
    for (let i = 0; i < 4; i++) await Promise.all(watches.map((watch) => watch.look()));
    expect(new Set(files.map(({ key }) => key)).size).toBe(1);
    expect([await list(), await list('accepted')]).toEqual([['accepted', 'rejected'], ['a.jdf']]);
    expect(troubles).toEqual([]);
  });

  it('looks in real seconds under a plant clock, however fast that runs', async () => {
    const waits: number[] = [];
    const wall = {
      now: () => START,
      setTimeout: (_task: () => void, ms: number) => {
        waits.push(ms);
        return () => undefined;
      },
    };
    const fast = plantClock({ plantStart: START, realStart: START, factor: 60 }, wall);
    watches.push(
      await watchHotFolder({
        folder,
        clock: fast,
        everyS: 2,
        maxBytes: 1,
        onFile: async () => ({ accepted: '' }),
        onTrouble: () => undefined,
      }),
    );
    expect(waits).toEqual([2000]);
  });
});
