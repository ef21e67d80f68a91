import { integer, optional, required, text, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { nothing, only } from '../jmf/content.js';

/** Sent by a device to whoever submitted the entry. */
const params = fullElement('ReturnQueueEntryParams', {
  queueEntryId: required('QueueEntryID', text),
  /** Where the ticket with its audits is. */
  url: required('URL', text),
  /** IDs of nodes. */
  completed: optional('Completed', tokens),
  aborted: optional('Aborted', tokens),
  priority: optional('Priority', integer),
});

/** A device gives the ticket of an entry back, with which of its nodes are completed or aborted. */
export const returnQueueEntry = {
  CommandReturnQueueEntry: only(params),
  ResponseReturnQueueEntry: nothing,
  AcknowledgeReturnQueueEntry: nothing,
};
