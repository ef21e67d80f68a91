import type { Findings } from '../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { type MessageCheck, numberOf, within } from './message-check.js';

/** JMF Queue Status, QueueSize: a queue's status and size go with each other and its entries. */
export const queues: MessageCheck = {
  number: 25,
  name: 'queues',
  run({ messages }, findings) {
    for (const message of messages) {
      for (const queue of within(message, 'Queue')) checkQueue(queue, findings);
    }
  },
};

function checkQueue(queue: XmlElement, findings: Findings): void {
  const status = attributeOf(queue, 'Status');
  const [size, most] = [numberOf(queue, 'QueueSize'), numberOf(queue, 'MaxQueueSize')];
  // A list may be filtered: fewer than there are, never more.
  const listed = childElements(queue, 'QueueEntry').filter((one) => attributeOf(one, 'Status') !== 'Removed');
  const least = Math.max(size ?? 0, listed.length);
  if (size !== undefined && listed.length > size) {
    const hint = 'QueueSize counts all entries, those that are not listed too.';
    const what = `QueueSize is ${size}, but ${listed.length} entries are listed.`;
    findings.warning('JMF_PARAMETER', queue, what, hint);
  }
  if (most === undefined) return;
  if (status === 'Full' && size !== undefined && least < most) {
    const what = `The queue is Full with ${least} of ${most} entries.`;
    findings.warning('JMF_PARAMETER', queue, what, 'A queue with room for more is Waiting or Running.');
  }
  if ((status === 'Waiting' || status === 'Running') && least >= most) {
    const what = `The queue is ${status}, but has all of its ${most} entries.`;
    findings.warning('JMF_PARAMETER', queue, what, 'A queue that can take no more is Full.');
  }
}
