import type { Change, StockMove, Ticket, TicketFile } from '#libs/flow';
import { Fault } from '#libs/kernel';
import type { Database } from './database.js';
import {
  DeviceEntity,
  DocumentEntity,
  EventEntity,
  ReceiptEntity,
  StockBalanceEntity,
  StockItemEntity,
  StockMoveEntity,
} from './entities/index.js';
import { type RowChanges, type RowSet, rowChanges } from './row-sets.js';
import { StatementBuilder } from './statement.js';
import type { FileLoader, LoadedFile, TicketRow } from './store.load.js';
import { asJson, type Table, tableOf } from './tables.js';

type Plan = NonNullable<Ticket['plan']>;

/** What a decision was shown: rows that are still these objects need no writing. */
export interface Shown {
  readonly files: ReadonlyMap<string, LoadedFile>;
  readonly devices: ReadonlyMap<string, unknown>;
}

export interface WrittenPlan {
  readonly ticketId: string;
  readonly revision: number;
  readonly plan: Plan;
}

/** Makes one statement of a change: only what differs from what was shown. */
export class Writer {
  readonly #tables: Readonly<
    Record<'document' | 'device' | 'item' | 'balance' | 'move' | 'receipt' | 'event', Table>
  >;

  constructor(
    { source }: Database,
    private readonly loader: FileLoader,
  ) {
    this.#tables = {
      document: tableOf(source, DocumentEntity),
      device: tableOf(source, DeviceEntity),
      item: tableOf(source, StockItemEntity),
      balance: tableOf(source, StockBalanceEntity),
      move: tableOf(source, StockMoveEntity),
      receipt: tableOf(source, ReceiptEntity),
      event: tableOf(source, EventEntity, ['id', 'position']),
    };
  }

  write(change: Change, shown: Shown): { statement: StatementBuilder; plans: readonly WrittenPlan[] } {
    const statement = new StatementBuilder();
    for (const document of change.documents ?? []) {
      const { id, sha256, mediaType, name, bytes, receivedAt } = document;
      // Bytes go as they are: inside JSON they would be twice their size.
      statement.add('doc', [id, sha256, mediaType, name, bytes, receivedAt], (n) => {
        const at = (offset: number, type: string): string => `$${n + offset}::${type}`;
        return `INSERT INTO ${this.#tables.document.name} (id, sha256, media_type, name, bytes, received_at)
          VALUES (${at(0, 'text')}, ${at(1, 'text')}, ${at(2, 'text')}, ${at(3, 'text')}, ${at(4, 'bytea')}, ${at(5, 'bigint')})`;
      });
    }
    const plans = this.#files(statement, change.tickets ?? [], shown);
    this.#devices(statement, change, shown);
    this.#stock(statement, change);
    this.#rows(statement, 'rc', this.#tables.receipt, 'insert', change.receipts ?? []);
    this.#rows(statement, 'ev', this.#tables.event, 'insert', change.events ?? []);
    return { statement, plans };
  }

  #rows(
    statement: StatementBuilder,
    tag: string,
    table: Table,
    how: 'insert' | 'upsert' | 'remove',
    rows: readonly object[],
  ): void {
    if (rows.length > 0) statement.add(tag, [asJson(rows)], (n) => table[how](n));
  }

  #files(statement: StatementBuilder, files: readonly TicketFile[], shown: Shown): readonly WrittenPlan[] {
    refuseDoubles(
      'ticket',
      files.map((file) => file.ticket.id),
    );
    const fresh: TicketRow[] = [];
    const changed: TicketRow[] = [];
    const plans: WrittenPlan[] = [];
    const lists = new Map<RowSet, RowChanges[]>();
    for (const file of files) {
      const before = shown.files.get(file.ticket.id);
      const differences = this.#differences(file, before);
      if (before?.file.ticket === file.ticket && differences.length === 0) continue;
      for (const [set, changes] of differences) lists.set(set, [...(lists.get(set) ?? []), changes]);
      const revision = (before?.file.ticket.revision ?? 0) + 1;
      const { plan, ...ticket } = file.ticket;
      const isNewPlan = plan !== null && plan !== before?.file.ticket.plan;
      if (isNewPlan) plans.push({ ticketId: ticket.id, revision, plan });
      const planRevision = plan === null ? null : isNewPlan ? revision : (before?.planRevision ?? null);
      (before === undefined ? fresh : changed).push({ ...ticket, revision, planRevision });
    }
    this.#rows(statement, 'ti', this.loader.ticket, 'insert', fresh);
    this.#rows(statement, 'tu', this.loader.ticket, 'upsert', changed);
    this.#rows(statement, 'p', this.loader.plan, 'upsert', plans);
    for (const [set, changes] of lists) this.#lists(statement, set, changes);
    return plans;
  }

  #differences(file: TicketFile, before: LoadedFile | undefined): readonly [RowSet, RowChanges][] {
    return this.loader.sets.flatMap((set): [RowSet, RowChanges][] => {
      const changes = rowChanges(set, before?.file[set.name] ?? [], file[set.name]);
      return changes === null ? [] : [[set, changes]];
    });
  }

  #lists(statement: StatementBuilder, set: RowSet, changes: readonly RowChanges[]): void {
    const tag = set.name.slice(0, 2);
    this.#rows(
      statement,
      `${tag}-`,
      set.table,
      'remove',
      changes.flatMap((c) => c.removed),
    );
    // Changed before added: an entry that ends makes room for the step's next one.
    this.#rows(statement, tag, set.table, 'upsert', [
      ...changes.flatMap((c) => c.changed),
      ...changes.flatMap((c) => c.added),
    ]);
  }

  #devices(statement: StatementBuilder, { devices = [] }: Change, shown: Shown): void {
    refuseDoubles(
      'device',
      devices.map((device) => device.id),
    );
    const differing = devices.filter((device) => shown.devices.get(device.id) !== device);
    const isKnown = (device: { id: string }): boolean => shown.devices.has(device.id);
    this.#rows(
      statement,
      'di',
      this.#tables.device,
      'insert',
      differing.filter((d) => !isKnown(d)),
    );
    this.#rows(statement, 'du', this.#tables.device, 'upsert', differing.filter(isKnown));
  }

  #stock(statement: StatementBuilder, { stockItems = [], moves = [] }: Change): void {
    const named = new Set(stockItems.map((item) => item.item));
    // What is drawn at a machine is booked whether or not anybody registered it: under its own name, to be mended later.
    const unnamed = new Map(
      moves
        .filter((m) => !named.has(m.item))
        .map((m) => [m.item, { item: m.item, name: m.item, unit: m.unit }]),
    );
    this.#rows(statement, 'si', this.#tables.item, 'upsert', stockItems);
    if (unnamed.size > 0) {
      statement.add(
        'sn',
        [asJson([...unnamed.values()])],
        (n) => `${this.#tables.item.insert(n)} ON CONFLICT DO NOTHING`,
      );
    }
    this.#rows(statement, 'm', this.#tables.move, 'insert', moves);
    const balance = this.#tables.balance;
    if (moves.length > 0) {
      statement.add(
        'b',
        [asJson(bookings(moves))],
        (n) => `INSERT INTO ${balance.name} AS b (item, lot, account, amount)
          SELECT r.item, r.lot, r.account, sum(r.amount)
          FROM json_to_recordset($${n}::json) AS r(item text, lot text, account text, amount numeric)
          GROUP BY r.item, r.lot, r.account ORDER BY r.item, r.lot, r.account
          ON CONFLICT (item, lot, account) DO UPDATE SET amount = b.amount + excluded.amount`,
      );
    }
  }
}

/** Double entry: what one account gives, another gets. The database adds up, in decimals, so that nothing is rounded. */
const bookings = (moves: readonly StockMove[]): readonly object[] =>
  moves.flatMap(({ item, lot, from, to, amount }) => [
    { item, lot, account: from, amount: -amount },
    { item, lot, account: to, amount },
  ]);

/** Two versions of one row in one change: whichever were written, the other decision would be lost. */
function refuseDoubles(what: string, ids: readonly string[]): void {
  const double = ids.find((id, at) => ids.indexOf(id) !== at);
  if (double !== undefined) throw new Fault('BROKEN', `one change holds ${what} ${double} twice`);
}
