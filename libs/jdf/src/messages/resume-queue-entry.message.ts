import { entryCommand, queueAnswer } from '../jmf/entry-command.js';

export const resumeQueueEntry = {
  CommandResumeQueueEntry: entryCommand('ResumeQueueEntryParams'),
  ResponseResumeQueueEntry: queueAnswer,
  AcknowledgeResumeQueueEntry: queueAnswer,
};
