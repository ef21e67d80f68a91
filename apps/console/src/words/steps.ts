import type { Step, Ticket } from '../server/shapes.js';
import { words } from './index.js';

const RIPPING = new Set(['Interpreting', 'Rendering', 'Screening']);

/**
 * The process that a combined step is known by in the hall: the later one, but the binding rather than the trim in the
 * same machine (common practice, no source).
 */
export function chiefProcess(types: readonly string[]): string {
  const binding = types.find((type) => type === 'Stitching' || type === 'CoverApplication');
  // The three parts of ripping, told one by one, are still called by the one word.
  const last = types.at(-1) ?? '';
  return binding ?? (RIPPING.has(last) ? 'RIPing' : last);
}

/** Words for the details of a status; one without a word of ours stands as it was sent. */
export function detailWords(details: string | null): string {
  return details === null ? '' : (words.details[details] ?? details);
}

/** One short word for a step, e.g. `Print`. A process without one keeps the standard's name. */
export function stepWord(step: Pick<Step, 'types'>): string {
  const chief = chiefProcess(step.types);
  return words.process[chief] ?? chief;
}

/** All processes of a step in words, e.g. `Collect, Stitch, Trim`. */
export function stepWords(step: Pick<Step, 'types'>): string {
  return step.types.map((type) => words.process[type] ?? type).join(', ');
}

const WORKING = new Set(['Setup', 'InProgress', 'Cleanup', 'Stopped', 'Suspended']);
export const isWorking = (step: Step): boolean => WORKING.has(step.status);
export const isOver = (status: string): boolean => status === 'Completed' || status === 'Aborted';

/** The status to show for a whole ticket: a hold outweighs what its steps do, and the work of a step outweighs waiting. */
export function ticketStatus(ticket: Ticket): string {
  if (isOver(ticket.status) || ticket.status === 'Rejected') return ticket.status;
  if (ticket.activation === 'Held') return 'Held';
  const working = ticket.steps.filter(isWorking);
  const running = working.find((step) => step.status === 'InProgress') ?? working[0];
  if (running !== undefined) return running.status;
  const front = frontWaiting(ticket);
  return front.length > 0 && front.every((step) => step.activation === 'Held') ? 'Held' : 'Waiting';
}

export function stepStatus(step: Step): string {
  return step.activation === 'Held' && !isOver(step.status) && !isWorking(step) ? 'Held' : step.status;
}

/** Steps that could begin but for what `waitsFor` says: all before them are done. */
export function frontWaiting(ticket: Ticket): Step[] {
  const done = new Set(ticket.steps.filter((step) => step.status === 'Completed').map((step) => step.id));
  return ticket.steps.filter(
    (step) => step.waitsFor !== null && !isOver(step.status) && step.after.every((id) => done.has(id)),
  );
}
