import type { EventFilter, LoggedEvent } from '#libs/flow';
import { ask, askRows } from './ask.js';
import type { Database } from './database.js';
import { CursorEntity, EventEntity, FactEntity } from './entities/index.js';
import { asJson, type Table, tableOf } from './tables.js';

/** The log as readers see it, their places in it, and small facts of the installation. */
export class LogReader {
  readonly #event: Table;
  readonly #cursor: Table;
  readonly #fact: Table;

  constructor(private readonly database: Database) {
    this.#event = tableOf(database.source, EventEntity);
    this.#cursor = tableOf(database.source, CursorEntity);
    this.#fact = tableOf(database.source, FactEntity);
  }

  async eventsAfter(
    position: number,
    limit: number,
    { ticketId, deviceId, type }: EventFilter = {},
  ): Promise<readonly LoggedEvent[]> {
    // Only the conditions that are asked for: a plan for all of them at once could use no index.
    const values: unknown[] = [position, limit];
    const conditions = [
      ['ticket_id', ticketId],
      ['device_id', deviceId],
      ['type', type],
    ].flatMap(([column, value]) => (value === undefined ? [] : [`AND ${column} = $${values.push(value)}`]));
    return askRows(
      this.database.pool,
      `SELECT position, type, time, ticket_id AS "ticketId", step_id AS "stepId", device_id AS "deviceId", data
        FROM ${this.#event.name} WHERE position > $1 ${conditions.join(' ')} ORDER BY position LIMIT $2`,
      values,
    );
  }

  async head(): Promise<number> {
    const sql = `SELECT coalesce(max(position), 0) AS head FROM ${this.#event.name}`;
    return Number((await ask<{ head: string }>(this.database.pool, sql))[0]?.head ?? 0);
  }

  /** 0 for a consumer that never moved. */
  async cursor(consumer: string): Promise<number> {
    const sql = `SELECT position FROM ${this.#cursor.name} WHERE consumer = $1`;
    return Number((await ask<{ position: string }>(this.database.pool, sql, [consumer]))[0]?.position ?? 0);
  }

  async moveCursor(consumer: string, position: number): Promise<void> {
    const sql = `INSERT INTO ${this.#cursor.name} (consumer, position) VALUES ($1, $2)
      ON CONFLICT (consumer) DO UPDATE SET position = excluded.position`;
    await ask(this.database.pool, sql, [consumer, position]);
  }

  /** null for a fact that was never set. */
  async fact(name: string): Promise<unknown> {
    const sql = `SELECT value FROM ${this.#fact.name} WHERE name = $1`;
    return (await ask<{ value: unknown }>(this.database.pool, sql, [name]))[0]?.value ?? null;
  }

  async setFact(name: string, value: unknown): Promise<void> {
    const sql = `INSERT INTO ${this.#fact.name} (name, value) VALUES ($1, $2::jsonb)
      ON CONFLICT (name) DO UPDATE SET value = excluded.value`;
    await ask(this.database.pool, sql, [name, asJson(value)]);
  }
}
