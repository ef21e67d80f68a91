import type { Plant, PressStates } from '#libs/craft';
import type { Clock, IdSource } from '#libs/kernel';
import type { DecisionContext } from '../decide/draft.js';
import type { DeviceLink, Store, StoredDocument, Work, WorkQueue } from '../ports.js';
import type { TicketFile } from '../state/ticket.js';
import type { Reading, ToRead } from './reading.js';

/** One line of the log, with facts. Never a secret, never a document. */
export type Log = (
  level: 'debug' | 'info' | 'warn' | 'error',
  message: string,
  facts?: Record<string, unknown>,
) => void;

/** Everything a use case is given. Wired once by the server, or by a test with virtual time. */
export interface EnginePorts {
  readonly store: Store;
  readonly queue: WorkQueue;
  readonly link: DeviceLink;
  readonly clock: Clock;
  readonly ids: IdSource;
  readonly plant: Plant;
  readonly log: Log;
  /** Reads, checks and plans a document, beside the thread that serves where there is one, within a time budget. */
  readonly read: (document: ToRead, presses: PressStates) => Promise<Reading>;
  /** The ticket as it came, taken out of its package where it came in one. */
  readonly ticketDocument: (file: TicketFile) => Promise<StoredDocument | null>;
  /** This server's /jmf as devices reach it. */
  readonly jmfUrl: string;
  /** Sidelay's own DeviceID. */
  readonly deviceId: string;
}

/** What a decision may know of the outside: the time now and the maker of identifiers. */
export function contextOf(ports: Pick<EnginePorts, 'clock' | 'ids'>): DecisionContext {
  return { now: ports.clock.now(), ids: ports.ids };
}

/**
 * Offers hints for what was committed. A queue that is away costs only time: the sweep offers the same again, so its
 * failure is logged and never reaches the caller, whose change is already true.
 */
export async function offerWork(
  ports: Pick<EnginePorts, 'queue' | 'log'>,
  work: readonly Work[],
): Promise<void> {
  if (work.length === 0) return;
  try {
    await ports.queue.offer(work);
  } catch (cause) {
    ports.log('warn', 'the queue did not take hints; the sweep will offer them again', {
      hints: work.length,
      cause: String(cause),
    });
  }
}
