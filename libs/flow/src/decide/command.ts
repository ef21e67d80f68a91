import { error, type Problem } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import type { Step } from '../state/ticket.js';
import { wantOnDevice } from './deliver.js';
import type { FileDraft } from './draft.js';
import { routeReadySteps } from './route.js';
import { endStep } from './settle.js';

export type TicketCommand = 'hold' | 'resume' | 'abort';

const has = (command: TicketCommand): string =>
  ({ hold: 'held', resume: 'resumed', abort: 'aborted' })[command];

/**
 * Holds, resumes or aborts a whole ticket or one step of it. Returns why not, or null when it is decided. Holding stops
 * no machine: what runs, runs to its end; what has not begun, waits.
 */
export function commandTicket(draft: FileDraft, command: TicketCommand, by: string): Problem | null {
  const { ticket } = draft;
  if (ticket.status === 'Rejected')
    return error('STATE_FORBIDS', 'A rejected ticket has no steps; send it again, mended.');
  if (ticket.status === 'Completed' || ticket.status === 'Aborted') {
    return error('ENTRY_FINAL', `The ticket is ${ticket.status} and can't be ${has(command)} any more.`);
  }
  const held = ticket.activation === 'Held';
  if (command === 'hold') {
    if (held) return error('ENTRY_SAME_STATE', 'The ticket is held already.');
    draft.setTicket({ activation: 'Held' });
    draft.event('ticket.held', { by });
    for (const step of draft.steps) if (step.activation === 'Active') holdEntry(draft, step);
  } else if (command === 'resume') {
    const stuck = draft.steps.filter(
      (step) => step.activation === 'Held' && !isFinal(nodeStatus, step.status),
    );
    if (!held && stuck.length === 0) return error('ENTRY_SAME_STATE', 'The ticket is not held.');
    draft.setTicket({ activation: 'Active' });
    draft.event('ticket.resumed', { by });
    for (const step of draft.steps) release(draft, step);
    routeReadySteps(draft);
  } else {
    draft.event('ticket.aborted', { by });
    for (const step of draft.steps) abort(draft, step);
  }
  return null;
}

/** The same for one step. */
export function commandStep(
  draft: FileDraft,
  stepId: string,
  command: TicketCommand,
  by: string,
): Problem | null {
  const step = draft.steps.find((row) => row.id === stepId);
  if (step === undefined) {
    return error('STEP_UNKNOWN', `The ticket has no step "${stepId}".`, {
      hint: `It has ${draft.steps.map((s) => s.id).join(', ')}.`,
    });
  }
  if (isFinal(nodeStatus, step.status)) {
    return error('ENTRY_FINAL', `The step is ${step.status} and can't be ${has(command)} any more.`);
  }
  const place = { stepId, deviceId: step.deviceId };
  if (command === 'hold') {
    if (step.activation === 'Held') return error('ENTRY_SAME_STATE', 'The step is held already.');
    if (step.status !== 'Waiting')
      return error('ENTRY_RUNNING', `The step is ${step.status}: a machine is not stopped from here.`);
    draft.setStep(stepId, { activation: 'Held' });
    draft.event('step.held', { by }, place);
    holdEntry(draft, step);
  } else if (command === 'resume') {
    if (step.activation !== 'Held') return error('ENTRY_SAME_STATE', 'The step is not held.');
    draft.event('step.resumed', { by }, place);
    release(draft, step);
    routeReadySteps(draft);
  } else {
    draft.event('step.aborted', { by }, place);
    abort(draft, step);
  }
  return null;
}

function holdEntry(draft: FileDraft, step: Step): void {
  const entry = draft.liveEntry(step.id);
  if (entry?.status !== 'Waiting') return;
  draft.setEntry(entry.id, { status: 'Held' });
  if (entry.delivery === 'delivered') wantOnDevice(draft, entry.id, 'Held');
}

function release(draft: FileDraft, step: Step): void {
  if (isFinal(nodeStatus, step.status)) return;
  const refusedOrHeld = step.activation === 'Held';
  draft.setStep(step.id, { activation: 'Active', statusDetails: refusedOrHeld ? null : step.statusDetails });
  const entry = draft.liveEntry(step.id);
  if (entry?.status !== 'Held') return;
  draft.setEntry(entry.id, { status: 'Waiting', notBefore: null });
  if (entry.delivery === 'delivered') wantOnDevice(draft, entry.id, 'Waiting');
  else
    draft.offer({ kind: 'dispatch', ticketId: draft.ticket.id, entryId: entry.id, attempt: entry.attempt });
}

function abort(draft: FileDraft, step: Step): void {
  if (isFinal(nodeStatus, step.status)) return;
  const entry = draft.liveEntry(step.id);
  endStep(draft, step.id, 'Aborted', draft.now);
  if (entry?.delivery === 'delivered') wantOnDevice(draft, entry.id, 'Aborted');
}
