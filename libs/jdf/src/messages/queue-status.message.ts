import { child } from '../codec/index.js';
import { queue, queueFilter } from '../elements/queue.js';
import { perhaps, signal } from '../jmf/content.js';
import { queueAnswer } from '../jmf/entry-command.js';

/** The queue of a device with those of its entries that a filter names. */
export const queueStatus = {
  QueryQueueStatus: perhaps(queueFilter, {}),
  SignalQueueStatus: signal({ queue: child(queue), filter: child(queueFilter) }),
  ResponseQueueStatus: queueAnswer,
};
