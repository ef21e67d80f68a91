import { boolean, child, type Of, oneOf, optional, percent, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { disposition } from '../elements/disposition.js';
import { gangPolicies, queue, queueEntry } from '../elements/queue.js';
import { answerFilter, content, together } from '../jmf/content.js';

const params = fullElement('QueueSubmissionParams', {
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
  gangPolicy: optional('GangPolicy', oneOf(gangPolicies)),
  refId: optional('refID', text),
  disposition: child(disposition),
});
export type QueueSubmission = Of<typeof params>;

const answered = content({ entry: child(queueEntry), queue: child(queue) });

/** Submits a ticket by its address, with where it is to be returned. Answered with the entry and the queue. */
export const submitQueueEntry = {
  CommandSubmitQueueEntry: together(params, answerFilter),
  ResponseSubmitQueueEntry: answered,
  AcknowledgeSubmitQueueEntry: answered,
};
