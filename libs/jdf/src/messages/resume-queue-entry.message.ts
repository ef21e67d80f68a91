import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

/** Entries that were held or suspended go on. Answered with the queue. */
export const resumeQueueEntry = {
  CommandResumeQueueEntry: entryCommand('ResumeQueueEntryParams'),
  ResponseResumeQueueEntry: queueAnswer,
  AcknowledgeResumeQueueEntry: queueAnswer,
};
