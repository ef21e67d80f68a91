/**
 * Where every step of every live job lies on the common time line. What has happened lies where it happened; what is to
 * come is laid behind it at its planned width: not before the steps it follows, not before its planned start, and one
 * step at a time on each device. Without a schedule from the server that is a forecast of ours and nothing more.
 */
import type { Step, Ticket } from '../server/shapes.js';
import { withTimes } from '../time/phrases.js';
import { frontWaiting, isWorking, stepStatus } from '../words/steps.js';

export type SegmentState = 'done' | 'running' | 'stopped' | 'waiting' | 'aborted';

export interface Segment {
  readonly step: Step;
  readonly state: SegmentState;
  /** Plant time, milliseconds. */
  readonly fromMs: number;
  readonly toMs: number;
  /** Share of the planned work that is done, 0 to 1. */
  readonly doneShare: number;
  /** Line within the strip, for steps that run side by side. */
  readonly row: number;
}

/** The time in which a step could run and does not. */
export interface Gap {
  readonly step: Step;
  readonly fromMs: number;
  readonly toMs: number;
  readonly row: number;
  readonly reason: string;
}

export interface Strip {
  readonly ticket: Ticket;
  readonly segments: readonly Segment[];
  readonly gaps: readonly Gap[];
  readonly rows: number;
  readonly cameMs: number;
  /** When the last step ends, or is expected to; null for a ticket without steps. */
  readonly endMs: number | null;
  readonly dueMs: number | null;
  /** Seconds by which the end lies behind the due time; 0 when in time. */
  readonly lateS: number;
}

interface Laid {
  readonly step: Step;
  readonly state: SegmentState;
  readonly fromMs: number;
  readonly toMs: number;
  readonly doneShare: number;
}

const instant = (iso: string | null): number | null => (iso === null ? null : Date.parse(iso));
const plannedMs = (step: Step): number => (step.setupS + step.runS) * 1000;

/** Share of the planned seconds that lie behind a working step; set-up counts once a good piece is there. */
export function shareDone(step: Step): number {
  const total = step.setupS + step.runS;
  if (total === 0 || step.good === 0 || step.planned === 0) return 0;
  return (step.setupS + step.runS * Math.min(1, step.good / step.planned)) / total;
}

/** Lays all strips at once, for their steps share the devices. `nowMs` is plant time in milliseconds. */
export function layStrips(tickets: readonly Ticket[], nowMs: number): Strip[] {
  const laid = new Map<string, Laid>();
  const freeMs = new Map<string, number>();
  const keyOf = (ticket: Ticket, id: string): string => `${ticket.id}\n${id}`;
  const place = (ticket: Ticket, placed: Laid): void => {
    laid.set(keyOf(ticket, placed.step.id), placed);
    const { device } = placed.step;
    if (device !== null && placed.state !== 'done' && placed.state !== 'aborted') {
      freeMs.set(device, Math.max(freeMs.get(device) ?? 0, placed.toMs));
    }
  };

  const open: { ticket: Ticket; step: Step }[] = [];
  const openKeys = new Set<string>();
  for (const ticket of tickets) {
    for (const step of ticket.steps) {
      const fact = layFact(step, nowMs);
      if (fact !== null) place(ticket, fact);
      else if (step.status !== 'Aborted' && ticket.status !== 'Aborted') {
        open.push({ ticket, step });
        openKeys.add(keyOf(ticket, step.id));
      }
    }
  }
  const laidOrOpen = (ticket: Ticket, id: string): Laid | 'open' | undefined =>
    openKeys.has(keyOf(ticket, id)) ? 'open' : laid.get(keyOf(ticket, id));
  // The earliest possible goes first, then the more urgent, then the older.
  while (open.length > 0) {
    let best: { at: number; fromMs: number } | null = null;
    for (const [at, { ticket, step }] of open.entries()) {
      const fromMs = earliestMs(step, (id) => laidOrOpen(ticket, id), freeMs, nowMs);
      if (fromMs === null) continue;
      if (
        best === null ||
        fromMs < best.fromMs ||
        (fromMs === best.fromMs && goesBefore(open[at]!, open[best.at]!))
      ) {
        best = { at, fromMs };
      }
    }
    // Only steps in a circle are left: nothing that could be laid anywhere.
    if (best === null) break;
    const [{ ticket, step }] = open.splice(best.at, 1) as [{ ticket: Ticket; step: Step }];
    openKeys.delete(keyOf(ticket, step.id));
    const { fromMs } = best;
    place(ticket, { step, state: 'waiting', fromMs, toMs: fromMs + plannedMs(step), doneShare: 0 });
  }
  return tickets.map((ticket) =>
    stripOf(
      ticket,
      ticket.steps.flatMap((step) => laid.get(keyOf(ticket, step.id)) ?? []),
      nowMs,
    ),
  );
}

