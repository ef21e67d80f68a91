import { boolean, child, elementCodec, type Of, optional, percent, required, text } from '../codec/index.js';
import { queue, queueEntry } from '../elements/queue.js';
import { content, only } from '../jmf/content.js';

const params = elementCodec('QueueSubmissionParams', {
  /** Where the ticket is: an address, or cid: for a part of the same package. */
  url: required('URL', text),
  hold: optional('Hold', boolean),
  priority: optional('Priority', percent),
  previousQueueEntryId: optional('PrevQueueEntryID', text),
  nextQueueEntryId: optional('NextQueueEntryID', text),
  /** Where the ticket shall be put when it is done … */
  returnUrl: optional('ReturnURL', text),
  /** … or where a ReturnQueueEntry command shall be sent. */
  returnJmf: optional('ReturnJMF', text),
  watchUrl: optional('WatchURL', text),
  gangName: optional('GangName', text),
  gangPolicy: optional('GangPolicy', text),
  refId: optional('refID', text),
});
export type QueueSubmission = Of<typeof params>;

export const submitQueueEntry = {
  CommandSubmitQueueEntry: only(params),
  ResponseSubmitQueueEntry: content({ entry: child(queueEntry), queue: child(queue) }),
};
