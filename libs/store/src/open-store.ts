import type { Decision, Keys, Slice, Store, TokenStore } from '#libs/flow';
import { systemRandom } from '#libs/kernel';
import { asFault } from './ask.js';
import { openDatabase } from './database.js';
import { Changer } from './store.change.js';
import { LogListener } from './store.listen.js';
import { FileLoader } from './store.load.js';
import { LogReader } from './store.log.js';
import { Reader } from './store.read.js';
import { Sequencer } from './store.sequence.js';
import { StockReader } from './store.stock.js';
import { Tokens } from './store.tokens.js';
import { WorkReader } from './store.work.js';

export interface StoreOptions {
  readonly url: string;
  /** Default `sidelay`. Tests run in one of their own. */
  readonly schema?: string;
  /**
   * `background` (default): a change returns once committed, its events get their positions right after, many commits
   * together. `inline`: a change returns with its events in the log, and nothing happens outside of calls, so that a
   * run in virtual time repeats exactly; for one server alone.
   */
  readonly sequencing?: 'background' | 'inline';
  /** Connections of the pool at most; two more are used beside it. Default 10. */
  readonly connections?: number;
  /** Told what went wrong outside of any call: a connection that broke while idle, a sequencing to be tried again. */
  readonly onTrouble?: (message: string, cause: unknown) => void;
}

export type OpenStore = Store & { readonly tokens: TokenStore };

/**
 * Opens the truth: connects, brings the schema to this version (servers that start together wait for each other), and
 * gives positions to what an earlier run left without. Throws a `Fault` with code DATABASE when nothing answers.
 */
export async function openStore(options: StoreOptions): Promise<OpenStore> {
  const { url, schema = 'sidelay', sequencing = 'background', connections = 10 } = options;
  const onTrouble = options.onTrouble ?? (() => undefined);
  const database = await openDatabase({ url, schema, connections, onTrouble }).catch((cause: unknown) =>
    Promise.reject(asFault(cause)),
  );
  const loader = new FileLoader(database);
  const changer = new Changer(database, loader);
  const reader = new Reader(database, loader);
  const stock = new StockReader(database);
  const log = new LogReader(database);
  const work = new WorkReader(database);
  const listeners = new Set<() => void>();
  const wake = (): void => {
    for (const listener of listeners) listener();
  };
  const self = systemRandom.next().toString(36).slice(2);
  const sequencer = new Sequencer(database, wake, onTrouble, self);
  const hearing = sequencing === 'background' ? new LogListener(url, schema, self, wake, onTrouble) : null;
  hearing?.start();
  await sequencer.run();

  return {
    async change<R>(keys: Keys, decide: (slice: Slice) => Decision<R>) {
      const { result, work: offered, hasEvents } = await changer.change(keys, decide);
      if (hasEvents) {
        if (sequencing === 'inline') await sequencer.run();
        else sequencer.nudge();
      }
      return { result, work: offered };
    },
    ticketFile: (id) => reader.ticketFile(id),
    tickets: (query) => reader.tickets(query),
    ticketsByJob: (jobId) => reader.ticketsByJob(jobId),
    document: (id) => reader.document(id),
    receipt: (scope, key) => reader.receipt(scope, key),
    devices: () => reader.devices(),
    device: (id) => reader.device(id),
    entries: (deviceId, limit) => reader.entries(deviceId, limit),
    phases: (deviceId, from, to) => reader.phases(deviceId, from, to),
    findStep: (deviceId, name) => reader.findStep(deviceId, name),
    deviceHorizons: () => reader.deviceHorizons(),
    stock: () => stock.stock(),
    moves: (query) => stock.moves(query),
    openWork: (now) => work.openWork(now),
    ticketsToWake: (now) => work.ticketsToWake(now),
    eventsAfter: (position, limit, filter) => log.eventsAfter(position, limit, filter),
    head: () => log.head(),
    sequence: () => sequencer.run(),
    onEvents(listener) {
      // Wrapped, so that the same function may listen twice and stop once.
      const entry = (): void => listener();
      listeners.add(entry);
      return () => void listeners.delete(entry);
    },
    cursor: (consumer) => log.cursor(consumer),
    moveCursor: (consumer, position) => log.moveCursor(consumer, position),
    fact: (name) => log.fact(name),
    setFact: (name, value) => log.setFact(name, value),
    tokens: new Tokens(database),
    async close() {
      listeners.clear();
      await Promise.all([sequencer.close(), hearing?.close()]);
      await database.close();
    },
  };
}
