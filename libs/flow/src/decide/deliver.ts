import { isFinal, nodeStatus } from '../machines/index.js';
import type { DispatchOutcome } from '../ports.js';
import type { QueueEntry } from '../state/ticket.js';
import type { FileDraft } from './draft.js';

/** Plant seconds before the next try: doubled each time, five minutes at the most. */
export function retryDelayS(attempt: number): number {
  return Math.min(300, 5 * 2 ** Math.min(attempt - 1, 10));
}

/** Whether this try may still be made: the entry waits, it is its turn, and nobody held or ended it meanwhile. */
export function mayDeliver(entry: QueueEntry | undefined, attempt: number, now: number): entry is QueueEntry {
  return (
    entry !== undefined &&
    entry.status === 'Waiting' &&
    entry.delivery === 'pending' &&
    entry.attempt === attempt &&
    (entry.notBefore ?? 0) <= now
  );
}

/**
 * What became of a delivery. An answer to an earlier try (the attempt has moved on) is ignored, unless the device took
 * the job: then it has it, and knowing that is worth more than the order of answers.
 */
export function settleDelivery(
  draft: FileDraft,
  entryId: string,
  attempt: number,
  outcome: DispatchOutcome,
): void {
  const entry = draft.entries.find((row) => row.id === entryId);
  if (entry === undefined || entry.delivery === 'delivered') return;
  const place = { stepId: entry.stepId, deviceId: entry.deviceId };
  if (outcome.outcome === 'taken') {
    draft.setEntry(entryId, {
      delivery: 'delivered',
      deviceEntryId: outcome.deviceEntryId,
      notBefore: null,
      lastError: null,
    });
    draft.event('step.delivered', { deviceEntryId: outcome.deviceEntryId, attempt }, place);
    if (entry.status === 'Held') wantOnDevice(draft, entryId, 'Held');
    if (entry.status === 'Aborted') wantOnDevice(draft, entryId, 'Aborted');
    return;
  }
  if (entry.attempt !== attempt || entry.status !== 'Waiting') return;
  if (outcome.outcome === 'later') {
    const delayS = retryDelayS(attempt);
    draft.setEntry(entryId, {
      attempt: attempt + 1,
      notBefore: draft.now + delayS * 1000,
      lastError: outcome.reason,
    });
    draft.setStep(entry.stepId, { statusDetails: 'WaitingForDevice' });
    draft.event('step.deferred', { reason: outcome.reason, attempt, againInS: delayS }, place);
    return;
  }
  draft.setEntry(entryId, {
    status: 'Aborted',
    delivery: 'refused',
    lastError: outcome.reason,
    end: draft.now,
  });
  draft.setStep(entry.stepId, { activation: 'Held', statusDetails: 'Refused' });
  draft.event('step.refused', { reason: outcome.reason, attempt }, place);
}

/** Notes what the device has still to be told, and offers the telling to the queue. */
export function wantOnDevice(
  draft: FileDraft,
  entryId: string,
  wanted: 'Held' | 'Waiting' | 'Aborted',
): void {
  draft.setEntry(entryId, { wanted });
  draft.offer({ kind: 'instruct', ticketId: draft.ticket.id, entryId });
}

/** What became of telling a device. Silence leaves the wish standing, so that the sweep tells it again. */
export function settleInstruction(
  draft: FileDraft,
  entryId: string,
  wanted: QueueEntry['wanted'],
  outcome: DispatchOutcome,
): void {
  const entry = draft.entries.find((row) => row.id === entryId);
  if (entry === undefined || entry.wanted !== wanted || wanted === null) return;
  const place = { stepId: entry.stepId, deviceId: entry.deviceId };
  if (outcome.outcome === 'later') {
    const attempt = entry.attempt + 1;
    draft.setEntry(entryId, {
      attempt,
      notBefore: draft.now + retryDelayS(attempt) * 1000,
      lastError: outcome.reason,
    });
    return;
  }
  draft.setEntry(entryId, {
    wanted: null,
    notBefore: null,
    lastError: outcome.outcome === 'refused' ? outcome.reason : null,
  });
  if (outcome.outcome === 'refused') {
    draft.event('step.refused', { reason: outcome.reason, wanted }, place);
    const step = draft.step(entry.stepId);
    // The device would not hold it: it runs on there, and the book says so.
    if (wanted === 'Held' && !isFinal(nodeStatus, step.status))
      draft.setEntry(entryId, { status: 'Waiting' });
  }
}

/** The device no longer has an entry that it took. Work that had not begun is delivered again; begun work waits for a person. */
export function loseEntry(draft: FileDraft, entryId: string, attempt: number): void {
  const entry = draft.entries.find((row) => row.id === entryId);
  if (entry?.delivery !== 'delivered' || entry.attempt !== attempt) return;
  const step = draft.step(entry.stepId);
  if (isFinal(nodeStatus, step.status)) return;
  const place = { stepId: step.id, deviceId: entry.deviceId };
  if (step.start === null) {
    draft.setEntry(entryId, {
      delivery: 'pending',
      deviceEntryId: null,
      attempt: attempt + 1,
      notBefore: null,
    });
    draft.event('step.deferred', { reason: 'the device no longer has it', attempt, againInS: 0 }, place);
    draft.offer({ kind: 'dispatch', ticketId: draft.ticket.id, entryId, attempt: attempt + 1 });
    return;
  }
  draft.setEntry(entryId, { status: 'Aborted', end: draft.now, lastError: 'the device no longer has it' });
  draft.setStep(step.id, { status: 'Waiting', statusDetails: 'LostByDevice', activation: 'Held' });
  draft.event(
    'step.statusChanged',
    { from: step.status, to: 'Waiting', statusDetails: 'LostByDevice' },
    place,
  );
}
