import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

/** Takes running entries off the device, to be resumed later. Answered with the queue. */
export const suspendQueueEntry = {
  CommandSuspendQueueEntry: entryCommand('SuspendQueueEntryParams'),
  ResponseSuspendQueueEntry: queueAnswer,
  AcknowledgeSuspendQueueEntry: queueAnswer,
};
