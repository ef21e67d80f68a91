import { entryCommand, queueAnswer } from './entry-command.js';

export const suspendQueueEntry = {
  CommandSuspendQueueEntry: entryCommand('SuspendQueueEntryParams'),
  ResponseSuspendQueueEntry: queueAnswer,
};
