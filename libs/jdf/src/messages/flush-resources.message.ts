import { child, oneOf, optional } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { queueFilter } from '../elements/queue.js';
import { answerFilter, content, signal } from '../jmf/content.js';

/** Which temporary data of entries a device shall delete. */
const params = fullElement('FlushResourceParams', {
  flushPolicy: optional('FlushPolicy', oneOf(['Complete', 'QueueEntry', 'Intermediate'])),
  filter: child(queueFilter),
});

const flushed = fullElement('FlushedResources', {});

const asked = content({ params: child(params), ...answerFilter });
const answered = content({ flushed: child(flushed) });

/** Frees what a device keeps of jobs (fonts, pages, plates), or asks what it could. Answered with what was freed. */
export const flushResources = {
  QueryFlushResources: asked,
  CommandFlushResources: asked,
  SignalFlushResources: signal({
    filter: child(queueFilter),
    params: child(params),
    flushed: child(flushed),
  }),
  ResponseFlushResources: answered,
  AcknowledgeFlushResources: answered,
};
