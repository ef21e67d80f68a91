import type { Instant } from '#libs/kernel';

/** Every kind of event, with what it means. The AsyncAPI document and the story are made from this table. */
export const eventTypes = {
  'ticket.accepted': 'A ticket was taken in, checked and planned',
  'ticket.rejected': 'A document was kept with the reasons why it is no sound, possible ticket',
  'ticket.statusChanged': 'A ticket has another status',
  'ticket.held': 'A ticket was held',
  'ticket.resumed': 'A held ticket was released',
  'ticket.aborted': 'A ticket was aborted',
  'step.queued': 'A step has all it needs and entered the queue of its device',
  'step.delivered': 'A device took a step into its own queue',
  'step.deferred': 'A device could not take a step now; it will be tried again',
  'step.refused': 'A device refused a step; somebody must mend it and resume the step',
  'step.statusChanged': 'A step has another status',
  'step.counted': 'A step counted more good or waste',
  'step.held': 'A step was held',
  'step.resumed': 'A held or refused step was released',
  'step.aborted': 'A step was aborted',
  'step.returned': 'A device returned the ticket of a step with what it did',
  'resource.available': 'What a step made is there for the next',
  'stock.moved': 'Stock went from one account to another',
  'stock.short': 'The book has less than is needed',
  'device.registered': 'A device was registered or changed its address',
  'device.statusChanged': 'A device has another status',
  'device.silent': 'A device does not answer',
  'device.heard': 'A silent device answers again',
  'notification.raised': 'A device told people something',
  'clock.set': 'The plant clock was set',
} as const;

export type EventType = keyof typeof eventTypes;

/** An event as a decision makes it; the store gives it its place in the log. */
export interface NewEvent {
  readonly type: EventType;
  readonly time: Instant;
  readonly ticketId: string | null;
  readonly stepId: string | null;
  readonly deviceId: string | null;
  /** Facts by name; units in the names. */
  readonly data: Readonly<Record<string, unknown>>;
}

/** An event in the log: positions are gap-free and strictly increasing to every reader. */
export interface LoggedEvent extends NewEvent {
  readonly position: number;
}

export interface EventFilter {
  readonly ticketId?: string;
  readonly deviceId?: string;
  readonly type?: string;
}