const goesBefore = (a: { ticket: Ticket }, b: { ticket: Ticket }): boolean =>
  a.ticket.priority !== b.ticket.priority
    ? a.ticket.priority > b.ticket.priority
    : a.ticket.created < b.ticket.created;

/** A step that has begun lies where it began; one that works on ends no earlier than its remaining work allows. */
function layFact(step: Step, nowMs: number): Laid | null {
  const start = instant(step.start);
  const end = instant(step.end);
  if (step.status === 'Completed') {
    const toMs = end ?? start ?? nowMs;
    return {
      step,
      state: 'done',
      fromMs: Math.min(start ?? toMs - plannedMs(step), toMs),
      toMs,
      doneShare: 1,
    };
  }
  if (step.status === 'Aborted') {
    if (start === null) return null;
    return { step, state: 'aborted', fromMs: start, toMs: end ?? nowMs, doneShare: shareDone(step) };
  }
  if (!isWorking(step)) return null;
  const fromMs = start ?? instant(step.since) ?? nowMs;
  const doneShare = shareDone(step);
  const toMs = Math.max(fromMs + plannedMs(step), nowMs + plannedMs(step) * (1 - doneShare));
  const state = step.status === 'Stopped' || step.status === 'Suspended' ? 'stopped' : 'running';
  return { step, state, fromMs, toMs, doneShare };
}

/** When a step could begin, or null while a step before it has no place yet. */
function earliestMs(
  step: Step,
  laidOf: (id: string) => Laid | 'open' | undefined,
  freeMs: ReadonlyMap<string, number>,
  nowMs: number,
): number | null {
  let at = Math.max(nowMs, instant(step.plannedStart) ?? 0);
  for (const id of step.after) {
    const before = laidOf(id);
    if (before === 'open') return null;
    if (before !== undefined) at = Math.max(at, before.toMs);
  }
  return step.device === null ? at : Math.max(at, freeMs.get(step.device) ?? 0);
}

function stripOf(ticket: Ticket, laid: readonly Laid[], nowMs: number): Strip {
  const { rowOf, rows } = rowsOf(laid);
  const segments = laid.map((one) => ({ ...one, row: rowOf.get(one.step.id)! }));
  const cameMs = Date.parse(ticket.created);
  const endMs = laid.length === 0 ? null : Math.max(...laid.map((one) => one.toMs));
  const dueMs = instant(ticket.due);
  return {
    ticket,
    segments,
    gaps: gapsOf(ticket, segments, cameMs, nowMs),
    rows,
    cameMs,
    endMs,
    dueMs,
    lateS: endMs === null || dueMs === null ? 0 : Math.max(0, (endMs - dueMs) / 1000),
  };
}

/** Steps that overlap in time take different rows; a step takes the first row that is free at its start. */
function rowsOf(laid: readonly Laid[]): { rowOf: Map<string, number>; rows: number } {
  const rowOf = new Map<string, number>();
  const endOf: number[] = [];
  for (const one of [...laid].sort((a, b) => a.fromMs - b.fromMs)) {
    const free = endOf.findIndex((end) => end <= one.fromMs);
    const row = free === -1 ? endOf.length : free;
    endOf[row] = one.toMs;
    rowOf.set(one.step.id, row);
  }
  return { rowOf, rows: Math.max(1, endOf.length) };
}

function gapsOf(ticket: Ticket, segments: readonly Segment[], cameMs: number, nowMs: number): Gap[] {
  return frontWaiting(ticket).flatMap((step) => {
    const segment = segments.find((one) => one.step.id === step.id);
    const before = segments.filter((one) => step.after.includes(one.step.id)).map((one) => one.toMs);
    const fromMs = Math.min(nowMs, before.length > 0 ? Math.max(...before) : cameMs);
    const toMs = segment?.fromMs ?? nowMs;
    const reason = withTimes(step.waitsFor ?? stepStatus(step), nowMs);
    return [{ step, fromMs, toMs, row: segment?.row ?? 0, reason }];
  });
}
