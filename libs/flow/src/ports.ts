/** The few doors to the outside that decisions need. One per outside world, not one per table (docs/decisions/0002). */
import type { Instant } from '#libs/kernel';
import type { Device } from './state/device.js';
import type { EventFilter, LoggedEvent, NewEvent } from './state/event.js';
import type { Balance, StockItem, StockMove } from './state/stock.js';
import type { Phase, QueueEntry, Ticket, TicketFile } from './state/ticket.js';

// ---- the truth -------------------------------------------------------------------------------------------------------

/** What a decision wants locked. Unknown ids are simply absent from the slice. */
export interface Keys {
  readonly tickets?: readonly string[];
  readonly devices?: readonly string[];
  readonly stock?: readonly string[];
}

export interface Slice {
  readonly tickets: ReadonlyMap<string, TicketFile>;
  readonly devices: ReadonlyMap<string, Device>;
  /** Missing for an item that was never booked. */
  readonly balances: ReadonlyMap<string, Balance>;
}

/** A document as it came, kept for good. */
export interface StoredDocument {
  readonly id: string;
  readonly sha256: string;
  readonly mediaType: string;
  readonly name: string | null;
  readonly bytes: Uint8Array;
  readonly receivedAt: Instant;
}

/** The answer that was given to a request with a key, so that its repeat gets the same and does nothing. */
export interface Receipt {
  readonly scope: string;
  readonly key: string;
  readonly bodyHash: string;
  readonly ticketId: string;
  readonly createdAt: Instant;
}

/** What to write: rows that are the same object as in the slice are left alone. */
export interface Change {
  readonly tickets?: readonly TicketFile[];
  readonly devices?: readonly Device[];
  readonly documents?: readonly StoredDocument[];
  readonly receipts?: readonly Receipt[];
  readonly stockItems?: readonly StockItem[];
  readonly moves?: readonly StockMove[];
  readonly events?: readonly NewEvent[];
  /** Hints for the queues, offered once the change is committed. */
  readonly work?: readonly Work[];
}

export interface Decision<R> extends Change {
  readonly result: R;
}

export interface Page<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

export interface TicketQuery {
  readonly status?: string;
  /** Matches the start of id or jobId, or a part of name or customer. */
  readonly q?: string;
  readonly cursor?: string;
  readonly limit: number;
}

/** Where a device's message belongs: the live or latest step that this device was given under these names. */
export interface StepAddress {
  readonly ticketId: string;
  readonly stepId: string;
  /** The step has ended: what is said of it now corrects its books. */
  readonly ended: boolean;
}

export interface Store {
  /**
   * The only way to write: locks the rows named (tickets, then devices, then stock, each in id order), calls the pure
   * `decide` once, writes rows and events in one transaction, and returns the result after commit. A `Receipt` whose
   * (scope, key) exists already makes the whole change fail with `ReceiptTaken`.
   */
  change<R>(keys: Keys, decide: (slice: Slice) => Decision<R>): Promise<{ result: R; work: readonly Work[] }>;

  ticketFile(id: string): Promise<TicketFile | null>;
  tickets(query: TicketQuery): Promise<Page<TicketFile>>;
  ticketsByJob(jobId: string): Promise<readonly Ticket[]>;
  document(id: string): Promise<StoredDocument | null>;
  receipt(scope: string, key: string): Promise<Receipt | null>;
  devices(): Promise<readonly Device[]>;
  device(id: string): Promise<Device | null>;
  /** Entries of a device that have not ended, then those that ended last, at most `limit`. */
  entries(deviceId: string, limit: number): Promise<readonly QueueEntry[]>;
  phases(deviceId: string, from: Instant, to: Instant): Promise<readonly Phase[]>;
  findStep(
    deviceId: string,
    name: { jobId?: string; jobPartId?: string; queueEntryId?: string },
  ): Promise<StepAddress | null>;
  /** Latest planned end per device of steps that have not ended: where a new job can begin at the earliest. */
  deviceHorizons(): Promise<ReadonlyMap<string, Instant>>;
  stock(): Promise<
    readonly (StockItem & {
      accounts: Readonly<Record<string, number>>;
      lots: readonly { lot: string; onHand: number }[];
    })[]
  >;
  moves(query: {
    cursor?: string;
    limit: number;
    item?: string;
    ticketId?: string;
  }): Promise<Page<StockMove>>;
  /** Everything that is due to be tried now: what a sweep offers to the queues again. */
  openWork(now: Instant): Promise<readonly Work[]>;
  /** Tickets with a step that may have become startable by the passing of time alone (drying waits). */
  ticketsToWake(now: Instant): Promise<readonly string[]>;

