import type { MessageKind, MessageService as Service } from '#libs/jdf';
import { Fault } from '#libs/kernel';
import { answer, type Handler, on, type Registered } from './handler.js';
import { queryKnownDevices, queryQueueStatus, queryStatus, querySubmissionMethods } from './queries.js';
import { abortQueueEntry, holdQueueEntry, resumeQueueEntry } from './queue-entry-commands.js';
import { returnQueueEntry } from './return-queue-entry.js';
import { signalNotification } from './signal-notification.js';
import { signalResource } from './signal-resource.js';
import { signalStatus } from './signal-status.js';
import { submitQueueEntry } from './submit-queue-entry.js';

export { refuseForOthers } from './addressee.js';
export type { Answer, Fetched, Reception } from './handler.js';

/** KnownMessages answers from the registry itself, so it can't be out of date. */
const queryKnownMessages = on('QueryKnownMessages', () => {
  const services = new Map<string, { -readonly [P in keyof Service]: Service[P] }>();
  for (const { kind } of registered) {
    const [, family, type] = /^(Query|Command|Signal)(.+)$/.exec(kind)!;
    const service = services.get(type!) ?? { type: type!, jmfRole: 'Receiver' as const };
    if (family === 'Query') service.query = true;
    if (family === 'Command') service.command = true;
    if (family === 'Signal') service.signal = true;
    services.set(type!, service);
  }
  return Promise.resolve(answer('ResponseKnownMessages', { services: [...services.values()] }));
});

/** One line for each message that this server answers. */
const registered: readonly Registered[] = [
  abortQueueEntry,
  holdQueueEntry,
  queryKnownDevices,
  queryKnownMessages,
  queryQueueStatus,
  queryStatus,
  querySubmissionMethods,
  resumeQueueEntry,
  returnQueueEntry,
  signalNotification,
  signalResource,
  signalStatus,
  submitQueueEntry,
];

const handlers = new Map<MessageKind, Handler>();

/** Fills the registry; throws on a message with two handlers. Called once at start. */
export function checkHandlers(): void {
  handlers.clear();
  for (const { kind, handle } of registered) {
    if (handlers.has(kind)) throw new Fault('BROKEN', `two handlers for ${kind}`);
    handlers.set(kind, handle);
  }
}

/** What is done with messages of a kind; undefined for kinds that are not understood. */
export function handlerOf(kind: MessageKind): Handler | undefined {
  if (handlers.size === 0) checkHandlers();
  return handlers.get(kind);
}
