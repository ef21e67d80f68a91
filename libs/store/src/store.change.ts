import type { PoolClient } from 'pg';
import {
  type Balance,
  type Decision,
  type Device,
  type Keys,
  ReceiptTaken,
  type Slice,
  type Work,
} from '#libs/flow';
import { type Random, systemRandom, type WallClock, wallClock } from '#libs/kernel';
import { asFault, ask, askRows, brokenKey, isWorthAnotherTry } from './ask.js';
import type { Database } from './database.js';
import { DeviceEntity, StockBalanceEntity, StockItemEntity } from './entities/index.js';
import type { FileLoader, LoadedFile } from './store.load.js';
import { type Shown, Writer } from './store.write.js';
import { type Table, tableOf } from './tables.js';

const TRIES = 5;
/** Longest wait before the second try; doubled for each further one. */
const PAUSE_MS = 10;

/** Keys whose rows two changes may both find missing and both insert: the second one looks again. */
const BORN_TWICE = new Set(['ticket_pkey', 'device_pkey']);

interface Loaded extends Shown {
  readonly slice: Slice;
}

export interface Committed<R> {
  readonly result: R;
  readonly work: readonly Work[];
  readonly hasEvents: boolean;
}

const nothing: Loaded = {
  files: new Map(),
  devices: new Map(),
  slice: { tickets: new Map(), devices: new Map(), balances: new Map() },
};

/** The one write path: lock, show, decide, write, commit. */
export class Changer {
  readonly #writer: Writer;
  readonly #device: Table;
  readonly #item: Table;
  readonly #balance: Table;

  constructor(
    private readonly database: Database,
    private readonly loader: FileLoader,
    private readonly wall: WallClock = wallClock,
    private readonly random: Random = systemRandom,
  ) {
    this.#writer = new Writer(database, loader);
    this.#device = tableOf(database.source, DeviceEntity);
    this.#item = tableOf(database.source, StockItemEntity);
    this.#balance = tableOf(database.source, StockBalanceEntity);
  }

  /**
   * A change that lost a deadlock, or that found a row born meanwhile which was missing when it looked, is made again
   * from the start, `decide` included, since what it was shown is no longer true. Each try calls `decide` once.
   */
  async change<R>(keys: Keys, decide: (slice: Slice) => Decision<R>): Promise<Committed<R>> {
    for (let attempt = 1; ; attempt++) {
      try {
        return hasKeys(keys) ? await this.#locked(keys, decide) : await this.#unlocked(decide);
      } catch (cause) {
        const again = isWorthAnotherTry(cause) || (hasKeys(keys) && BORN_TWICE.has(brokenKey(cause) ?? ''));
        if (!again || attempt === TRIES) throw cause;
        await this.#pause(this.random.next() * PAUSE_MS * 2 ** (attempt - 1));
      }
    }
  }

