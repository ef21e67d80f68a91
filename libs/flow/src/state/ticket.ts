/**
 * What the truth holds about one ticket. Rows are plain, readonly values; a decision makes new ones, and the store writes
 * those that are no longer the same object. Instants are plant time in milliseconds.
 */
import type { Plan } from '#libs/craft';
import type { Instant, Problem } from '#libs/kernel';

/** Node status of the standard; `Rejected` is our one word beside it, for a document that is no sound, possible ticket. */
export type NodeStatus =
  | 'Waiting'
  | 'Ready'
  | 'Setup'
  | 'InProgress'
  | 'Cleanup'
  | 'Stopped'
  | 'Suspended'
  | 'Completed'
  | 'Aborted';
export type TicketStatus = NodeStatus | 'Rejected';
export type Activation = 'Held' | 'Active';

/** Who said so: a machine by message, a person by hand, or nobody (taken from the plan). */
export type Source = 'machine' | 'person' | 'assumed';

export type DocumentKind = 'jdf' | 'xjdf' | 'order' | 'package' | 'unknown';

export interface Ticket {
  readonly id: string;
  readonly jobId: string;
  readonly jobPartId: string | null;
  readonly name: string;
  readonly customer: string | null;
  readonly status: TicketStatus;
  readonly statusDetails: string | null;
  readonly activation: Activation;
  readonly quantity: number;
  readonly due: Instant | null;
  /** 0 to 100; 50 unless the ticket says otherwise. */
  readonly priority: number;
  readonly kind: DocumentKind;
  /** The document as it came, byte for byte. */
  readonly documentId: string;
  /** The part of a package that is the ticket, else null. */
  readonly documentPart: string | null;
  /** How it came in: http, jmf, hotFolder, commandLine, demo. */
  readonly intake: string;
  /** Where a submitter asked for the finished ticket, else null. */
  readonly returnUrl: string | null;
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
  readonly createdAt: Instant;
  readonly updatedAt: Instant;
  /** Counted up by the store with every change of any row of the file. */
  readonly revision: number;
}

export interface Step {
  readonly ticketId: string;
  /** The plan's step id, unique within the ticket; JobPartID on the wire. */
  readonly id: string;
  readonly ordinal: number;
  readonly types: readonly string[];
  readonly deviceId: string | null;
  readonly status: NodeStatus;
  readonly statusDetails: string | null;
  readonly activation: Activation;
  /** Steps that come before, by id. */
  readonly after: readonly string[];
  /** Resources of this ticket by id. */
  readonly inputs: readonly string[];
  readonly outputs: readonly string[];
  readonly setupS: number;
  readonly runS: number;
  /** What must pass after this step before the next may begin (drying, cooling). */
  readonly waitAfterS: number;
  readonly inAmount: number;
  readonly inUnit: string;
  readonly outAmount: number;
  readonly unit: string;
  readonly plannedStart: Instant | null;
  readonly plannedEnd: Instant | null;
  readonly start: Instant | null;
  readonly end: Instant | null;
  readonly good: number;
  readonly waste: number;
  /** Pulled for inspection: neither good nor waste. */
  readonly samples: number;
}

export type ResourceStatus = 'Unavailable' | 'InUse' | 'Available';

/** What passes from one step to the next: files, plates, printed sheets, signatures, books. */
export interface Resource {
  readonly ticketId: string;
  readonly id: string;
  /** Element name of the standard: RunList, ExposedMedia, Component. */
  readonly name: string;
  readonly status: ResourceStatus;
  readonly unit: string;
  readonly planned: number;
  readonly produced: number;
  /** Earliest instant it may be used (drying), once produced. */
  readonly usableFrom: Instant | null;
}

export type EntryStatus =
  | 'Waiting'
  | 'Held'
  | 'Running'
  | 'Suspended'
  | 'PendingReturn'
  | 'Completed'
  | 'Aborted';

/** How far an entry has got on its way to the device. */
export type Delivery = 'pending' | 'delivered' | 'refused';

/** One step in one device's queue. A step has at most one entry that has not ended. */
export interface QueueEntry {
  readonly id: string;
  readonly ticketId: string;
  readonly stepId: string;
  readonly deviceId: string;
  readonly status: EntryStatus;
  readonly delivery: Delivery;
  /** QueueEntryID that the device gave, once delivered. */
  readonly deviceEntryId: string | null;
  /** Counted up with every try; a late answer of an earlier try is recognised by it. */
  readonly attempt: number;
  /** Not tried again before. */
  readonly notBefore: Instant | null;
  /** Why the last try failed, for people. */
  readonly lastError: string | null;
  /** The device has given the ticket back. */
  readonly returned: boolean;
  /** A status the device has still to be told of. */
  readonly wanted: 'Held' | 'Waiting' | 'Aborted' | null;
  readonly priority: number;
  readonly submitted: Instant;
  readonly start: Instant | null;
  readonly end: Instant | null;
}

/**
 * A stretch of time in one status on one device. Its key is (device, step, start): a device repeats itself after every
 * reconnect with a new message but the same start.
 */
export interface Phase {
  readonly ticketId: string;
  readonly stepId: string;
  readonly deviceId: string;
  readonly start: Instant;
  readonly end: Instant | null;
  readonly status: NodeStatus;
  readonly statusDetails: string | null;
  readonly good: number;
  readonly waste: number;
  readonly source: Source;
}

export type UseUnit = 'sheets' | 'plates' | 'kg' | 'copies';

/** What a step uses of one thing: planned, really used (`actual`, all of it) and the part of that which was lost. */
export interface Use {
  readonly ticketId: string;
  readonly stepId: string;
  readonly deviceId: string | null;
  /** Stock item, e.g. a paper, a plate kind, an ink. */
  readonly item: string;
  readonly unit: UseUnit;
  readonly planned: number;
  /** Still set aside in the store for this step. */
  readonly reserved: number;
  readonly actual: number;
  readonly waste: number;
  readonly source: Source;
}

/** Everything about one ticket, loaded and locked together. */
export interface TicketFile {
  readonly ticket: Ticket;
  readonly steps: readonly Step[];
  readonly resources: readonly Resource[];
  readonly entries: readonly QueueEntry[];
  readonly phases: readonly Phase[];
  readonly uses: readonly Use[];
}
