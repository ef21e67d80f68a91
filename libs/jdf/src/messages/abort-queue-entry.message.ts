import { oneOf, required } from '../codec/index.js';
import type { BodyOf } from '../jmf/content.js';
import { queueAnswer, selectingCommand } from '../jmf/entry-command.js';

/** `endStatus`: what the entry and its node shall be afterwards. The form until 1.4 always meant Aborted. */
const abort = selectingCommand(
  'AbortQueueEntryParams',
  { endStatus: required('EndStatus', oneOf(['Aborted', 'Completed'])) },
  { endStatus: 'Aborted' },
  ({ endStatus }) => endStatus === 'Aborted',
);
export type AbortSelection = BodyOf<typeof abort>;

/**
 * Ends entries for good, waiting or running; `endStatus` says whether they count as Aborted or Completed. Answered
 * with the queue.
 */
export const abortQueueEntry = {
  CommandAbortQueueEntry: abort,
  ResponseAbortQueueEntry: queueAnswer,
  AcknowledgeAbortQueueEntry: queueAnswer,
};
