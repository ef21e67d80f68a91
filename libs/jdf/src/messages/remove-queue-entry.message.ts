import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

/** Takes entries out of the queue that wait or have ended; what runs is aborted first. Answered with the queue. */
export const removeQueueEntry = {
  CommandRemoveQueueEntry: entryCommand('RemoveQueueEntryParams'),
  ResponseRemoveQueueEntry: queueAnswer,
  AcknowledgeRemoveQueueEntry: queueAnswer,
};
