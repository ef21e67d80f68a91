import { entryCommand, queueAnswer } from './entry-command.js';

export const removeQueueEntry = {
  CommandRemoveQueueEntry: entryCommand('RemoveQueueEntryParams'),
  ResponseRemoveQueueEntry: queueAnswer,
};
