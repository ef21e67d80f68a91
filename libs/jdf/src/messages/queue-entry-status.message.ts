import { child, children } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { queueEntry, queueEntryDef } from '../elements/queue.js';
import { content, only, signal } from '../jmf/content.js';

const list = fullElement('QueueEntryDefList', { entries: children(queueEntryDef) });

/** Deprecated: QueueStatus with a filter says the same. */
export const queueEntryStatus = {
  QueryQueueEntryStatus: only(list),
  SignalQueueEntryStatus: signal({ asked: child(list), entries: children(queueEntry) }),
  ResponseQueueEntryStatus: content({ entries: children(queueEntry) }),
};
