import type { DataSource, EntityTarget, ObjectLiteral } from 'typeorm';
import { quoted } from './database.js';

interface Column {
  readonly property: string;
  readonly name: string;
  readonly type: string;
  readonly isKey: boolean;
}

/**
 * The statements of one table, made from its entity. Rows travel as one JSON text each way: one parameter whatever
 * their number, so that every statement has one text and is planned once, and bigint and numeric arrive as numbers.
 */
export interface Table {
  /** Schema and name, quoted. */
  readonly name: string;
  /** `alias.planned_start AS "plannedStart", …` */
  select(alias: string): string;
  /** Rows of the JSON parameter `$n`, new to the table. */
  insert(n: number): string;
  /** Rows of the JSON parameter `$n`, written over those with the same key. */
  upsert(n: number): string;
  /** Takes out the rows whose keys are in the JSON parameter `$n`. */
  remove(n: number): string;
}

/** `drawn`: columns that the database fills, never part of what is written. */
export function tableOf(
  source: DataSource,
  entity: EntityTarget<ObjectLiteral>,
  drawn: readonly string[] = [],
): Table {
  const metadata = source.getMetadata(entity);
  const name = `${quoted(metadata.schema ?? 'public')}."${metadata.tableName}"`;
  const columns: readonly Column[] = metadata.columns.map((column) => ({
    property: column.propertyName,
    name: `"${column.databaseName}"`,
    type: String(column.type),
    isKey: column.isPrimary,
  }));
  const written = columns.filter((column) => !drawn.includes(column.property));
  const keys = columns.filter((column) => column.isKey);
  const others = written.filter((column) => !column.isKey);
  const insert = (n: number): string =>
    `INSERT INTO ${name} (${written.map((c) => c.name).join(', ')}) SELECT ${written.map(value).join(', ')} FROM ${rows(n, written)}`;
  return {
    name,
    select: (alias) => columns.map((c) => `${alias}.${c.name} AS "${c.property}"`).join(', '),
    insert,
    upsert: (n) =>
      `${insert(n)} ON CONFLICT (${keys.map((c) => c.name).join(', ')}) DO UPDATE SET ${others
        .map((c) => `${c.name} = excluded.${c.name}`)
        .join(', ')}`,
    remove: (n) =>
      `DELETE FROM ${name} t USING ${rows(n, keys)} WHERE ${keys
        .map((c) => `t.${c.name} = ${value(c)}`)
        .join(' AND ')}`,
  };
}

const isWhole = (column: Column): boolean => column.type === 'bigint' || column.type === 'integer';

// A planned instant can come out of a division; the database keeps whole milliseconds.
const value = (column: Column): string =>
  isWhole(column) ? `round(r."${column.property}")::${column.type}` : `r."${column.property}"`;

const rows = (n: number, columns: readonly Column[]): string =>
  `json_to_recordset($${n}::json) AS r(${columns
    .map((c) => `"${c.property}" ${isWhole(c) ? 'numeric' : c.type}`)
    .join(', ')})`;

/** JSON as PostgreSQL takes it: it keeps neither NUL nor half a surrogate pair, so U+FFFD stands for each. */
export function asJson(value: unknown): string {
  const text = JSON.stringify(value);
  if (!/\\u(0000|d[89a-f])/i.test(text)) return text;
  return JSON.stringify(value, (_key, part: unknown) => (typeof part === 'string' ? storable(part) : part));
}

const storable = (text: string): string =>
  text.replaceAll('\0', '\uFFFD').replace(/\p{Surrogate}/gu, '\uFFFD');
