import { type WallClock, wallClock } from '#libs/kernel';
import { asFault, ask } from './ask.js';
import { type Database, SEQUENCE_LOCK } from './database.js';
import { EventEntity } from './entities/index.js';
import { type Table, tableOf } from './tables.js';

/** Wait after a failure before the next try. Nothing is lost meanwhile: rows without a position stay where they are. */
const AGAIN_MS = 1000;

/**
 * Gives committed events their positions, in the order in which they were inserted, without a gap. One sequencer works
 * at a time in all servers together (advisory lock), and sees only what is committed; so a reader that went up to a
 * position never finds something new below it, whatever order transactions commit in.
 */
export class Sequencer {
  readonly #event: Table;
  #running: Promise<void> | null = null;
  #next: Promise<void> | null = null;
  #cancelRetry: () => void = () => undefined;
  #isClosed = false;

  constructor(
    private readonly database: Database,
    /** Called after positions were given out here. */
    private readonly onPlaced: () => void,
    private readonly onTrouble: (message: string, cause: unknown) => void,
    /** Sent to other servers with the wake-up, so that this one knows its own. */
    private readonly name: string,
    private readonly wall: WallClock = wallClock,
  ) {
    this.#event = tableOf(database.source, EventEntity);
  }

  /**
   * Resolves once everything that was committed before the call has its position. Calls while one pass runs share the
   * pass after it: many commits, one sequencing.
   */
  run(): Promise<void> {
    if (this.#running === null) {
      this.#running = this.#pass().finally(() => {
        this.#running = null;
      });
      return this.#running;
    }
    this.#next ??= this.#running
      .catch(() => undefined)
      .then(() => {
        this.#next = null;
        return this.run();
      });
    return this.#next;
  }

  /** Sees to it that `run` happens soon, and again until it succeeds. */
  nudge(): void {
    this.#cancelRetry();
    this.run().catch((cause: unknown) => {
      if (this.#isClosed) return;
      this.onTrouble('events wait for their positions', cause);
      this.#cancelRetry = this.wall.setTimeout(() => this.nudge(), AGAIN_MS);
    });
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#cancelRetry();
    await (this.#next ?? this.#running)?.catch(() => undefined);
  }

  async #pass(): Promise<void> {
    const { pool, schema } = this.database;
    const client = await pool.connect().catch((cause: unknown) => Promise.reject(asFault(cause)));
    let isUsable = false;
    try {
      // The lock is a statement of its own: the one behind it must see what was committed while it waited.
      const [, , placed] = await Promise.all([
        ask(client, 'BEGIN'),
        ask(client, 'SELECT pg_advisory_xact_lock($1, hashtext($2))', [SEQUENCE_LOCK, schema], 'lock-log'),
        ask<{ count: number }>(client, this.#statement(), [channelOf(schema), this.name], 'place'),
        ask(client, 'COMMIT'),
      ]);
      isUsable = true;
      if ((placed[0]?.count ?? 0) > 0) this.onPlaced();
    } finally {
      client.release(!isUsable);
    }
  }

  #statement(): string {
    const event = this.#event.name;
    return `WITH head AS (SELECT coalesce(max(position), 0) AS position FROM ${event}),
      fresh AS (SELECT id, row_number() OVER (ORDER BY id) AS n FROM ${event} WHERE position IS NULL),
      placed AS (
        UPDATE ${event} e SET position = head.position + fresh.n FROM fresh, head WHERE e.id = fresh.id RETURNING 1
      ),
      total AS (SELECT count(*)::int AS count FROM placed)
      SELECT count, CASE WHEN count > 0 THEN pg_notify($1, $2) END FROM total`;
  }
}

export const channelOf = (schema: string): string => `sidelay_log_${schema}`;
