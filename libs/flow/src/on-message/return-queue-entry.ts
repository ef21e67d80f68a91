import { bookPhase } from '../decide/book-phase.js';
import { FileDraft, together } from '../decide/draft.js';
import { useNamed } from '../decide/use-named.js';
import { bookUse } from '../decide/uses.js';
import { contextOf, offerWork } from '../engine/ports.js';
import type { Decision, StoredDocument } from '../ports.js';
import { type ReturnedTicket, returnedAudits } from '../process/index.js';
import type { NodeStatus } from '../state/ticket.js';
import { type Answer, answer, no, noBecause, on, speaker } from './handler.js';

/**
 * A device gives back the ticket of a step with its audits. They say once more what the signals said, and fill in what
 * signals were lost; then the entry is done. The returned document is kept as it came.
 */
export const returnQueueEntry = on('CommandReturnQueueEntry', async (message, reception): Promise<Answer> => {
  const { ports } = reception;
  const who = speaker(reception, undefined);
  if (!who.ok) return who.answer;
  const { deviceId } = who;
  const { queueEntryId, url } = message.body;
  const address = await ports.store.findStep(deviceId, { queueEntryId });
  if (address === null)
    return no('ENTRY_UNKNOWN', `${deviceId} was given no entry "${queueEntryId}" from here.`);
  const fetched = await reception.fetch(url);
  if (!fetched.ok) return noBecause(fetched.problems);
  const audits = returnedAudits(fetched.value.ticket?.bytes ?? fetched.value.bytes);
  if (!audits.ok) return noBecause(audits.problems);

  const file = await ports.store.ticketFile(address.ticketId);
  const stock = [
    ...new Set((file?.uses ?? []).filter((use) => use.stepId === address.stepId).map((use) => use.item)),
  ];
  const sentAt = message.time ?? reception.envelope.timeStamp;
  const { work } = await ports.store.change(
    { tickets: [address.ticketId], stock },
    (slice): Decision<null> => {
      const locked = slice.tickets.get(address.ticketId);
      if (locked === undefined) return { result: null };
      const context = contextOf(ports);
      const draft = new FileDraft(locked, context, slice.balances);
      const document: StoredDocument = {
        id: context.ids.next(),
        sha256: fetched.value.sha256,
        mediaType: fetched.value.mediaType,
        name: fetched.value.name,
        bytes: fetched.value.bytes,
        receivedAt: context.now,
      };
      const first = bookReturn(
        draft,
        address.stepId,
        deviceId,
        queueEntryId,
        audits.value,
        sentAt,
        document.id,
      );
      return { ...together(first ? { documents: [document] } : {}, draft.change()), result: null };
    },
  );
  await offerWork(ports, work);
  return answer('ResponseReturnQueueEntry', {});
});

/** Books the audits; says whether this was the first time that this entry came back. */
function bookReturn(
  draft: FileDraft,
  stepId: string,
  deviceId: string,
  deviceEntryId: string,
  audits: ReturnedTicket,
  sentAt: number,
  documentId: string,
): boolean {
  const entry = draft.entries.find(
    (row) => row.deviceId === deviceId && row.deviceEntryId === deviceEntryId && row.stepId === stepId,
  );
  if (entry === undefined || entry.returned) return false;
  for (const use of audits.uses) {
    const booked = useNamed(draft.uses, stepId, {
      name: use.name,
      mediaType: use.mediaType ?? null,
      separation: use.separation ?? null,
    });
    if (booked !== null)
      bookUse(draft, {
        stepId,
        item: booked.item,
        actual: use.actual,
        waste: use.waste ?? null,
        source: 'machine',
      });
  }
  for (const phase of audits.phases) {
    bookPhase(draft, {
      stepId,
      deviceId,
      start: phase.start,
      at: phase.end ?? sentAt,
      status: phase.status as NodeStatus,
      statusDetails: phase.statusDetails ?? null,
      good: phase.good ?? null,
      waste: phase.waste ?? null,
      deviceEntryId,
      source: 'machine',
    });
  }
  const end = audits.end ?? sentAt;
  const endStatus = audits.endStatus === 'Aborted' ? 'Aborted' : 'Completed';
  bookPhase(draft, {
    stepId,
    deviceId,
    start: end,
    at: end,
    status: endStatus,
    statusDetails: null,
    good: null,
    waste: null,
    deviceEntryId,
    source: 'machine',
  });
  draft.event('step.returned', { endStatus, deviceEntryId, documentId }, { stepId, deviceId });
  draft.setEntry(entry.id, { status: endStatus, returned: true, wanted: null, end: entry.end ?? end });
  return true;
}
