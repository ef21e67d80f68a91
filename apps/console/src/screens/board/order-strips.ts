import type { Strip } from '../../strip/lay-strips.js';
import { isOver, isWorking } from '../../words/steps.js';

/**
 * Late jobs first, the latest on top; then what is at work; then what waits, by due time; what is over comes last, the
 * newest first. Equal ones keep the order in which they came, so that rows do not dance.
 */
export function orderStrips(strips: readonly Strip[]): Strip[] {
  return [...strips].sort(
    (a, b) =>
      rank(a) - rank(b) || within(a, b) || a.cameMs - b.cameMs || (a.ticket.id < b.ticket.id ? -1 : 1),
  );
}

function rank({ ticket, lateS }: Strip): number {
  if (isOver(ticket.status)) return 3;
  if (lateS > 0) return 0;
  return ticket.steps.some(isWorking) ? 1 : 2;
}

const MINUTE_S = 60;

function within(a: Strip, b: Strip): number {
  if (isOver(a.ticket.status)) return (b.endMs ?? b.cameMs) - (a.endMs ?? a.cameMs);
  // By whole minutes: a forecast that flickers by a second must not turn two rows round.
  if (a.lateS > 0) return Math.round(b.lateS / MINUTE_S) - Math.round(a.lateS / MINUTE_S);
  return (a.dueMs ?? Number.MAX_SAFE_INTEGER) - (b.dueMs ?? Number.MAX_SAFE_INTEGER);
}
