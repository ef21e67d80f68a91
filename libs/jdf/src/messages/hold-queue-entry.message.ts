import { entryCommand, queueAnswer } from './entry-command.js';

export const holdQueueEntry = {
  CommandHoldQueueEntry: entryCommand('HoldQueueEntryParams'),
  ResponseHoldQueueEntry: queueAnswer,
};
