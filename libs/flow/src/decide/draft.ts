import { type Code, error, Fault, type IdSource, type Instant, type Problem } from '#libs/kernel';
import type { Change, Work } from '../ports.js';
import type { EventType, NewEvent } from '../state/event.js';
import type { Balance, StockAccount, StockMove } from '../state/stock.js';
import type { Phase, QueueEntry, Resource, Step, Ticket, TicketFile, Use } from '../state/ticket.js';

/** What every decision is given beside the rows it decides on. */
export interface DecisionContext {
  readonly now: Instant;
  readonly ids: IdSource;
}

interface EventPlace {
  readonly stepId?: string | null;
  readonly deviceId?: string | null;
  /** When it happened in the plant, if that is not now. */
  readonly time?: Instant;
}

/**
 * One ticket's file while a decision is being made: reads see what was already decided, rows that were not touched stay
 * the same objects, and everything that follows from the decision is gathered in one `Change`. Lives for one decision.
 */
export class FileDraft {
  ticket: Ticket;
  #steps: readonly Step[];
  #resources: readonly Resource[];
  #entries: readonly QueueEntry[];
  #phases: readonly Phase[];
  #uses: readonly Use[];
  readonly #events: NewEvent[] = [];
  readonly #moves: StockMove[] = [];
  readonly #work: Work[] = [];

  constructor(
    file: TicketFile,
    readonly context: DecisionContext,
    /** Locked with the file where stock may be booked. */
    readonly balances: ReadonlyMap<string, Balance> = new Map(),
  ) {
    this.ticket = file.ticket;
    this.#steps = file.steps;
    this.#resources = file.resources;
    this.#entries = file.entries;
    this.#phases = file.phases;
    this.#uses = file.uses;
  }

  get now(): Instant {
    return this.context.now;
  }
  get steps(): readonly Step[] {
    return this.#steps;
  }
  get resources(): readonly Resource[] {
    return this.#resources;
  }
  get entries(): readonly QueueEntry[] {
    return this.#entries;
  }
  get phases(): readonly Phase[] {
    return this.#phases;
  }
  get uses(): readonly Use[] {
    return this.#uses;
  }

  step(id: string): Step {
    const found = this.#steps.find((step) => step.id === id);
    if (found === undefined) throw new Fault('STEP_UNKNOWN', `ticket ${this.ticket.id} has no step ${id}`);
    return found;
  }

  /** The step's entry that has not ended. */
  liveEntry(stepId: string): QueueEntry | null {
    return (
      this.#entries.find((e) => e.stepId === stepId && e.status !== 'Completed' && e.status !== 'Aborted') ??
      null
    );
  }

  setTicket(change: Partial<Ticket>): void {
    this.ticket = merged(this.ticket, change);
  }
  setStep(id: string, change: Partial<Step>): void {
    this.#steps = this.#steps.map((step) => (step.id === id ? merged(step, change) : step));
  }
  setResource(id: string, change: Partial<Resource>): void {
    this.#resources = this.#resources.map((row) => (row.id === id ? merged(row, change) : row));
  }
  setEntry(id: string, change: Partial<QueueEntry>): void {
    this.#entries = this.#entries.map((row) => (row.id === id ? merged(row, change) : row));
  }
  addEntry(entry: QueueEntry): void {
    this.#entries = [...this.#entries, entry];
  }
  setPhase(key: Phase, change: Partial<Phase>): void {
    this.#phases = this.#phases.map((row) => (samePhase(row, key) ? merged(row, change) : row));
  }
  addPhase(phase: Phase): void {
    this.#phases = [...this.#phases, phase].sort((a, b) => a.start - b.start);
  }
  setUse(stepId: string, item: string, change: Partial<Use>): void {
    this.#uses = this.#uses.map((row) =>
      row.stepId === stepId && row.item === item ? merged(row, change) : row,
    );
  }
  addUse(use: Use): void {
    this.#uses = [...this.#uses, use];
  }

  event(type: EventType, data: Readonly<Record<string, unknown>>, place: EventPlace = {}): void {
    this.#events.push({
      type,
      time: place.time ?? this.now,
      ticketId: this.ticket.id,
      stepId: place.stepId ?? null,
      deviceId: place.deviceId ?? null,
      data,
    });
  }

  /** Books stock from one account to another, with its event. Nothing is booked for an amount of zero. */
  move(
    what: {
      item: string;
      unit: string;
      amount: number;
      from: StockAccount;
      to: StockAccount;
      reason: string;
    },
    stepId: string | null,
  ): void {
    if (what.amount <= 0) return;
    const move: StockMove = {
      id: this.context.ids.next(),
      time: this.now,
      lot: '',
      ticketId: this.ticket.id,
      stepId,
      ...what,
    };
    this.#moves.push(move);
    const { item, unit, amount, from, to, reason } = what;
    this.event('stock.moved', { item, unit, amount, from, to, reason }, { stepId });
  }

  /** What an account of the book holds once all that was decided here is booked. */
  balance(item: string, account: 'store' | 'reserved'): number {
    let amount = this.balances.get(item)?.[account] ?? 0;
    for (const move of this.#moves) {
      if (move.item !== item) continue;
      if (move.to === account) amount += move.amount;
      if (move.from === account) amount -= move.amount;
    }
    return amount;
  }

  offer(work: Work): void {
    this.#work.push(work);
  }

  change(): Change {
    return {
      tickets: [
        {
          ticket: this.ticket,
          steps: this.#steps,
          resources: this.#resources,
          entries: this.#entries,
          phases: this.#phases,
          uses: this.#uses,
        },
      ],
      events: this.#events,
      moves: this.#moves,
      work: this.#work,
    };
  }
}

/** The same object when nothing differs, so that the store has nothing to write. */
export function merged<T extends object>(row: T, change: Partial<T>): T {
  const differs = (Object.keys(change) as (keyof T)[]).some((key) => row[key] !== change[key]);
  return differs ? { ...row, ...change } : row;
}

/** Whether a phase is the one that a report is of: its key is device, step and start. */
export function samePhase(a: Phase, b: Pick<Phase, 'deviceId' | 'stepId' | 'start'>): boolean {
  return a.deviceId === b.deviceId && a.stepId === b.stepId && a.start === b.start;
}

/** Several changes as one, written together. */
export function together(...changes: readonly Change[]): Change {
  return {
    tickets: changes.flatMap((c) => c.tickets ?? []),
    devices: changes.flatMap((c) => c.devices ?? []),
    documents: changes.flatMap((c) => c.documents ?? []),
    receipts: changes.flatMap((c) => c.receipts ?? []),
    stockItems: changes.flatMap((c) => c.stockItems ?? []),
    moves: changes.flatMap((c) => c.moves ?? []),
    events: changes.flatMap((c) => c.events ?? []),
    work: changes.flatMap((c) => c.work ?? []),
  };
}

/** A command that the present state forbids. */
export function forbidden(code: Code, message: string): { readonly change: null; readonly problem: Problem } {
  return { change: null, problem: error(code, message) };
}
