import { rollUpStatus } from '#libs/jdf';
import type { Instant } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import type { FileDraft } from './draft.js';
import { routeReadySteps } from './route.js';
import { settleUses } from './uses.js';

/**
 * Ends a step for good: what it made is there (once it has dried), what it used is booked, the next steps wake, and the
 * ticket ends with its last step. The next step sees the real amount, not the planned one.
 */
export function endStep(
  draft: FileDraft,
  stepId: string,
  status: 'Completed' | 'Aborted',
  end: Instant,
): void {
  const step = draft.step(stepId);
  if (isFinal(nodeStatus, step.status)) return;
  // A device that only says "done" and never counts has made what was planned, as far as anybody knows.
  const uncounted = status === 'Completed' && step.good === 0 && step.waste === 0;
  const good = uncounted ? step.outAmount : step.good;
  draft.setStep(stepId, { status, statusDetails: null, end, start: step.start ?? end, good });
  draft.event(
    'step.statusChanged',
    {
      from: step.status,
      to: status,
      good,
      waste: step.waste,
      unit: step.unit,
      ...(uncounted ? { assumed: true } : {}),
    },
    { stepId, deviceId: step.deviceId, time: end },
  );
  const entry = draft.liveEntry(stepId);
  if (entry !== null) {
    const returned = status === 'Completed' && entry.delivery === 'delivered';
    draft.setEntry(entry.id, {
      status: returned ? 'PendingReturn' : status,
      end,
      wanted: status === 'Aborted' ? entry.wanted : null,
    });
  }
  settleUses(draft, stepId);
  if (status === 'Completed') makeAvailable(draft, stepId, end);
  settleTicket(draft);
  routeReadySteps(draft);
}

/** Counts of a step changed after its end: what it made and used is corrected; what has begun since stays begun. */
export function correctEnded(draft: FileDraft, stepId: string): void {
  const step = draft.step(stepId);
  settleUses(draft, stepId, true);
  if (step.status !== 'Completed') return;
  for (const id of step.outputs) draft.setResource(id, { produced: step.good });
}

function makeAvailable(draft: FileDraft, stepId: string, end: Instant): void {
  const step = draft.step(stepId);
  for (const id of step.outputs) {
    const usableFrom = step.waitAfterS > 0 ? end + step.waitAfterS * 1000 : null;
    draft.setResource(id, { status: 'Available', produced: step.good, usableFrom });
    draft.event(
      'resource.available',
      { resource: id, amount: step.good, unit: step.unit, usableFrom },
      { stepId },
    );
  }
}

function settleTicket(draft: FileDraft): void {
  const to = rollUpStatus(draft.steps.map((step) => step.status));
  if (to === undefined || !isFinal(nodeStatus, to)) return;
  if (isFinal(nodeStatus, draft.ticket.status as never)) return;
  draft.event('ticket.statusChanged', { from: draft.ticket.status, to });
  draft.setTicket({ status: to, statusDetails: null });
}
