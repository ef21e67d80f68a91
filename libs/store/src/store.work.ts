import type { Work } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { ask } from './ask.js';
import type { Database } from './database.js';
import { QueueEntryEntity, ResourceEntity, StepEntity, TicketEntity } from './entities/index.js';
import { tableOf } from './tables.js';

interface EntryPointer {
  readonly ticketId: string;
  readonly entryId: string;
  readonly attempt: number;
}

/** What the truth still has open: all that a sweep needs to fill every queue again from nothing. */
export class WorkReader {
  readonly #entry: string;
  readonly #ticket: string;
  readonly #step: string;
  readonly #resource: string;

  constructor(private readonly database: Database) {
    const name = (entity: new () => object): string => tableOf(database.source, entity).name;
    this.#entry = name(QueueEntryEntity);
    this.#ticket = name(TicketEntity);
    this.#step = name(StepEntity);
    this.#resource = name(ResourceEntity);
  }

  /** Deliveries first, in the order of the queues; then what devices have still to be told. */
  async openWork(now: Instant): Promise<readonly Work[]> {
    const pointer = 'e.ticket_id AS "ticketId", e.id AS "entryId", e.attempt';
    const isDue = '(e.not_before IS NULL OR e.not_before <= $1)';
    const [deliveries, instructions] = await Promise.all([
      ask<EntryPointer>(
        this.database.pool,
        `SELECT ${pointer} FROM ${this.#entry} e
          JOIN ${this.#ticket} t ON t.id = e.ticket_id
          JOIN ${this.#step} s ON s.ticket_id = e.ticket_id AND s.id = e.step_id
          WHERE e.delivery = 'pending' AND e.status = 'Waiting' AND ${isDue}
            AND t.activation <> 'Held' AND t.status <> 'Aborted' AND s.activation <> 'Held' AND s.status <> 'Aborted'
          ORDER BY e.priority DESC, e.submitted, e.id`,
        [now],
      ),
      ask<EntryPointer>(
        this.database.pool,
        `SELECT ${pointer} FROM ${this.#entry} e
          WHERE e.wanted IS NOT NULL AND e.delivery = 'delivered' AND ${isDue} ORDER BY e.submitted, e.id`,
        [now],
      ),
    ]);
    return [
      ...deliveries.map((at): Work => ({ kind: 'dispatch', ...at })),
      ...instructions.map(({ ticketId, entryId }): Work => ({ kind: 'instruct', ticketId, entryId })),
    ];
  }

  /**
   * Tickets under way that have a step waiting without an entry, and something whose drying time is over: their steps
   * are looked at again. A ticket named in vain costs one look and changes nothing.
   */
  async ticketsToWake(now: Instant): Promise<readonly string[]> {
    const rows = await ask<{ id: string }>(
      this.database.pool,
      `SELECT t.id FROM ${this.#ticket} t
        WHERE t.activation = 'Active' AND t.status NOT IN ('Completed', 'Aborted', 'Rejected')
          AND EXISTS (SELECT 1 FROM ${this.#resource} r WHERE r.ticket_id = t.id AND r.usable_from <= $1)
          AND EXISTS (SELECT 1 FROM ${this.#step} s WHERE s.ticket_id = t.id AND s.status = 'Waiting'
            AND NOT EXISTS (SELECT 1 FROM ${this.#entry} e WHERE e.ticket_id = s.ticket_id AND e.step_id = s.id
              AND e.status NOT IN ('Completed', 'Aborted')))
        ORDER BY t.created_at, t.id`,
      [now],
    );
    return rows.map(({ id }) => id);
  }
}