  /** Nothing to lock, so one statement is the whole transaction. */
  async #unlocked<R>(decide: (slice: Slice) => Decision<R>): Promise<Committed<R>> {
    const decision = decide(nothing.slice);
    const { statement, plans } = this.#writer.write(decision, nothing);
    if (!statement.isEmpty) {
      const { text, values, name } = statement.build();
      try {
        await ask(this.database.pool, text, values, name);
      } catch (cause) {
        throw receiptTaken(cause, decision) ?? cause;
      }
    }
    for (const { ticketId, revision, plan } of plans) this.loader.plans.keep(ticketId, revision, plan);
    return committed(decision);
  }

  async #locked<R>(keys: Keys, decide: (slice: Slice) => Decision<R>): Promise<Committed<R>> {
    const client = await this.#connect();
    let isOpen = true;
    try {
      const loaded = await this.#lockAndLoad(client, keys);
      const decision = decide(loaded.slice);
      const { statement, plans } = this.#writer.write(decision, loaded);
      if (!statement.isEmpty) {
        const { text, values, name } = statement.build();
        try {
          // Sent together. If the write fails, the commit behind it ends the transaction without it.
          await together([() => ask(client, text, values, name), () => ask(client, 'COMMIT')]);
          isOpen = false;
        } catch (cause) {
          throw receiptTaken(cause, decision) ?? cause;
        }
        for (const { ticketId, revision, plan } of plans) this.loader.plans.keep(ticketId, revision, plan);
      }
      return committed(decision);
    } finally {
      // A connection that cannot even roll back is of no more use.
      const isUsable =
        !isOpen ||
        (await ask(client, 'ROLLBACK').then(
          () => true,
          () => false,
        ));
      client.release(!isUsable);
    }
  }

  async #connect(): Promise<PoolClient> {
    try {
      return await this.database.pool.connect();
    } catch (cause) {
      throw asFault(cause);
    }
  }

  /**
   * Locks in a fixed order, tickets, devices, stock, each by id, so that two changes never wait for each other in a ring.
   * Files are read by a statement of their own after the locks: one that had waited for a lock would still show the
   * child rows as they were before it waited. NO KEY UPDATE: as strict among changes, but checks of foreign keys pass.
   */
  async #lockAndLoad(client: PoolClient, keys: Keys): Promise<Loaded> {
    const { tickets = [], devices = [], stock = [] } = keys;
    const lock = (table: Table, column: string, ids: readonly string[], name: string) => () =>
      ids.length === 0
        ? Promise.resolve([])
        : ask(
            client,
            `SELECT 1 FROM ${table.name} WHERE ${column} = ANY($1) ORDER BY ${column} FOR NO KEY UPDATE`,
            [ids],
            name,
          );
    const [, , , , files, deviceRows, balances] = await together([
      () => ask(client, 'BEGIN'),
      lock(this.loader.ticket, 'id', tickets, 'lock-tickets'),
      lock(this.#device, 'id', devices, 'lock-devices'),
      lock(this.#item, 'item', stock, 'lock-stock'),
      () => this.loader.rows(client, tickets),
      () => this.#devices(client, devices),
      () => this.#balances(client, stock),
    ]);
    const loadedFiles = await this.loader.complete(client, files);
    const shownDevices = new Map(deviceRows.map((device) => [device.id, device]));
    return {
      files: loadedFiles,
      devices: shownDevices,
      slice: {
        tickets: new Map([...loadedFiles].map(([id, { file }]: [string, LoadedFile]) => [id, file])),
        devices: shownDevices,
        balances: new Map(balances.map((balance) => [balance.item, balance])),
      },
    };
  }

  /** Locks too: a device that was born after the locks were taken would be shown without one, and a change be lost. */
  async #devices(client: PoolClient, ids: readonly string[]): Promise<readonly Device[]> {
    if (ids.length === 0) return [];
    const { name, select } = this.#device;
    return askRows(
      client,
      `SELECT ${select('t')} FROM ${name} t WHERE id = ANY($1) ORDER BY id FOR NO KEY UPDATE`,
      [ids],
      'load-devices',
    );
  }

  async #balances(client: PoolClient, items: readonly string[]): Promise<readonly Balance[]> {
    if (items.length === 0) return [];
    const held = (account: string): string =>
      `coalesce(sum(amount) FILTER (WHERE account = '${account}'), 0) AS ${account}`;
    return askRows(
      client,
      `SELECT item, ${held('store')}, ${held('reserved')} FROM ${this.#balance.name}
        WHERE item = ANY($1) GROUP BY item`,
      [items],
      'load-balances',
    );
  }

  #pause(ms: number): Promise<void> {
    return new Promise((resolve) => void this.wall.setTimeout(resolve, ms));
  }
}

const hasKeys = ({ tickets = [], devices = [], stock = [] }: Keys): boolean =>
  tickets.length + devices.length + stock.length > 0;

const committed = <R>({ result, work = [], events = [] }: Decision<R>): Committed<R> => ({
  result,
  work,
  hasEvents: events.length > 0,
});

function receiptTaken(cause: unknown, { receipts = [] }: Decision<unknown>): ReceiptTaken | null {
  const [first] = receipts;
  return brokenKey(cause) === 'receipt_pkey' && first !== undefined
    ? new ReceiptTaken(first.scope, first.key)
    : null;
}

type Answers<T extends readonly (() => Promise<unknown>)[]> = {
  -readonly [K in keyof T]: Awaited<ReturnType<T[K]>>;
};

/**
 * Sends statements one behind the other without waiting in between, and waits for all answers. The first failure counts:
 * those behind it fail only because of it.
 */
async function together<const T extends readonly (() => Promise<unknown>)[]>(asks: T): Promise<Answers<T>> {
  const settled = await Promise.allSettled(asks.map((each) => each()));
  for (const each of settled) if (each.status === 'rejected') throw each.reason;
  return settled.map((each) => (each as PromiseFulfilledResult<unknown>).value) as Answers<T>;
}
