import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { type EmbeddedPostgres, startEmbeddedPostgres } from '../../libs/store/src/embedded/index.js';

const query = async (url: string, sql: string): Promise<unknown[]> => {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => undefined);
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end().catch(() => undefined);
  }
};

describe('the embedded PostgreSQL', () => {
  let folder: string;
  let said: string[];
  const home = (): string => join(folder, 'postgres');
  const start = (): Promise<EmbeddedPostgres> =>
    startEmbeddedPostgres({ dataDir: home(), log: (text) => said.push(text) });
  const pid = (): number =>
    Number(readFileSync(join(home(), 'data', 'postmaster.pid'), 'utf8').split('\n')[0]);

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'sidelay-embedded-'));
    chmodSync(folder, 0o755);
    said = [];
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('keeps what was written over a stop and a second start, on the same port', async () => {
    const first = await start();
    await query(first.url, 'CREATE TABLE kept (n int); INSERT INTO kept VALUES (7)');
    await first.stop();
    const second = await start();
    expect(second.url).toBe(first.url);
    expect(await query(second.url, 'SELECT n FROM kept')).toEqual([{ n: 7 }]);
    expect(await query(second.url, 'SHOW fsync')).toEqual([{ fsync: 'on' }]);
    await second.stop();
  });

  it('takes over a server that outlived the process which started it', async () => {
    const orphan = await start();
    const before = pid();
    // As after kill -9 of Node: the owner's number is nobody's any more.
    writeFileSync(join(home(), 'owner'), '999999\n');
    const second = await start();
    expect(pid()).toBe(before);
    expect(said.join()).toMatch(/took over/);
    await second.stop();
    await expect(query(orphan.url, 'SELECT 1')).rejects.toThrow();
  });

  it('comes back after its server was killed without ceremony', async () => {
    const first = await start();
    await query(first.url, 'CREATE TABLE kept (n int); INSERT INTO kept VALUES (8)');
    process.kill(pid(), 'SIGKILL');
    const second = await start();
    expect(await query(second.url, 'SELECT n FROM kept')).toEqual([{ n: 8 }]);
    await second.stop();
  });

  it('is started again when its server is killed while it is in use', async () => {
    const database = await start();
    await query(database.url, 'CREATE TABLE kept (n int); INSERT INTO kept VALUES (9)');
    process.kill(pid(), 'SIGKILL');
    let rows: unknown = null;
    while (rows === null) rows = await query(database.url, 'SELECT n FROM kept').catch(() => null);
    expect(rows).toEqual([{ n: 9 }]);
    await database.stop();
    await expect(query(database.url, 'SELECT 1')).rejects.toThrow();
  });

  it('leaves another PostgreSQL alone that an old pid file names', async () => {
    const first = await start();
    await first.stop();
    const other = await startEmbeddedPostgres({ dataDir: join(folder, 'other'), log: () => undefined });
    const note = readFileSync(join(folder, 'other', 'data', 'postmaster.pid'), 'utf8');
    writeFileSync(join(home(), 'data', 'postmaster.pid'), note.replace('other', 'postgres'));
    const second = await start();
    expect(second.url).not.toBe(other.url);
    expect(await query(other.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await Promise.all([second.stop(), other.stop()]);
  });

  it('takes no making of the data folder that was cut short for a whole one', async () => {
    mkdirSync(join(home(), 'data.part'), { recursive: true });
    // initdb writes this file first of all.
    writeFileSync(join(home(), 'data.part', 'PG_VERSION'), '18\n');
    const database = await start();
    expect(await query(database.url, `SELECT 'Ä' ILIKE 'ä' AS "sameLetter"`)).toEqual([{ sameLetter: true }]);
    await database.stop();
  });

  it('is not misled by a pid file whose number belongs to another program', async () => {
    const first = await start();
    await first.stop();
    writeFileSync(
      join(home(), 'data', 'postmaster.pid'),
      `${process.pid}\n${home()}/data\n0\n5999\n\n127.0.0.1\n\nready\n`,
    );
    const second = await start();
    expect(await query(second.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await second.stop();
  });

  it('makes its data folder again when the first making was cut short', async () => {
    mkdirSync(join(home(), 'data', 'base'), { recursive: true });
    const database = await start();
    expect(await query(database.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await database.stop();
  });

  it('starts below a folder that only its owner may enter', async () => {
    chmodSync(folder, 0o700);
    const database = await start();
    expect(await query(database.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
    await database.stop();
    // As root the database has an account of its own, which can't go there: it is kept elsewhere, and said where.
    const elsewhere = join(home(), 'kept-at');
    if (existsSync(elsewhere)) {
      expect(said.join()).toContain(readFileSync(elsewhere, 'utf8').trim());
      rmSync(readFileSync(elsewhere, 'utf8').trim(), { recursive: true });
    }
  });

  it('asks for its password', async () => {
    const database = await start();
    const stranger = new URL(database.url);
    stranger.password = 'guess';
    await expect(query(stranger.href, 'SELECT 1')).rejects.toThrow(/password/);
    await database.stop();
  });
});
