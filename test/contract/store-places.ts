import pg from 'pg';

/** A database server that the runner found, by the name it has in test titles. */
export interface Place {
  readonly name: string;
  readonly url: string;
}

const named = (name: string, variable: string): Place[] => {
  const url = process.env[variable];
  return url ? [{ name, url }] : [];
};

/** The runner (scripts/services.mjs) sets a variable only when the service answers, and names what is left out. */
export const places: readonly Place[] = [
  ...named('embedded PostgreSQL', 'SIDELAY_TEST_EMBEDDED_URL'),
  ...named('PostgreSQL server', 'SIDELAY_TEST_DATABASE_URL'),
];

if (places.length === 0) {
  throw new Error('no database to test with: use "npm test -- store", or set SIDELAY_TEST_DATABASE_URL');
}

let counter = 0;

/** A schema name that no other test file, worker or run uses at the same time. */
export const freshSchema = (): string => `t_${process.pid}_${Math.floor(performance.now())}_${counter++}`;

/** Runs statements as an outsider would, beside the store. */
export async function withClient<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

export const dropSchema = (url: string, schema: string): Promise<unknown> =>
  withClient(url, (client) => client.query(`DROP SCHEMA IF EXISTS "${schema}" CASCADE`));
