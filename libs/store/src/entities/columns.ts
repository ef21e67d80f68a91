import type { ColumnOptions, PrimaryColumnOptions, ValueTransformer } from 'typeorm';

// node-postgres hands bigint and numeric out as text. Instants, positions and amounts all stay far below 2^53.
const asNumber: ValueTransformer = {
  to: (value: number | null | undefined) => value,
  from: (value: string | null) => (value === null ? null : Number(value)),
};

/** An instant in milliseconds of plant time. */
export const instant: ColumnOptions = { type: 'bigint', transformer: asNumber };

/** A place in the log. */
export const place: ColumnOptions = { type: 'bigint', transformer: asNumber };

/** An amount that must add up exactly over many bookings, hence decimal in the database. */
export const exactAmount: ColumnOptions = { type: 'numeric', transformer: asNumber };

/** A count or an amount of which only the latest total is kept. */
export const amount: ColumnOptions = { type: 'double precision' };

export const text: ColumnOptions = { type: 'text' };
export const json: ColumnOptions = { type: 'jsonb' };

/** The same column, allowed to be empty. */
export const maybe = (column: ColumnOptions): ColumnOptions => ({ ...column, nullable: true });

/** A column of the primary key, whose constraint has a name that stays the same everywhere. */
export const key = (table: string, column: ColumnOptions = text): PrimaryColumnOptions => ({
  ...column,
  nullable: false,
  primaryKeyConstraintName: `${table}_pkey`,
});
