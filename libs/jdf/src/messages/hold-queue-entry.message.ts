import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

/** Entries that wait are not started until they are resumed. Answered with the queue. */
export const holdQueueEntry = {
  CommandHoldQueueEntry: entryCommand('HoldQueueEntryParams'),
  ResponseHoldQueueEntry: queueAnswer,
  AcknowledgeHoldQueueEntry: queueAnswer,
};
