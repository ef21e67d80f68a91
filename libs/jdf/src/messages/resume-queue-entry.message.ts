import { entryCommand, queueAnswer } from './entry-command.js';

export const resumeQueueEntry = {
  CommandResumeQueueEntry: entryCommand('ResumeQueueEntryParams'),
  ResponseResumeQueueEntry: queueAnswer,
};
