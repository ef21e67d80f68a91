import type { EventType, LoggedEvent } from '../state/event.js';

type Facts = Readonly<Record<string, unknown>>;
type Sentence = (facts: Facts, event: LoggedEvent) => string;

const step = (event: LoggedEvent): string => `Step ${event.stepId}`;
const amount = (facts: Facts, key: string): string => `${facts[key] ?? 0} ${facts.unit ?? ''}`.trim();
const details = (facts: Facts): string => (facts.statusDetails ? ` (${facts.statusDetails})` : '');

/** One sentence for each kind of event; a job's story is these, in order. */
const sentences: Readonly<Record<EventType, Sentence>> = {
  'ticket.accepted': (f) =>
    `Job ${f.jobId}, "${f.name}", came in by ${f.intake}: ${f.quantity} copies in ${f.steps} steps.`,
  'ticket.rejected': (f) => `The document was refused: ${f.reason}`,
  'ticket.statusChanged': (f) => `The ticket is ${f.to}.`,
  'ticket.held': (f) => `${f.by} held the ticket.`,
  'ticket.resumed': (f) => `${f.by} released the ticket.`,
  'ticket.aborted': (f) => `${f.by} aborted the ticket.`,
  'step.queued': (_f, e) => `${step(e)} has all it needs and waits in the queue of ${e.deviceId}.`,
  'step.delivered': (f, e) => `${e.deviceId} took ${e.stepId} into its queue as ${f.deviceEntryId}.`,
  'step.deferred': (f, e) =>
    `${e.deviceId} could not take ${e.stepId} (${f.reason}); tried again in ${f.againInS} s.`,
  'step.refused': (f, e) => `${e.deviceId} refused ${e.stepId}: ${f.reason}`,
  'step.statusChanged': (f, e) =>
    f.to === 'Completed'
      ? `${step(e)} is done on ${e.deviceId}: ${amount(f, 'good')} good, ${f.waste ?? 0} waste.`
      : `${step(e)} is ${f.to} on ${e.deviceId}${details(f)}.`,
  'step.counted': (f, e) =>
    `${step(e)} counts ${amount(f, 'good')} good, ${f.waste} waste of ${f.planned} planned.`,
  'step.held': (f, e) => `${f.by} held ${e.stepId}.`,
  'step.resumed': (f, e) => `${f.by} released ${e.stepId}.`,
  'step.aborted': (f, e) => `${f.by} aborted ${e.stepId}.`,
  'step.returned': (f, e) => `${e.deviceId} returned the ticket of ${e.stepId} (${f.endStatus}).`,
  'resource.available': (f) => `${f.resource} is there: ${amount(f, 'amount')}.`,
  'stock.moved': (f) => `${amount(f, 'amount')} of ${f.item} went from ${f.from} to ${f.to} (${f.reason}).`,
  'stock.short': (f) =>
    f.countDue
      ? `The machine drew ${amount(f, 'beyondTheBook')} of ${f.item} more than the book has: a count is due.`
      : `The store has ${f.inStore} of the ${amount(f, 'needed')} of ${f.item} that are needed.`,
  'device.registered': (f, e) => `Device ${e.deviceId} is at ${f.url ?? 'a bench'}.`,
  'device.statusChanged': (f, e) => `${e.deviceId} is ${f.to}${details(f)}.`,
  'device.silent': (f, e) => `${e.deviceId} does not answer: ${f.reason}`,
  'device.heard': (_f, e) => `${e.deviceId} answers again.`,
  'notification.raised': (f, e) => `${e.deviceId} says (${f.class}): ${f.text}`,
  'clock.set': (f) => `The plant clock was set to run ${f.factor} times as fast.`,
};

/** The event told in one sentence. */
export function sentenceOf(event: LoggedEvent): string {
  return sentences[event.type](event.data, event);
}

/** Events in the order in which they happened: a device's word may be written down later than what it tells of. */
export function inOrderOfTime<E extends Pick<LoggedEvent, 'time' | 'position'>>(events: readonly E[]): E[] {
  return events.toSorted((a, b) => a.time - b.time || a.position - b.position);
}
