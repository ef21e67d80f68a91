import type { Findings } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import type { MessageCheck } from './message-check.js';

/**
 * JMF URL attributes: addresses are of a scheme that can be read from, or sent to, and a ticket goes
 * back on one way only.
 */
export const addresses: MessageCheck = {
  number: 24,
  name: 'addresses',
  run({ root, messages }, findings) {
    checkScheme(root, 'ResponseURL', FILE, findings);
    for (const { element, inside } of messages) {
      checkScheme(element, 'AcknowledgeURL', SENT_TO, findings);
      for (const el of inside) {
        for (const name of READ_FROM_BY[el.local] ?? []) checkScheme(el, name, READ_FROM, findings);
        for (const name of SENT_TO_BY[el.local] ?? []) checkScheme(el, name, SENT_TO, findings);
        checkWayBack(el, findings);
      }
    }
  },
};

const FILE = ['file'];
const SENT_TO = [...FILE, 'http', 'https', 'ftp'];
const READ_FROM = [...SENT_TO, 'cid', 'data'];

const READ_FROM_BY: Readonly<Record<string, readonly string[]>> = {
  QueueSubmissionParams: ['URL'],
  ResubmissionParams: ['URL'],
  ReturnQueueEntryParams: ['URL'],
};

const SENT_TO_BY: Readonly<Record<string, readonly string[]>> = {
  QueueSubmissionParams: ['ReturnURL', 'ReturnJMF', 'WatchURL'],
  RequestQueueEntryParams: ['QueueURL'],
  Subscription: ['URL'],
};

/** What is no absolute URL is relative to the document, and has no scheme. */
function checkScheme(el: XmlElement, name: string, known: readonly string[], findings: Findings): void {
  const value = attributeOf(el, name)?.trim() ?? '';
  const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(value)?.[1]?.toLowerCase();
  if (scheme === undefined || known.includes(scheme)) return;
  const what = `The scheme "${scheme}" of ${name} is not one that ${el.name} can use here.`;
  findings.error('JMF_PARAMETER', el, what, `Use ${known.join(', ')}.`, name);
}

function checkWayBack(el: XmlElement, findings: Findings): void {
  if (el.local !== 'QueueSubmissionParams') return;
  const [url, jmf] = [attributeOf(el, 'ReturnURL'), attributeOf(el, 'ReturnJMF')];
  if (url === undefined || jmf === undefined) return;
  const hint = 'ReturnURL takes the ticket itself, ReturnJMF a ReturnQueueEntry; leave one of them out.';
  findings.error('JMF_PARAMETER', el, 'Both ReturnURL and ReturnJMF say where to return to.', hint);
}
