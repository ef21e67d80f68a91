import { answerFilter, content } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** The queue takes no new entries. */
export const closeQueue = {
  CommandCloseQueue: content(answerFilter),
  ResponseCloseQueue: queueAnswer,
  AcknowledgeCloseQueue: queueAnswer,
};
