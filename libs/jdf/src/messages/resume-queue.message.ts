import { answerFilter, content } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** Entries of the queue are started again. */
export const resumeQueue = {
  CommandResumeQueue: content(answerFilter),
  ResponseResumeQueue: queueAnswer,
  AcknowledgeResumeQueue: queueAnswer,
};
