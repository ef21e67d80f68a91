import { child, elementCodec, optional, percent, required, text } from '../codec/index.js';
import { queueFilter } from '../elements/queue.js';
import { only } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

const params = elementCodec('QueueEntryPriParams', {
  priority: required('Priority', percent),
  queueEntryId: optional('QueueEntryID', text),
  filter: child(queueFilter),
});

export const setQueueEntryPriority = {
  CommandSetQueueEntryPriority: only(params),
  ResponseSetQueueEntryPriority: queueAnswer,
};
