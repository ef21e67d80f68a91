import {
  boolean,
  child,
  children,
  integer,
  number,
  oneOf,
  optional,
  required,
  text,
} from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { disposition } from '../elements/disposition.js';
import { part } from '../elements/part.js';
import { queue, queueEntry } from '../elements/queue.js';
import { misDetails } from '../elements/work.js';
import { answerFilter, content, together } from '../jmf/content.js';

/** Asks for more of a resource that the receiver has made before, such as a plate. */
const params = fullElement('ResourcePullParams', {
  resourceId: required('ResourceID', text),
  amount: optional('Amount', number),
  jobId: optional('JobID', text),
  queueEntryId: optional('QueueEntryID', text),
  priority: optional('Priority', integer),
  hold: optional('Hold', boolean),
  previousQueueEntryId: optional('PrevQueueEntryID', text),
  nextQueueEntryId: optional('NextQueueEntryID', text),
  repeatPolicy: optional('RepeatPolicy', oneOf(['Complete', 'CompleteOnly', 'Fast'])),
  returnUrl: optional('ReturnURL', text),
  watchUrl: optional('WatchURL', text),
  parts: children(part),
  disposition: child(disposition),
  misDetails: child(misDetails),
});

const asked = together(params, answerFilter);
const answered = content({ entry: child(queueEntry), queue: child(queue) });

/** Asks for more of what a job that has ended once made. Answered with the entry that makes it. */
export const resourcePull = {
  CommandResourcePull: asked,
  ResponseResourcePull: answered,
  AcknowledgeResourcePull: answered,
  RegistrationResourcePull: asked,
};
