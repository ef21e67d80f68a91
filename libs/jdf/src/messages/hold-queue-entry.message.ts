import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

export const holdQueueEntry = {
  CommandHoldQueueEntry: entryCommand('HoldQueueEntryParams'),
  ResponseHoldQueueEntry: queueAnswer,
  AcknowledgeHoldQueueEntry: queueAnswer,
};
