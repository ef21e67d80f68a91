import type {
  Device,
  Page,
  Phase,
  QueueEntry,
  Receipt,
  StepAddress,
  StoredDocument,
  Ticket,
  TicketFile,
  TicketQuery,
} from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { ask, askRows } from './ask.js';
import type { Database } from './database.js';
import {
  DeviceEntity,
  DocumentEntity,
  PhaseEntity,
  QueueEntryEntity,
  ReceiptEntity,
  StepEntity,
} from './entities/index.js';
import { pageOf, placeOf } from './paging.js';
import type { FileLoader } from './store.load.js';
import { tableOf } from './tables.js';

/** Tickets, documents, devices and what they did: reads that lock nothing. */
export class Reader {
  readonly #tables;

  constructor(
    private readonly database: Database,
    private readonly loader: FileLoader,
  ) {
    const { source } = database;
    this.#tables = {
      device: tableOf(source, DeviceEntity),
      document: tableOf(source, DocumentEntity),
      entry: tableOf(source, QueueEntryEntity),
      phase: tableOf(source, PhaseEntity),
      receipt: tableOf(source, ReceiptEntity),
      step: tableOf(source, StepEntity),
    };
  }

  async ticketFile(id: string): Promise<TicketFile | null> {
    return (await this.loader.load(this.database.pool, [id])).get(id)?.file ?? null;
  }

  /** Newest first. A page continues behind the last ticket of the page before, whatever came in meanwhile. */
  async tickets({ status, q, cursor, limit }: TicketQuery): Promise<Page<TicketFile>> {
    const place = placeOf(cursor);
    const keys = await ask<{ id: string; at: string }>(
      this.database.pool,
      `SELECT id, created_at AS at FROM ${this.loader.ticket.name}
        WHERE ($1::text IS NULL OR status = $1)
          AND ($2::text IS NULL OR id LIKE $2 || '%' OR job_id ILIKE $2 || '%'
            OR name ILIKE '%' || $2 || '%' OR customer ILIKE '%' || $2 || '%')
          AND ($3::bigint IS NULL OR (created_at, id) < ($3, $4::text))
        ORDER BY created_at DESC, id DESC LIMIT $5`,
      [status ?? null, q === undefined || q === '' ? null : literal(q), place?.at, place?.id, limit + 1],
    );
    const page = pageOf(keys, limit);
    const files = await this.loader.load(
      this.database.pool,
      page.items.map((key) => key.id),
    );
    return { items: page.items.flatMap(({ id }) => files.get(id)?.file ?? []), next: page.next };
  }

  async ticketsByJob(jobId: string): Promise<readonly Ticket[]> {
    const ids = await ask<{ id: string }>(
      this.database.pool,
      `SELECT id FROM ${this.loader.ticket.name} WHERE job_id = $1 ORDER BY created_at DESC, id DESC`,
      [jobId],
    );
    const files = await this.loader.load(
      this.database.pool,
      ids.map(({ id }) => id),
    );
    return ids.flatMap(({ id }) => files.get(id)?.file.ticket ?? []);
  }

  async document(id: string): Promise<StoredDocument | null> {
    const { name } = this.#tables.document;
    const [found] = await ask<Omit<StoredDocument, 'receivedAt'> & { receivedAt: string }>(
      this.database.pool,
      `SELECT id, sha256, media_type AS "mediaType", name, bytes, received_at AS "receivedAt"
        FROM ${name} WHERE id = $1`,
      [id],
    );
    return found === undefined ? null : { ...found, receivedAt: Number(found.receivedAt) };
  }

  async receipt(scope: string, key: string): Promise<Receipt | null> {
    const { name, select } = this.#tables.receipt;
    const sql = `SELECT ${select('t')} FROM ${name} t WHERE scope = $1 AND key = $2`;
    return (await askRows<Receipt>(this.database.pool, sql, [scope, key]))[0] ?? null;
  }

  async devices(): Promise<readonly Device[]> {
    const { name, select } = this.#tables.device;
    return askRows(this.database.pool, `SELECT ${select('t')} FROM ${name} t ORDER BY id`);
  }

  async device(id: string): Promise<Device | null> {
    const { name, select } = this.#tables.device;
    const sql = `SELECT ${select('t')} FROM ${name} t WHERE id = $1`;
    return (await askRows<Device>(this.database.pool, sql, [id], 'device'))[0] ?? null;
  }

  /** Those that have not ended in the order they will be taken, then the ended ones, latest first. */
  async entries(deviceId: string, limit: number): Promise<readonly QueueEntry[]> {
    const { name, select } = this.#tables.entry;
    return askRows(
      this.database.pool,
      `SELECT ${select('t')} FROM (
        (SELECT true AS live, l.* FROM ${name} l WHERE device_id = $1 AND status NOT IN ('Completed', 'Aborted'))
        UNION ALL
        (SELECT false, e.* FROM ${name} e WHERE device_id = $1 AND status IN ('Completed', 'Aborted')
          ORDER BY "end" DESC NULLS LAST, id DESC LIMIT $2)
      ) t ORDER BY live DESC, CASE WHEN live THEN NULL ELSE coalesce("end", submitted) END DESC,
        priority DESC, submitted, id LIMIT $2`,
      [deviceId, limit],
    );
  }

  /** Phases that touch the stretch from `from` up to, not including, `to`. */
  async phases(deviceId: string, from: Instant, to: Instant): Promise<readonly Phase[]> {
    const { name, select } = this.#tables.phase;
    return askRows(
      this.database.pool,
      `SELECT ${select('t')} FROM ${name} t
        WHERE device_id = $1 AND start < $3 AND ("end" IS NULL OR "end" > $2) ORDER BY start, ticket_id, step_id`,
      [deviceId, from, to],
    );
  }

  /**
   * JobID and JobPartID must fit where they are given. The queue entry then chooses among several, and decides alone
   * only without a JobID: a device that was reset counts its entries from one again, so an old one may bear that number.
   */
  async findStep(
    deviceId: string,
    { jobId, jobPartId, queueEntryId }: { jobId?: string; jobPartId?: string; queueEntryId?: string },
  ): Promise<StepAddress | null> {
    const [found] = await ask<StepAddress>(
      this.database.pool,
      `SELECT e.ticket_id AS "ticketId", e.step_id AS "stepId",
          e.status IN ('PendingReturn', 'Completed', 'Aborted') AS ended
        FROM ${this.#tables.entry.name} e JOIN ${this.loader.ticket.name} t ON t.id = e.ticket_id
        WHERE e.device_id = $1
          AND ($2::text IS NULL OR t.job_id = $2)
          AND ($3::text IS NULL OR e.step_id = $3)
          AND ($4::text IS NULL OR $2 IS NOT NULL OR e.device_entry_id = $4 OR e.id = $4)
          AND ($2 IS NOT NULL OR $3 IS NOT NULL OR $4 IS NOT NULL)
        ORDER BY coalesce(e.device_entry_id = $4 OR e.id = $4, false) DESC,
          e.status NOT IN ('Completed', 'Aborted') DESC, e.submitted DESC, e.id DESC LIMIT 1`,
      [deviceId, jobId ?? null, jobPartId ?? null, queueEntryId ?? null],
      'find-step',
    );
    return found ?? null;
  }

  async deviceHorizons(): Promise<ReadonlyMap<string, Instant>> {
    const rows = await ask<{ device: string; end: string }>(
      this.database.pool,
      `SELECT s.device_id AS device, max(s.planned_end) AS "end"
        FROM ${this.#tables.step.name} s JOIN ${this.loader.ticket.name} t ON t.id = s.ticket_id
        WHERE s.status NOT IN ('Completed', 'Aborted') AND t.status NOT IN ('Completed', 'Aborted', 'Rejected')
          AND s.device_id IS NOT NULL AND s.planned_end IS NOT NULL
        GROUP BY s.device_id`,
    );
    return new Map(rows.map(({ device, end }) => [device, Number(end)]));
  }
}

/** A text that LIKE takes letter by letter. */
const literal = (text: string): string => text.replace(/[\\%_]/g, '\\$&');
