import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

export const suspendQueueEntry = {
  CommandSuspendQueueEntry: entryCommand('SuspendQueueEntryParams'),
  ResponseSuspendQueueEntry: queueAnswer,
  AcknowledgeSuspendQueueEntry: queueAnswer,
};
