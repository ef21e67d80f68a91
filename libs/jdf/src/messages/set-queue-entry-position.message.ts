import { integer, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { answerFilter, together } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** One of position, previous and next says where the entry goes; it takes over the priority of that place. */
const params = fullElement('QueueEntryPosParams', {
  queueEntryId: required('QueueEntryID', text),
  /** From 0. */
  position: optional('Position', integer),
  previousQueueEntryId: optional('PrevQueueEntryID', text),
  nextQueueEntryId: optional('NextQueueEntryID', text),
});

/** Moves an entry to a place in the queue, or before or behind another. Answered with the queue. */
export const setQueueEntryPosition = {
  CommandSetQueueEntryPosition: together(params, answerFilter),
  ResponseSetQueueEntryPosition: queueAnswer,
  AcknowledgeSetQueueEntryPosition: queueAnswer,
};
