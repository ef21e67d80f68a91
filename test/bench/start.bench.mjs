import { once } from 'node:events';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startEmbeddedPostgres } from '../../dist/libs/store/src/index.js';
import { alternate } from './alternate.mjs';
import { startServer } from './server-run.mjs';

export const name = 'start';
export const unit = 's to ready';
export const better = 'lower';
export const target = 6;
export const note =
  'the server process with its embedded PostgreSQL, on a folder that exists, against the same PostgreSQL and a bare HTTP server in a process that runs already';

const timed = (work) => async () => {
  const start = performance.now();
  const end = await work();
  const seconds = (performance.now() - start) / 1000;
  await end();
  return seconds;
};

export async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-bench-'));
  chmodSync(folder, 0o755);
  try {
    const ours = timed(async () => {
      const server = await startServer({ SIDELAY_DATA_DIR: join(folder, 'ours') });
      return () => server.stop();
    });
    const peer = timed(async () => {
      const database = await startEmbeddedPostgres({ dataDir: join(folder, 'peer'), log: () => undefined });
      const client = new pg.Client({ connectionString: database.url });
      await client.connect();
      const server = createServer(async (_request, response) =>
        response.end(JSON.stringify((await client.query('SELECT 1')).rows)),
      );
      server.listen(0, '127.0.0.1');
      await once(server, 'listening');
      await fetch(`http://127.0.0.1:${server.address().port}/`);
      return async () => {
        server.close();
        await client.end();
        await database.stop();
      };
    });
    return await alternate({ ours, peer, rounds: 3 });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
