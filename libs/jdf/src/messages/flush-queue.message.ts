import { child, requiredChild } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { flushQueueParams } from '../elements/flush.js';
import { queue, queueFilter } from '../elements/queue.js';
import { answerFilter, content, signal } from '../jmf/content.js';

/** Which entries were removed. */
const flushQueueInfo = fullElement('FlushQueueInfo', { filter: requiredChild(queueFilter) });

const asked = content({ params: child(flushQueueParams), ...answerFilter });
const answered = content({ queue: child(queue), info: child(flushQueueInfo) });

/**
 * Takes entries out of the queue that a filter names, or asks which they would be. Answered with the queue and what
 * went.
 */
export const flushQueue = {
  QueryFlushQueue: asked,
  CommandFlushQueue: asked,
  SignalFlushQueue: signal({
    filter: child(queueFilter),
    params: child(flushQueueParams),
    queue: child(queue),
    info: child(flushQueueInfo),
  }),
  ResponseFlushQueue: answered,
  AcknowledgeFlushQueue: answered,
};
