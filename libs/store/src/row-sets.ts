/**
 * The rows of a ticket's file, one table each: where they lie in the file, and what tells two rows of one file apart.
 * Loading, comparing and writing all go by this table.
 */

import type { DataSource, EntityTarget, ObjectLiteral } from 'typeorm';
import type { TicketFile } from '#libs/flow';
import { PhaseEntity, QueueEntryEntity, ResourceEntity, StepEntity, UseEntity } from './entities/index.js';
import { type Table, tableOf } from './tables.js';

export type RowSetName = Exclude<keyof TicketFile, 'ticket'>;
type Row = TicketFile[RowSetName][number];

export interface RowSet {
  readonly name: RowSetName;
  readonly table: Table;
  /** The order in which a file lists them: properties as quoted columns. */
  readonly order: string;
  keyOf(row: Row): string;
}

const define = <N extends RowSetName>(
  name: N,
  entity: EntityTarget<ObjectLiteral>,
  order: string,
  keyOf: (row: TicketFile[N][number]) => string,
) => ({ name, entity, order, keyOf: keyOf as (row: Row) => string });

const definitions = [
  define('steps', StepEntity, 'ordinal, id', (step) => step.id),
  define('resources', ResourceEntity, 'id', (resource) => resource.id),
  define('entries', QueueEntryEntity, 'submitted, id', (entry) => entry.id),
  define('phases', PhaseEntity, 'start, step_id, device_id', (phase) =>
    JSON.stringify([phase.stepId, phase.deviceId, phase.start]),
  ),
  define('uses', UseEntity, 'step_id, item', (use) => JSON.stringify([use.stepId, use.item])),
];

export const rowSets = (source: DataSource): readonly RowSet[] =>
  definitions.map(({ entity, ...rest }) => ({ ...rest, table: tableOf(source, entity) }));

export interface RowChanges {
  /** Rows that were not there before. */
  readonly added: readonly Row[];
  readonly changed: readonly Row[];
  readonly removed: readonly Row[];
}

/** What differs between two lists of rows. A row that is the same object is the same row; nothing is compared by value. */
export function rowChanges(set: RowSet, before: readonly Row[], after: readonly Row[]): RowChanges | null {
  if (before === after) return null;
  const same = new Set(before);
  const fresh = after.filter((row) => !same.has(row));
  const known = new Set(before.map(set.keyOf));
  const kept = new Set(after.map(set.keyOf));
  const removed = before.filter((row) => !kept.has(set.keyOf(row)));
  if (fresh.length === 0 && removed.length === 0) return null;
  return {
    added: fresh.filter((row) => !known.has(set.keyOf(row))),
    changed: fresh.filter((row) => known.has(set.keyOf(row))),
    removed,
  };
}
