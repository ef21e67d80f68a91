import type { NodeStatus, NotificationClass, QueueEntryStatus } from '#libs/jdf';
import type { Instant } from '#libs/kernel';
import type { Work } from '../ticket/work.js';

/** A removed entry is gone, so it has no status of its own here. */
export type EntryStatus = Exclude<QueueEntryStatus, 'Removed'>;

/** What the machine is going to do for a while: so many seconds, in which so many pieces come out. */
export interface Segment {
  readonly status: Extract<NodeStatus, 'Setup' | 'InProgress' | 'Cleanup' | 'Stopped' | 'Suspended'>;
  readonly statusDetails: string | null;
  /** Null: until somebody does something. */
  readonly durationS: number | null;
  readonly good: number;
  readonly waste: number;
  /** Said when it begins. */
  readonly notice: Notice | null;
}

export interface Notice {
  readonly class: NotificationClass;
  readonly text: string;
}

/** A stretch of the run that is over. */
export interface Phase {
  readonly start: Instant;
  readonly end: Instant;
  readonly status: Segment['status'];
  readonly statusDetails: string | null;
  readonly good: number;
  readonly waste: number;
}

/** The work on one queue entry. */
export interface Run {
  readonly start: Instant;
  phases: Phase[];
  /**
   * What goes on now. `start` names the phase towards the outside and never changes; progress counts from `anchor`, which
   * is moved when the plant clock is set anew.
   */
  current: { readonly segment: Segment; readonly start: Instant; anchor: Instant } | null;
  rest: Segment[];
  reportAt: Instant | null;
  notices: (Notice & { readonly time: Instant })[];
  /** Pieces by which the use of material was reported last; the same is not said again. */
  usedSaid: number | null;
}

export interface Entry {
  readonly id: string;
  status: EntryStatus;
  priority: number;
  /** Position among entries of one priority. */
  order: number;
  submitted: Instant;
  start: Instant | null;
  end: Instant | null;
  returnJmf: string | null;
  returnUrl: string | null;
  /** The ticket as it came; null once it has gone back. */
  ticket: string | null;
  work: Work;
  run: Run | null;
  /** The status that follows when the ticket has been delivered. */
  endStatus: 'Completed' | 'Aborted' | null;
}

/** A subscription of somebody. */
export interface Channel {
  readonly id: string;
  readonly type: string;
  readonly url: string;
}

/** A message that has still to reach its receiver, exactly as it will be sent. */
export interface OutboxItem {
  readonly url: string;
  readonly contentType: string;
  readonly body: string;
  readonly kind: 'signal' | 'return';
  /** A later item with the same key makes this one needless. */
  readonly key: string | null;
  /** The entry whose return this is. */
  readonly entryId: string | null;
}

/** All that a device must remember over its own sudden end. Plain data, so that it can be written as JSON. */
export interface DeviceState {
  readonly version: 1;
  entries: Entry[];
  channels: Channel[];
  outbox: OutboxItem[];
  /** The last signals that were delivered, oldest first; kept only by a device that repeats itself. */
  delivered: OutboxItem[];
  closed: boolean;
  held: boolean;
  /** When somebody of the crew will be at the machine and press the button. */
  crewAt: Instant | null;
  heartbeatAt: Instant | null;
  idleSince: Instant | null;
  /** Pieces over the device's life. */
  counter: number;
  submissions: number;
  runs: number;
  orders: number;
  messages: number;
}

export function emptyState(): DeviceState {
  return {
    version: 1,
    entries: [],
    channels: [],
    outbox: [],
    delivered: [],
    closed: false,
    held: false,
    crewAt: null,
    heartbeatAt: null,
    idleSince: null,
    counter: 0,
    submissions: 0,
    runs: 0,
    orders: 0,
    messages: 0,
  };
}
