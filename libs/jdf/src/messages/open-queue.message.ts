import { answerFilter, content } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** The queue takes new entries again. */
export const openQueue = {
  CommandOpenQueue: content(answerFilter),
  ResponseOpenQueue: queueAnswer,
  AcknowledgeOpenQueue: queueAnswer,
};
