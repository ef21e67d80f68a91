import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

export const removeQueueEntry = {
  CommandRemoveQueueEntry: entryCommand('RemoveQueueEntryParams'),
  ResponseRemoveQueueEntry: queueAnswer,
  AcknowledgeRemoveQueueEntry: queueAnswer,
};
