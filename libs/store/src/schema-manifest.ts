import type { Database } from './database.js';

/** What a schema holds, as the database itself tells it. Text for text comparable, whatever the server's version. */
export interface SchemaManifest {
  readonly migrations: readonly string[];
  readonly tables: Readonly<Record<string, TableManifest>>;
}

export interface TableManifest {
  /** `planned_start: bigint` or `id: text not null` */
  readonly columns: readonly string[];
  readonly constraints: readonly string[];
  readonly indexes: readonly string[];
}

const COLUMNS = `SELECT c.relname AS "table", a.attname || ': ' || format_type(a.atttypid, a.atttypmod)
    || CASE WHEN a.attnotnull THEN ' not null' ELSE '' END
    || CASE a.attidentity WHEN '' THEN '' ELSE ' identity' END AS line
  FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
    JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
  WHERE n.nspname = $1 AND c.relkind = 'r' ORDER BY c.relname, a.attnum`;

// PostgreSQL 18 lists NOT NULL among the constraints, older ones do not; the columns say it already.
const CONSTRAINTS = `SELECT c.relname AS "table", k.conname || ': ' || pg_get_constraintdef(k.oid) AS line
  FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid JOIN pg_namespace n ON n.oid = c.relnamespace
  WHERE n.nspname = $1 AND k.contype <> 'n' ORDER BY c.relname, k.conname`;

const INDEXES = `SELECT tablename AS "table", indexname || ': ' || regexp_replace(indexdef, '^.* USING ', '') AS line
  FROM pg_indexes WHERE schemaname = $1 ORDER BY tablename, indexname`;

/** Reads what is really there, without TypeORM's own table of migrations; their names head the manifest instead. */
export async function readManifest({ pool, schema }: Database): Promise<SchemaManifest> {
  const lines = async (sql: string): Promise<(table: string) => string[]> => {
    const { rows } = await pool.query<{ table: string; line: string }>(sql, [schema]);
    // The schema's own name differs from one installation to the next.
    return (table) =>
      rows
        .filter((row) => row.table === table)
        .map((row) => row.line.replaceAll(`${schema}.`, '').replaceAll(`"${schema}".`, ''));
  };
  const [columns, constraints, indexes] = await Promise.all([COLUMNS, CONSTRAINTS, INDEXES].map(lines));
  const names = await pool.query<{ name: string }>(
    `SELECT c.relname AS name FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
      WHERE n.nspname = $1 AND c.relkind = 'r' AND c.relname <> 'migration' ORDER BY 1`,
    [schema],
  );
  const run = await pool.query<{ name: string }>(`SELECT name FROM "${schema}".migration ORDER BY id`);
  return {
    migrations: run.rows.map(({ name }) => name),
    tables: Object.fromEntries(
      names.rows.map(({ name }) => [
        name,
        {
          columns: columns?.(name) ?? [],
          constraints: constraints?.(name) ?? [],
          indexes: indexes?.(name) ?? [],
        },
      ]),
    ),
  };
}
