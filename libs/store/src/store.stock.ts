import type { Page, StockMove, Store } from '#libs/flow';
import { askRows } from './ask.js';
import type { Database } from './database.js';
import { StockBalanceEntity, StockItemEntity, StockMoveEntity } from './entities/index.js';
import { pageOf, placeOf } from './paging.js';
import { type Table, tableOf } from './tables.js';

type StockLine = Awaited<ReturnType<Store['stock']>>[number];

/** The book of stock: what lies in which account, and every move that brought it there. */
export class StockReader {
  readonly #item: Table;
  readonly #balance: Table;
  readonly #move: Table;

  constructor(private readonly database: Database) {
    this.#item = tableOf(database.source, StockItemEntity);
    this.#balance = tableOf(database.source, StockBalanceEntity);
    this.#move = tableOf(database.source, StockMoveEntity);
  }

  /** Items by name of the item. A lot's `onHand` is what lies in the store, set aside for a step or not. */
  async stock(): Promise<readonly StockLine[]> {
    const balance = this.#balance.name;
    return askRows(
      this.database.pool,
      `SELECT ${this.#item.select('t')},
        coalesce((SELECT json_object_agg(account, amount) FROM (
          SELECT account, sum(amount) AS amount FROM ${balance} WHERE item = t.item GROUP BY account ORDER BY account
        ) a), '{}') AS accounts,
        coalesce((SELECT json_agg(l) FROM (
          SELECT lot, sum(amount) AS "onHand" FROM ${balance}
            WHERE item = t.item AND account IN ('store', 'reserved') GROUP BY lot ORDER BY lot
        ) l), '[]') AS lots
        FROM ${this.#item.name} t ORDER BY item`,
    );
  }

  /** Newest first. */
  async moves({
    cursor,
    limit,
    item,
    ticketId,
  }: {
    cursor?: string;
    limit: number;
    item?: string;
    ticketId?: string;
  }): Promise<Page<StockMove>> {
    const place = placeOf(cursor);
    const rows = await askRows<StockMove>(
      this.database.pool,
      `SELECT ${this.#move.select('t')} FROM ${this.#move.name} t
        WHERE ($1::text IS NULL OR item = $1) AND ($2::text IS NULL OR ticket_id = $2)
          AND ($3::bigint IS NULL OR (time, id) < ($3, $4::text))
        ORDER BY time DESC, id DESC LIMIT $5`,
      [item ?? null, ticketId ?? null, place?.at, place?.id, limit + 1],
    );
    const page = pageOf(
      rows.map((move) => ({ at: move.time, id: move.id, move })),
      limit,
    );
    return { items: page.items.map(({ move }) => move), next: page.next };
  }
}
