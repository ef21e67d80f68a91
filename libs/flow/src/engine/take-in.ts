import type { PressState, PressStates } from '#libs/craft';
import { done, error, hasErrors, type Problem, type Result, refuse } from '#libs/kernel';
import { placeForward } from '#libs/scheduling';
import { type Arrival, acceptTicket, type Placement, rejectTicket } from '../decide/accept.js';
import { together } from '../decide/draft.js';
import { type Decision, ReceiptTaken, type StoredDocument } from '../ports.js';
import { useItems } from '../process/index.js';
import type { TicketFile } from '../state/ticket.js';
import { calendarsOf } from './calendars.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';
import type { Reading, ToRead } from './reading.js';

/** A document as it came through any of the doors. */
export interface Incoming {
  readonly bytes: Uint8Array;
  readonly sha256: string;
  readonly mediaType: string;
  readonly name: string | null;
  /** The door: http, jmf, hotFolder, commandLine, demo. */
  readonly intake: string;
  /** The ticket inside a package, once unpacked; the whole document otherwise. */
  readonly ticket: ToRead | null;
  /** Why it could not be unpacked. */
  readonly problems: readonly Problem[];
  /** A repeat under the same key gives the same answer and does nothing. */
  readonly key: { readonly scope: string; readonly key: string } | null;
  readonly priority?: number | null;
  readonly hold?: boolean;
  readonly returnUrl?: string | null;
}

export interface TakenIn {
  readonly file: TicketFile;
  /** The same request was answered before. */
  readonly repeated: boolean;
}

/**
 * Takes a document in: keeps it byte for byte, checks and plans it, and writes ticket, steps and events in one
 * transaction. A document that is no sound ticket is kept too, as `Rejected` with its reasons. Refused only when its key
 * was used with another body.
 */
export async function takeIn(ports: EnginePorts, incoming: Incoming): Promise<Result<TakenIn>> {
  const before = await repeatOf(ports, incoming);
  if (before !== null) return before;
  const reading: Reading =
    incoming.ticket === null
      ? {
          kind: 'package',
          jobId: '',
          name: incoming.name ?? '',
          order: null,
          plan: null,
          pressStates: [],
          problems: incoming.problems,
        }
      : await ports.read(incoming.ticket, await pressStates(ports));
  const ticketId = ports.ids.next();
  const documentId = ports.ids.next();
  const arrival: Arrival = {
    ticketId,
    documentId,
    documentPart: incoming.ticket?.part ?? null,
    kind: incoming.ticket?.part == null ? reading.kind : 'package',
    intake: incoming.intake,
    jobId: reading.jobId,
    name: reading.name || (incoming.name ?? ''),
    problems: [...incoming.problems, ...withinPart(incoming.ticket?.part ?? null, reading.problems)],
    returnUrl: incoming.returnUrl ?? null,
    priority: incoming.priority ?? null,
    hold: incoming.hold ?? false,
  };
  try {
    await keep(ports, incoming, arrival, reading);
  } catch (cause) {
    if (!(cause instanceof ReceiptTaken)) throw cause;
    const repeat = await repeatOf(ports, incoming);
    if (repeat !== null) return repeat;
    throw cause;
  }
  return done({ file: (await ports.store.ticketFile(ticketId))!, repeated: false });
}

/** Places inside a package begin with the name of the part: `part!path`. */
function withinPart(part: string | null, problems: readonly Problem[]): readonly Problem[] {
  if (part === null) return problems;
  return problems.map((problem) => ({ ...problem, path: `${part}!${problem.path ?? ''}` }));
}

async function keep(
  ports: EnginePorts,
  incoming: Incoming,
  arrival: Arrival,
  reading: Reading,
): Promise<void> {
  const { order, plan } = reading;
  const sound = order !== null && plan !== null && !hasErrors(arrival.problems);
  const placements = sound ? await place(ports, plan) : new Map<string, Placement>();
  const items = sound ? useItems(plan, ports.plant).map((use) => use.item) : [];
  const { work } = await ports.store.change({ stock: [...new Set(items)] }, (slice): Decision<null> => {
    const context = contextOf(ports);
    const change = sound
      ? acceptTicket(arrival, order, plan, ports.plant, placements, slice.balances, context)
      : rejectTicket(arrival, context);
    const document: StoredDocument = {
      id: arrival.documentId,
      sha256: incoming.sha256,
      mediaType: incoming.mediaType,
      name: incoming.name,
      bytes: incoming.bytes,
      receivedAt: context.now,
    };
    const receipts =
      incoming.key === null
        ? []
        : [
            {
              ...incoming.key,
              bodyHash: incoming.sha256,
              ticketId: arrival.ticketId,
              createdAt: context.now,
            },
          ];
    return { ...together({ documents: [document], receipts }, change), result: null };
  });
  if (sound && reading.pressStates.length > 0) await rememberPresses(ports, reading.pressStates);
  await offerWork(ports, work);
}

const PRESSES = 'presses';

/** What the presses will hold after the jobs planned so far, the latest first: where the next change-over begins. */
async function pressStates(ports: EnginePorts): Promise<PressStates> {
  const states = ((await ports.store.fact(PRESSES)) ?? []) as readonly PressState[];
  return new Map(states.map((state) => [state.press, state]));
}

async function rememberPresses(ports: EnginePorts, states: readonly PressState[]): Promise<void> {
  const now = new Set(states.map(({ press }) => press));
  const others = [...(await pressStates(ports)).values()].filter(({ press }) => !now.has(press));
  await ports.store.setFact(PRESSES, [...states, ...others]);
}

async function repeatOf(ports: EnginePorts, incoming: Incoming): Promise<Result<TakenIn> | null> {
  if (incoming.key === null) return null;
  const receipt = await ports.store.receipt(incoming.key.scope, incoming.key.key);
  if (receipt === null) return null;
  if (receipt.bodyHash !== incoming.sha256) {
    return refuse(error('KEY_REUSED', 'This Idempotency-Key was used with another body.'));
  }
  return done({ file: (await ports.store.ticketFile(receipt.ticketId))!, repeated: true });
}

/** A first place in time for each step: after what is planned on its device already. A later issue's engine betters it. */
async function place(
  ports: EnginePorts,
  plan: NonNullable<Reading['plan']>,
): Promise<ReadonlyMap<string, Placement>> {
  const now = ports.clock.now();
  const horizons = await ports.store.deviceHorizons();
  return placeForward(plan.steps, { now, horizons, calendars: calendarsOf(ports.plant, now) });
}
