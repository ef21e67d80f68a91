import pg from 'pg';

export interface OwnDatabase {
  readonly url: string;
  drop(): Promise<void>;
}

let count = 0;

/** A fresh database on the test server, so that tests that run whole servers never meet. */
export async function ownDatabase(serverUrl = embeddedUrl()): Promise<OwnDatabase> {
  const name = `sidelay_test_${process.pid}_${++count}_${Math.floor(Math.random() * 1e9)}`;
  await run(serverUrl, `CREATE DATABASE ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return { url: url.href, drop: () => run(serverUrl, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`) };
}

/** The embedded server that the test runner started. */
export function embeddedUrl(): string {
  const url = process.env.SIDELAY_TEST_EMBEDDED_URL;
  if (!url) throw new Error('SIDELAY_TEST_EMBEDDED_URL is not set: run these tests by `npm test`');
  return url;
}

async function run(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
