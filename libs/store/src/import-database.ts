import { Fault } from '#libs/kernel';
import { asFault, ask } from './ask.js';
import { openDatabase, quoted } from './database.js';
import { connected, type Heading, type Line } from './export-database.js';
import { migrations } from './migrations/index.js';

const NOT_ONE = 'the text is no export of a database';

/**
 * Builds a store from an export in a schema that has none yet, at the version of the export; the next `openStore` brings
 * it to the present one. Throws a `Fault` for what is no export, for one of a later version, and for a schema in use.
 */
export async function importDatabase(url: string, text: string, schema = 'sidelay'): Promise<void> {
  const [first = '', ...rest] = text.split('\n').filter((line) => line !== '');
  const heading = headingOf(first);
  const rows = rowsByTable(rest);
  const fitting = migrations.filter((Migration) => heading.migrations.includes(new Migration().name ?? ''));
  if (fitting.length !== heading.migrations.length) {
    throw new Fault('REQUEST_INVALID', 'the export is of a later version than this one');
  }
  await refuseUsedSchema(url, schema);
  const options = { url, schema, connections: 1, onTrouble: () => undefined, migrations: fitting };
  const database = await openDatabase(options).catch((cause: unknown) => Promise.reject(asFault(cause)));
  await database.close();
  await connected(url, async (client) => {
    await ask(client, 'BEGIN');
    for (const [table, lines] of rows) {
      const name = `${quoted(schema)}."${table}"`;
      await ask(
        client,
        `INSERT INTO ${name} SELECT * FROM json_populate_recordset(NULL::${name}, $1::json)`,
        [JSON.stringify(lines)],
      );
    }
    const event = `${quoted(schema)}.event`;
    await ask(
      client,
      `SELECT setval(pg_get_serial_sequence($1, 'id'), (SELECT coalesce(max(id), 0) + 1 FROM ${event}), false)`,
      [event],
    );
    await ask(client, 'COMMIT');
  });
}

function headingOf(line: string): Heading {
  const value = parsed(line);
  if (!isRecord(value) || value.format !== 'sidelay-database' || !Array.isArray(value.migrations)) {
    throw new Fault('REQUEST_INVALID', NOT_ONE);
  }
  return { format: value.format, migrations: value.migrations.map(String) };
}

/** Rows under the table they belong to, tables in the order of the lines. */
function rowsByTable(lines: readonly string[]): ReadonlyMap<string, readonly Line['row'][]> {
  const tables = new Map<string, Line['row'][]>();
  for (const line of lines) {
    const value = parsed(line);
    // The name becomes part of a statement.
    if (!isRecord(value) || !isRecord(value.row) || !/^[a-z_]+$/.test(String(value.table))) {
      throw new Fault('REQUEST_INVALID', NOT_ONE);
    }
    const table = String(value.table);
    const rows = tables.get(table) ?? [];
    rows.push(value.row);
    tables.set(table, rows);
  }
  return tables;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (cause) {
    throw new Fault('REQUEST_INVALID', NOT_ONE, { cause });
  }
}

async function refuseUsedSchema(url: string, schema: string): Promise<void> {
  const tables = await connected(url, (client) =>
    ask(client, 'SELECT 1 FROM pg_tables WHERE schemaname = $1 LIMIT 1', [schema]),
  );
  if (tables.length > 0) throw new Fault('STATE_FORBIDS', `the schema ${schema} holds tables already`);
}
