import { isoTime } from '#libs/kernel';
import { ticketEntry } from '../engine/own-queue.js';
import { takeIn } from '../engine/take-in.js';
import { type Answer, answer, no, noBecause, on } from './handler.js';

/** Somebody submits a ticket to this server's own queue; the entry's id is the ticket's. */
export const submitQueueEntry = on('CommandSubmitQueueEntry', async (message, reception): Promise<Answer> => {
  const { ports, envelope } = reception;
  if (envelope.deviceId !== undefined && envelope.deviceId !== ports.deviceId) {
    return no(
      'STATE_FORBIDS',
      `Submit to ${ports.deviceId}: it plans the job and fills the queue of ${envelope.deviceId} itself.`,
    );
  }
  const { url, hold, priority, returnJmf, returnUrl } = message.body;
  const fetched = await reception.fetch(url);
  if (!fetched.ok) return noBecause(fetched.problems);
  const taken = await takeIn(ports, {
    ...fetched.value,
    intake: 'jmf',
    key: null,
    priority: priority ?? null,
    hold: hold ?? false,
    returnUrl: returnJmf ?? returnUrl ?? null,
  });
  if (!taken.ok) return noBecause(taken.problems);
  const { file } = taken.value;
  if (file.ticket.status === 'Rejected') {
    const refused = noBecause(file.ticket.problems);
    return refused.ok
      ? refused
      : {
          ...refused,
          text: `${refused.text} Kept as ticket ${file.ticket.id} since ${isoTime(file.ticket.createdAt)}.`,
        };
  }
  return answer('ResponseSubmitQueueEntry', { entry: ticketEntry(file, ports.deviceId) });
});
