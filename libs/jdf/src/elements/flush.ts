import { child } from '../codec/index.js';
import { fullElement } from './base.js';
import { queueFilter } from './queue.js';

/** What FlushQueue removes: without the filter all entries; without the element only those Waiting or Held. */
export const flushQueueParams = fullElement('FlushQueueParams', { filter: child(queueFilter) });
