import type { BodyOf, Content } from '../jmf/content.js';
import { abortQueueEntry } from './abort-queue-entry.message.js';
import { holdQueueEntry } from './hold-queue-entry.message.js';
import { knownDevices } from './known-devices.message.js';
import { knownMessages } from './known-messages.message.js';
import { notification } from './notification.message.js';
import { queueStatus } from './queue-status.message.js';
import { removeQueueEntry } from './remove-queue-entry.message.js';
import { resource } from './resource.message.js';
import { resumeQueueEntry } from './resume-queue-entry.message.js';
import { returnQueueEntry } from './return-queue-entry.message.js';
import { setQueueEntryPriority } from './set-queue-entry-priority.message.js';
import { status } from './status.message.js';
import { stopPersistentChannel } from './stop-persistent-channel.message.js';
import { submissionMethods } from './submission-methods.message.js';
import { submitQueueEntry } from './submit-queue-entry.message.js';
import { suspendQueueEntry } from './suspend-queue-entry.message.js';

/** What every kind of message carries; the kind is family and type in one word, as the schema's own type names are. */
export const standardMessages = {
  ...abortQueueEntry,
  ...holdQueueEntry,
  ...knownDevices,
  ...knownMessages,
  ...notification,
  ...queueStatus,
  ...removeQueueEntry,
  ...resource,
  ...resumeQueueEntry,
  ...returnQueueEntry,
  ...setQueueEntryPriority,
  ...status,
  ...stopPersistentChannel,
  ...submissionMethods,
  ...submitQueueEntry,
  ...suspendQueueEntry,
};

export type MessageKind = keyof typeof standardMessages;
export type MessageBody<K extends MessageKind> = BodyOf<(typeof standardMessages)[K]>;

/** Contents by kind: the standard's, and any that an outside package adds. */
export type MessageContents = Readonly<
  Record<string, { read: Content<unknown>['read']; write: Content<never>['write'] }>
>;
