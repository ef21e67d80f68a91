import { answerFilter, content } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** No entry of the queue is started. */
export const holdQueue = {
  CommandHoldQueue: content(answerFilter),
  ResponseHoldQueue: queueAnswer,
  AcknowledgeHoldQueue: queueAnswer,
};
