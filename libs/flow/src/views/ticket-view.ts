import { isoTime } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import type { Step, TicketFile } from '../state/ticket.js';

const timeOrNull = (at: number | null): string | null => (at === null ? null : isoTime(at));

/** A ticket as the outside sees it: times as RFC 3339, amounts as counted. */
export function ticketView(file: TicketFile): Record<string, unknown> {
  const { ticket } = file;
  return {
    id: ticket.id,
    jobId: ticket.jobId,
    name: ticket.name,
    customer: ticket.customer,
    status: ticket.status,
    statusDetails: ticket.statusDetails,
    activation: ticket.activation,
    quantity: ticket.quantity,
    due: timeOrNull(ticket.due),
    priority: ticket.priority,
    progressPct: progressPct(file.steps),
    kind: ticket.kind,
    intake: ticket.intake,
    created: isoTime(ticket.createdAt),
    updated: isoTime(ticket.updatedAt),
    revision: ticket.revision,
    steps: [...file.steps].sort((a, b) => a.ordinal - b.ordinal).map((step) => stepView(file, step)),
    problems: ticket.problems,
  };
}

function stepView(file: TicketFile, step: Step): Record<string, unknown> {
  const entry = file.entries.filter((row) => row.stepId === step.id).at(-1) ?? null;
  const latest = file.phases.filter((row) => row.stepId === step.id).at(-1) ?? null;
  return {
    id: step.id,
    types: step.types,
    status: step.status,
    statusDetails: step.statusDetails,
    activation: step.activation,
    device: step.deviceId,
    after: step.after,
    plannedStart: timeOrNull(step.plannedStart),
    plannedEnd: timeOrNull(step.plannedEnd),
    start: timeOrNull(step.start),
    end: timeOrNull(step.end),
    good: step.good,
    waste: step.waste,
    samples: step.samples,
    planned: step.outAmount,
    unit: step.unit,
    setupS: step.setupS,
    runS: step.runS,
    since: timeOrNull(latest?.start ?? entry?.submitted ?? null),
    source: latest?.source ?? null,
    waitsFor: waitsFor(file, step),
    entry:
      entry === null
        ? null
        : {
            id: entry.id,
            status: entry.status,
            delivery: entry.delivery,
            attempt: entry.attempt,
            lastError: entry.lastError,
          },
  };
}

/** What a step that has not begun is waiting for, in words; null for one that has. */
export function waitsFor(file: TicketFile, step: Step): string | null {
  if (step.status !== 'Waiting' || file.ticket.status === 'Rejected') return null;
  if (file.ticket.activation === 'Held') return 'the ticket is held';
  const refused = file.entries.filter((row) => row.stepId === step.id).at(-1);
  if (step.activation === 'Held') {
    return refused?.delivery === 'refused' ? `refused by ${refused.deviceId}: ${refused.lastError}` : 'held';
  }
  const missing = step.inputs.filter(
    (id) => file.resources.find((row) => row.id === id)?.status === 'Unavailable',
  );
  if (missing.length > 0) return `waits for ${missing.join(', ')}`;
  const drying = step.inputs.map((id) => file.resources.find((row) => row.id === id)?.usableFrom ?? null);
  if (refused === undefined || refused.status === 'Aborted') {
    const from = Math.max(0, ...drying.map((at) => at ?? 0));
    return from > 0 ? `dries until ${isoTime(from)}` : 'waits to be queued';
  }
  if (refused.delivery === 'pending') {
    return refused.lastError === null
      ? `on its way to ${step.deviceId}`
      : `${step.deviceId}: ${refused.lastError}`;
  }
  return `in the queue of ${step.deviceId}`;
}

/**
 * Planned seconds of finished work over all planned seconds, in percent. A running step counts its set-up once it runs,
 * and its run time by the share of the planned amount that is there. Aborted work counts for nothing done.
 */
export function progressPct(steps: readonly Step[]): number {
  const total = steps.reduce((sum, step) => sum + step.setupS + step.runS, 0);
  if (total === 0) return steps.length > 0 && steps.every((step) => step.status === 'Completed') ? 100 : 0;
  const doneS = steps.reduce((sum, step) => sum + secondsDone(step), 0);
  return Math.round((1000 * doneS) / total) / 10;
}

function secondsDone(step: Step): number {
  if (step.status === 'Completed') return step.setupS + step.runS;
  if (step.status === 'Aborted' || isFinal(nodeStatus, step.status) || step.good === 0) return 0;
  return step.setupS + step.runS * Math.min(1, step.outAmount > 0 ? step.good / step.outAmount : 0);
}

/** Planned against used, line by line, as `/consumption` answers it. */
export function consumptionView(file: TicketFile): readonly Record<string, unknown>[] {
  return file.uses.map((use) => ({
    resource: use.item,
    unit: use.unit,
    planned: use.planned,
    actual: use.actual,
    waste: use.waste,
    device: use.deviceId,
    step: use.stepId,
    source: use.source,
  }));
}
