import type { Ticket, TicketFile } from '#libs/flow';
import { Fault } from '#libs/kernel';
import { ask, type Queryable } from './ask.js';
import type { Database } from './database.js';
import { TicketEntity, TicketPlanEntity } from './entities/index.js';
import { PlanMemory } from './plan-memory.js';
import { type RowSet, rowSets } from './row-sets.js';
import { type Table, tableOf } from './tables.js';

type Plan = NonNullable<Ticket['plan']>;
/** The row as it is in the database: with the revision of the plan in place of the plan. */
export type TicketRow = Omit<Ticket, 'plan'> & { readonly planRevision: number | null };

interface FileRow extends Omit<TicketFile, 'ticket'> {
  readonly ticket: TicketRow;
}

/** A ticket's file with what the store alone needs to know about it. */
export interface LoadedFile {
  readonly file: TicketFile;
  readonly planRevision: number | null;
}

/** Reads whole files, one statement for any number of them, plus one for plans that are not remembered. */
export class FileLoader {
  readonly ticket: Table;
  readonly plan: Table;
  readonly sets: readonly RowSet[];
  readonly plans = new PlanMemory();
  readonly #one: string;
  readonly #many: string;

  constructor({ source }: Database) {
    this.ticket = tableOf(source, TicketEntity);
    this.plan = tableOf(source, TicketPlanEntity);
    this.sets = rowSets(source);
    const lists = this.sets.map(
      ({ name, table, order }) =>
        `(SELECT coalesce(json_agg(x), '[]') FROM (SELECT ${table.select('r')} FROM ${table.name} r
          WHERE r.ticket_id = t.id ORDER BY ${order}) x) AS "${name}"`,
    );
    const select = `SELECT row_to_json(head) AS ticket, ${lists.join(', ')}
      FROM ${this.ticket.name} t, LATERAL (SELECT ${this.ticket.select('t')}) head`;
    // Apart, because PostgreSQL would never settle on a plan for an array of unknown length, and planning takes longer
    // than reading one file.
    this.#one = `${select} WHERE t.id = $1`;
    this.#many = `${select} WHERE t.id = ANY($1)`;
  }

  async load(client: Queryable, ids: readonly string[]): Promise<ReadonlyMap<string, LoadedFile>> {
    return this.complete(client, await this.rows(client, ids));
  }

  /** The first half of `load`: may be sent together with other statements. */
  async rows(client: Queryable, ids: readonly string[]): Promise<readonly FileRow[]> {
    if (ids.length === 0) return [];
    return ids.length === 1
      ? ask<FileRow>(client, this.#one, ids, 'load-one')
      : ask<FileRow>(client, this.#many, [ids], 'load-many');
  }

  async complete(client: Queryable, rows: readonly FileRow[]): Promise<ReadonlyMap<string, LoadedFile>> {
    const plans = await this.#plansOf(client, rows);
    return new Map(
      rows.map(({ ticket: row, ...lists }) => {
        const { planRevision, ...ticket } = row;
        const plan = plans.get(ticket.id) ?? null;
        return [ticket.id, { file: { ...lists, ticket: { ...ticket, plan } }, planRevision }];
      }),
    );
  }

  async #plansOf(client: Queryable, rows: readonly FileRow[]): Promise<ReadonlyMap<string, Plan>> {
    const found = new Map<string, Plan>();
    const wanted = new Map<string, number>();
    for (const { ticket } of rows) {
      if (ticket.planRevision === null) continue;
      const plan = this.plans.recall(ticket.id, ticket.planRevision);
      if (plan === undefined) wanted.set(ticket.id, ticket.planRevision);
      else found.set(ticket.id, plan);
    }
    if (wanted.size === 0) return found;
    // Read with its revision: between two statements another server may have planned anew.
    const answer = await ask<{ id: string; revision: number; plan: Plan }>(
      client,
      `SELECT t.id, t.plan_revision AS revision, p.plan FROM ${this.plan.name} p
        JOIN ${this.ticket.name} t ON t.id = p.ticket_id WHERE t.id = ANY($1)`,
      [[...wanted.keys()]],
      'plans',
    );
    for (const { id, revision, plan } of answer) {
      this.plans.keep(id, revision, plan);
      found.set(id, plan);
    }
    for (const id of wanted.keys()) {
      if (!found.has(id)) throw new Fault('BROKEN', `the plan of ticket ${id} is not in the database`);
    }
    return found;
  }
}
