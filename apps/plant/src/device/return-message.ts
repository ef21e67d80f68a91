import type { IdSource, Instant } from '#libs/kernel';
import { writeMultipart } from '../package/multipart.js';
import { auditedTicket } from '../ticket/audited-ticket.js';
import { JDF_TYPE, JMF_TYPE } from './media-types.js';
import type { Speech } from './speech.js';
import type { Entry, OutboxItem } from './state.js';

/**
 * What brings a ticket back: the ticket alone to the submission's ReturnURL, else a package of ReturnQueueEntry and ticket
 * to its ReturnJMF, else to the hub (JDF specification, SubmitQueueEntry).
 */
export function returnMessage(
  entry: Entry,
  at: Instant,
  deviceId: string,
  hubJmf: string,
  ids: IdSource,
  write: Speech['write'],
): OutboxItem {
  const ticket = auditedTicket(entry, deviceId, at);
  const common = { kind: 'return' as const, key: null, entryId: entry.id };
  if (entry.returnUrl !== null && entry.returnJmf === null) {
    return { ...common, url: entry.returnUrl, contentType: JDF_TYPE, body: ticket };
  }
  const contentId = `ticket.${ids.next()}@${encodeURIComponent(deviceId)}`;
  const nodes = [entry.work.nodeId].filter((id) => id !== '');
  const params =
    entry.endStatus === 'Aborted'
      ? { queueEntryId: entry.id, url: `cid:${contentId}`, aborted: nodes }
      : { queueEntryId: entry.id, url: `cid:${contentId}`, completed: nodes };
  const jmf = write([{ kind: 'CommandReturnQueueEntry', body: params }], at);
  const pack = writeMultipart(
    [
      { contentType: JMF_TYPE, contentId: null, bytes: Buffer.from(jmf, 'utf8') },
      { contentType: JDF_TYPE, contentId, bytes: Buffer.from(ticket, 'utf8') },
    ],
    `part-${ids.next()}`,
  );
  return { ...common, url: entry.returnJmf ?? hubJmf, contentType: pack.contentType, body: pack.body };
}
