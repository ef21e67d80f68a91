import { isFinal, nodeStatus } from '../machines/index.js';
import type { Step } from '../state/ticket.js';
import type { FileDraft } from './draft.js';

/**
 * Sends every step that has all it needs to its device's queue. A step waits, never fails: without its inputs, while it
 * or its ticket is held, or until something has dried. Called whenever something of the ticket changed; doing it twice
 * changes nothing.
 */
export function routeReadySteps(draft: FileDraft): void {
  if (draft.ticket.activation !== 'Active') return;
  if (draft.ticket.status === 'Rejected' || isFinal(nodeStatus, draft.ticket.status)) return;
  for (const step of draft.steps) if (isStartable(draft, step)) queueStep(draft, step);
}

function isStartable(draft: FileDraft, step: Step): boolean {
  if (step.status !== 'Waiting' || step.activation !== 'Active' || step.deviceId === null) return false;
  if (draft.liveEntry(step.id) !== null) return false;
  return step.inputs.every((id) => {
    const resource = draft.resources.find((row) => row.id === id);
    // In use is there as well: two sections come off one cut sheet, and lost work takes up what it had begun on.
    return (
      resource !== undefined && resource.status !== 'Unavailable' && (resource.usableFrom ?? 0) <= draft.now
    );
  });
}

function queueStep(draft: FileDraft, step: Step): void {
  const entryId = draft.context.ids.next();
  draft.addEntry({
    id: entryId,
    ticketId: draft.ticket.id,
    stepId: step.id,
    deviceId: step.deviceId!,
    status: 'Waiting',
    delivery: 'pending',
    deviceEntryId: null,
    attempt: 1,
    notBefore: null,
    lastError: null,
    returned: false,
    wanted: null,
    priority: draft.ticket.priority,
    submitted: draft.now,
    start: null,
    end: null,
  });
  draft.event('step.queued', { jobId: draft.ticket.jobId }, { stepId: step.id, deviceId: step.deviceId });
  draft.offer({ kind: 'dispatch', ticketId: draft.ticket.id, entryId, attempt: 1 });
}
