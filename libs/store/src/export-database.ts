import pg from 'pg';
import { getMetadataArgsStorage } from 'typeorm';
import { asFault, ask } from './ask.js';
import { quoted } from './database.js';
import { entities } from './entities/index.js';

/** The first line of an export. */
export interface Heading {
  readonly format: 'sidelay-database';
  /** The migrations that the rows below fit, in order. */
  readonly migrations: readonly string[];
}

/** Every further line: a row of a table, tables that others refer to first. */
export interface Line {
  readonly table: string;
  readonly row: Readonly<Record<string, unknown>>;
}

/** Works on a connection of its own; whatever fails there is a `Fault`. */
export async function connected<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url, application_name: 'sidelay' });
  // A connection that breaks fails the statement under way as well, which is where it is told.
  client.on('error', () => undefined);
  try {
    await client.connect();
    return await work(client);
  } catch (cause) {
    throw asFault(cause);
  } finally {
    await client.end().catch(() => undefined);
  }
}

const tablesInOrder = (): readonly string[] =>
  entities.flatMap((entity) =>
    getMetadataArgsStorage()
      .filterTables(entity)
      .flatMap((table) => table.name ?? []),
  );

/**
 * All rows of a store as lines of JSON, as they are at one instant, with the migrations they fit: enough to build the
 * same database anywhere and to bring it to a later version. In memory as a whole: for fixtures and small plants.
 */
export async function exportDatabase(url: string, schema = 'sidelay'): Promise<string> {
  return connected(url, async (client) => {
    await ask(client, 'BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    const run = await ask<{ name: string }>(
      client,
      `SELECT name FROM ${quoted(schema)}.migration ORDER BY id`,
    );
    const heading: Heading = { format: 'sidelay-database', migrations: run.map(({ name }) => name) };
    const lines: (Heading | Line)[] = [heading];
    for (const table of tablesInOrder()) {
      // In the order of all there is in a row, so that the same rows always make the same export.
      const rows = await ask<{ row: Line['row'] }>(
        client,
        `SELECT row_to_json(t) AS row FROM ${quoted(schema)}."${table}" t ORDER BY t::text COLLATE "C"`,
      );
      for (const { row } of rows) lines.push({ table, row });
    }
    await ask(client, 'COMMIT');
    return `${lines.map((line) => JSON.stringify(line)).join('\n')}\n`;
  });
}