  /** Events behind `position`, in order. */
  eventsAfter(position: number, limit: number, filter?: EventFilter): Promise<readonly LoggedEvent[]>;
  /** The last position given out. */
  head(): Promise<number>;
  /** Gives committed events their positions, and wakes listeners on every server. */
  sequence(): Promise<void>;
  /** Called after new positions were given out, here or on another server; returns the way to stop. */
  onEvents(listener: () => void): () => void;
  /** A consumer's own place in the log. */
  cursor(consumer: string): Promise<number>;
  moveCursor(consumer: string, position: number): Promise<void>;

  /** Small facts of the installation, such as how the plant clock was set. */
  fact(name: string): Promise<unknown>;
  setFact(name: string, value: unknown): Promise<void>;
  close(): Promise<void>;
}

/** Thrown by `change` when a receipt with that scope and key exists: the caller answers with the first request's result. */
export class ReceiptTaken extends Error {
  constructor(
    readonly scope: string,
    readonly key: string,
  ) {
    super('a request with this key was answered before');
    this.name = 'ReceiptTaken';
  }
}

// ---- access ----------------------------------------------------------------------------------------------------------

export type TokenKind = 'person' | 'device';

export interface Token {
  readonly id: string;
  readonly kind: TokenKind;
  /** A person's name, or the DeviceID it speaks for. */
  readonly name: string;
  readonly createdAt: Instant;
  readonly expiresAt: Instant | null;
  readonly revokedAt: Instant | null;
  readonly lastUsedAt: Instant | null;
}

export interface TokenStore {
  add(token: Token, secretHash: string): Promise<void>;
  /** The token with this hash, also if revoked or expired (the caller says which). */
  byHash(secretHash: string): Promise<Token | null>;
  list(): Promise<readonly Token[]>;
  revoke(id: string, at: Instant): Promise<boolean>;
  touch(id: string, at: Instant): Promise<void>;
}

// ---- hints -----------------------------------------------------------------------------------------------------------

/** A pointer to something to do; all it needs to know is read from the truth when it is done. */
export type Work =
  | {
      readonly kind: 'dispatch';
      readonly ticketId: string;
      readonly entryId: string;
      readonly attempt: number;
    }
  | { readonly kind: 'instruct'; readonly ticketId: string; readonly entryId: string };

export type WorkKind = Work['kind'];

/** One name for the same work, so that a repeat of a waiting hint is no second one. */
export function workId(work: Work): string {
  return work.kind === 'dispatch' ? `dispatch-${work.entryId}-${work.attempt}` : `instruct-${work.entryId}`;
}

/** Four verbs and no option of any queue library. What is lost here is offered again by a sweep. */
export interface WorkQueue {
  /** Adds hints; one that is already waiting under the same `workId` is not added twice. */
  offer(work: readonly Work[]): Promise<void>;
  /** Calls the handler for each hint, a few at a time. A handler that throws is tried a few times more, then dropped. */
  serve(handler: (work: Work) => Promise<void>): Promise<void>;
  /** Forgets all hints. */
  clear(): Promise<void>;
  close(): Promise<void>;
}

// ---- devices ---------------------------------------------------------------------------------------------------------

/** What a device is sent for one step. */
export interface Parcel {
  readonly ticketId: string;
  readonly stepId: string;
  readonly entryId: string;
  readonly jobId: string;
  readonly jobPartId: string;
  readonly name: string;
  readonly priority: number;
  /** The process ticket (JDF). */
  readonly document: string;
  /** Where the device returns it: this server's /jmf. */
  readonly returnUrl: string;
}

/** The only three ways that a delivery ends. */
export type DispatchOutcome =
  | { readonly outcome: 'taken'; readonly deviceEntryId: string }
  | { readonly outcome: 'later'; readonly reason: string; readonly silent: boolean }
  | { readonly outcome: 'refused'; readonly reason: string };

export interface DeviceLink {
  submit(device: Device, parcel: Parcel): Promise<DispatchOutcome>;
  /** Tells the device to hold, resume or abort an entry. `taken` also when it is so already. */
  instruct(
    device: Device,
    deviceEntryId: string,
    wanted: 'Held' | 'Waiting' | 'Aborted',
  ): Promise<DispatchOutcome>;
  /** The entries the device says it has, by its own ids; null when it can't be asked or does not answer. */
  knownEntries(device: Device): Promise<readonly string[] | null>;
}
