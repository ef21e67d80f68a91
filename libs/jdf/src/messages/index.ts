import type { Fields } from '../codec/index.js';
import type { BodyOf, Content } from '../jmf/content.js';
import { abortQueueEntry } from './abort-queue-entry.message.js';
import { closeQueue } from './close-queue.message.js';
import { events } from './events.message.js';
import { flushQueue } from './flush-queue.message.js';
import { flushResources } from './flush-resources.message.js';
import { forceGang } from './force-gang.message.js';
import { gangStatus } from './gang-status.message.js';
import { holdQueue } from './hold-queue.message.js';
import { holdQueueEntry } from './hold-queue-entry.message.js';
import { knownControllers } from './known-controllers.message.js';
import { knownDevices } from './known-devices.message.js';
import { knownJdfServices } from './known-jdf-services.message.js';
import { knownMessages } from './known-messages.message.js';
import { knownSubscriptions } from './known-subscriptions.message.js';
import { modifyNode } from './modify-node.message.js';
import { newJdf } from './new-jdf.message.js';
import { nodeInfo } from './node-info.message.js';
import { notification } from './notification.message.js';
import { occupationMessages } from './occupation.message.js';
import { openQueue } from './open-queue.message.js';
import { pipeClose } from './pipe-close.message.js';
import { pipePause } from './pipe-pause.message.js';
import { pipePull } from './pipe-pull.message.js';
import { pipePush } from './pipe-push.message.js';
import { queueEntryStatus } from './queue-entry-status.message.js';
import { queueStatus } from './queue-status.message.js';
import { removeQueueEntry } from './remove-queue-entry.message.js';
import { repeatMessages } from './repeat-messages.message.js';
import { requestForAuthentication } from './request-for-authentication.message.js';
import { requestQueueEntry } from './request-queue-entry.message.js';
import { resource } from './resource.message.js';
import { resourcePull } from './resource-pull.message.js';
import { resubmitQueueEntry } from './resubmit-queue-entry.message.js';
import { resumeQueue } from './resume-queue.message.js';
import { resumeQueueEntry } from './resume-queue-entry.message.js';
import { returnQueueEntry } from './return-queue-entry.message.js';
import { setQueueEntryPosition } from './set-queue-entry-position.message.js';
import { setQueueEntryPriority } from './set-queue-entry-priority.message.js';
import { shutDown } from './shut-down.message.js';
import { status } from './status.message.js';
import { stopPersistentChannel } from './stop-persistent-channel.message.js';
import { submissionMethods } from './submission-methods.message.js';
import { submitQueueEntry } from './submit-queue-entry.message.js';
import { suspendQueueEntry } from './suspend-queue-entry.message.js';
import { track } from './track.message.js';
import { updateJdf } from './update-jdf.message.js';
import { wakeUp } from './wake-up.message.js';

/** What every kind of message carries; the kind is family and type in one word, as the schema's own type names are. */
export const standardMessages = {
  ...abortQueueEntry,
  ...closeQueue,
  ...events,
  ...flushQueue,
  ...flushResources,
  ...forceGang,
  ...gangStatus,
  ...holdQueue,
  ...holdQueueEntry,
  ...knownControllers,
  ...knownDevices,
  ...knownJdfServices,
  ...knownMessages,
  ...knownSubscriptions,
  ...modifyNode,
  ...newJdf,
  ...nodeInfo,
  ...notification,
  ...occupationMessages,
  ...openQueue,
  ...pipeClose,
  ...pipePause,
  ...pipePull,
  ...pipePush,
  ...queueEntryStatus,
  ...queueStatus,
  ...removeQueueEntry,
  ...repeatMessages,
  ...requestForAuthentication,
  ...requestQueueEntry,
  ...resource,
  ...resourcePull,
  ...resubmitQueueEntry,
  ...resumeQueue,
  ...resumeQueueEntry,
  ...returnQueueEntry,
  ...setQueueEntryPosition,
  ...setQueueEntryPriority,
  ...shutDown,
  ...status,
  ...stopPersistentChannel,
  ...submissionMethods,
  ...submitQueueEntry,
  ...suspendQueueEntry,
  ...track,
  ...updateJdf,
  ...wakeUp,
};

export type MessageKind = keyof typeof standardMessages;
export type MessageBody<K extends MessageKind> = BodyOf<(typeof standardMessages)[K]>;

/** Contents by kind: the standard's, and any that an outside package adds. */
export type MessageContents = Readonly<
  Record<
    string,
    Pick<Content<unknown>, 'read'> & Pick<Content<never>, 'write'> & { readonly fields?: Fields }
  >
>;
