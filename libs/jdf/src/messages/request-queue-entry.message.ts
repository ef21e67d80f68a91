import { child, children, oneOf, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { queue } from '../elements/queue.js';
import { activations } from '../enumerations.js';
import { nothing, only } from '../jmf/content.js';

/** Sent by a device that wants work. */
const params = fullElement('RequestQueueEntryParams', {
  /** Where the entry shall be submitted to. */
  queueUrl: required('QueueURL', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  activation: optional('Activation', oneOf(activations)),
  submitPolicy: optional('SubmitPolicy', oneOf(['Standard', 'Late', 'Force'])),
  parts: children(part),
  queue: child(queue),
});

/** A device with time to spare asks a controller for work: the answer is a SubmitQueueEntry of its own. */
export const requestQueueEntry = {
  CommandRequestQueueEntry: only(params),
  ResponseRequestQueueEntry: nothing,
  AcknowledgeRequestQueueEntry: nothing,
};
