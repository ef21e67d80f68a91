import pg from 'pg';
import { QueryFailedError } from 'typeorm';
import { Fault } from '#libs/kernel';

export type Queryable = pg.Pool | pg.ClientBase;

// SQLSTATE codes and classes: PostgreSQL manual, appendix A.
const DEADLOCK = '40P01';
const SERIALISATION = '40001';
const UNIQUE = '23505';
/** Connection, resources, operator intervention, system. */
const AWAY = /^(08|53|57|58)/;

/** One statement, every failure of which is a `Fault`: so nobody above has to know node-postgres. */
export async function ask<T extends object>(
  client: Queryable,
  text: string,
  values: readonly unknown[] = [],
  name?: string,
): Promise<readonly T[]> {
  try {
    const answer = await client.query<T>({ name, text, values: [...values] });
    return answer.rows;
  } catch (cause) {
    throw asFault(cause);
  }
}

/** The rows of a select as JSON made by the database: bigint and numeric arrive as numbers. */
export async function askRows<T>(
  client: Queryable,
  text: string,
  values: readonly unknown[] = [],
  name?: string,
): Promise<readonly T[]> {
  const rows = await ask<{ row: T }>(client, `SELECT row_to_json(x) AS row FROM (${text}) x`, values, name);
  return rows.map(({ row }) => row);
}

/** Whatever comes out of node-postgres is either an answer of the database with an SQLSTATE, or no answer. */
export function asFault(thrown: unknown): Fault {
  if (thrown instanceof Fault) return thrown;
  const cause: unknown = thrown instanceof QueryFailedError ? thrown.driverError : thrown;
  if (!(cause instanceof pg.DatabaseError)) {
    return new Fault('DATABASE', 'the database does not answer', { cause });
  }
  const code = AWAY.test(cause.code ?? '') ? 'DATABASE' : 'BROKEN';
  return new Fault(code, `the database refused with ${cause.code}: ${cause.message}`, { cause });
}

const refusal = (fault: unknown): pg.DatabaseError | null =>
  fault instanceof Fault && fault.cause instanceof pg.DatabaseError ? fault.cause : null;

/** The name of the unique key that a statement ran into, else null. */
export function brokenKey(fault: unknown): string | null {
  const cause = refusal(fault);
  return cause?.code === UNIQUE ? (cause.constraint ?? null) : null;
}

/** Nothing was written, and the same again may well succeed. */
export function isWorthAnotherTry(fault: unknown): boolean {
  const code = refusal(fault)?.code;
  return code === DEADLOCK || code === SERIALISATION;
}
