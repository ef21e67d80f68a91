import { child, optional, percent, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { queueFilter } from '../elements/queue.js';
import { answerFilter, together } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

const params = fullElement('QueueEntryPriParams', {
  priority: required('Priority', percent),
  /** Which entry, until 1.4; … */
  queueEntryId: optional('QueueEntryID', text),
  /** … which entries, since 1.5. */
  filter: child(queueFilter),
});

/** Gives entries another priority, 0 to 100. Answered with the queue. */
export const setQueueEntryPriority = {
  CommandSetQueueEntryPriority: together(params, answerFilter),
  ResponseSetQueueEntryPriority: queueAnswer,
  AcknowledgeSetQueueEntryPriority: queueAnswer,
};
