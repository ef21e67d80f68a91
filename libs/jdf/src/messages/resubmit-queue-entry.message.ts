import { type Of, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { answerFilter, together } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** A new ticket for an entry that is there already. */
const params = fullElement('ResubmissionParams', {
  queueEntryId: required('QueueEntryID', text),
  url: required('URL', text),
});
export type Resubmission = Of<typeof params>;

/** Puts a new ticket in the place of the one that an entry has. Answered with the queue. */
export const resubmitQueueEntry = {
  CommandResubmitQueueEntry: together(params, answerFilter),
  ResponseResubmitQueueEntry: queueAnswer,
  AcknowledgeResubmitQueueEntry: queueAnswer,
};
