import { roundTo } from '#libs/kernel';
import { isFinal, nodeStatus } from '../machines/index.js';
import type { Source, Step, Use } from '../state/ticket.js';
import type { FileDraft } from './draft.js';

/**
 * Sets aside what a ticket will need, as far as the book has it. Only reservations are bounded by the book; a draw at a
 * machine never is, for the pile is there whatever the book says.
 */
export function reserveUses(draft: FileDraft): void {
  for (const use of draft.uses) {
    const there = Math.max(0, draft.balance(use.item, 'store'));
    const reserved = Math.min(use.planned, there);
    draft.move(
      { item: use.item, unit: use.unit, amount: reserved, from: 'store', to: 'reserved', reason: 'reserved' },
      use.stepId,
    );
    draft.setUse(use.stepId, use.item, { reserved });
    if (reserved < use.planned) {
      draft.event(
        'stock.short',
        { item: use.item, unit: use.unit, needed: use.planned, inStore: there },
        { stepId: use.stepId },
      );
    }
  }
}

/** What a device or a person says was used in all, so far. Totals, so a repeat changes nothing. */
export interface UseReport {
  readonly stepId: string;
  readonly item: string;
  readonly actual: number;
  /** The lost part of `actual`; null when the report does not say. */
  readonly waste: number | null;
  readonly source: Source;
}

/**
 * Books what was used beyond what is booked already: first from what was reserved, then from the store, then (the book
 * is wrong, the pile was there) from the account of differences, with a word that a count is due.
 */
export function bookUse(draft: FileDraft, report: UseReport): void {
  const use = draft.uses.find((row) => row.stepId === report.stepId && row.item === report.item);
  if (use === undefined) return;
  drawUpTo(draft, use, report.actual);
  if (isFinal(nodeStatus, draft.step(use.stepId).status)) {
    bookAfterTheEnd(draft, use, report);
    return;
  }
  const waste = report.waste === null ? use.waste : Math.max(use.waste, report.waste);
  draft.setUse(use.stepId, use.item, { waste, source: report.source });
}

/** The books were closed already: what turns up late was lost, for the good ones are counted. */
function bookAfterTheEnd(draft: FileDraft, before: Use, report: UseReport): void {
  const { item, unit, stepId } = before;
  const late = Math.max(0, report.actual - before.actual);
  const to = lossAccount(before);
  draft.move({ item, unit, amount: late, from: 'process', to, reason: 'reported after the end' }, stepId);
  const corrected = Math.max(0, Math.min(before.actual, (report.waste ?? 0) - late) - before.waste);
  draft.move({ item, unit, amount: corrected, from: 'good', to, reason: 'reported after the end' }, stepId);
  draft.setUse(stepId, item, { waste: before.waste + late + corrected, source: report.source });
}

const lossAccount = (use: Use): 'spoils' | 'scrap' => (use.unit === 'sheets' ? 'spoils' : 'scrap');

function drawUpTo(draft: FileDraft, use: Use, actual: number): void {
  const more = actual - use.actual;
  if (more <= 0) return;
  const draw = (amount: number, from: 'reserved' | 'store' | 'difference'): void =>
    draft.move({ item: use.item, unit: use.unit, amount, from, to: 'process', reason: 'used' }, use.stepId);
  const fromReserved = Math.min(more, use.reserved);
  const fromStore = Math.min(more - fromReserved, Math.max(0, draft.balance(use.item, 'store')));
  const beyond = more - fromReserved - fromStore;
  draw(fromReserved, 'reserved');
  draw(fromStore, 'store');
  draw(beyond, 'difference');
  if (beyond > 0) {
    draft.event(
      'stock.short',
      { item: use.item, unit: use.unit, beyondTheBook: beyond, countDue: true },
      { stepId: use.stepId },
    );
  }
  draft.setUse(use.stepId, use.item, { actual, reserved: use.reserved - fromReserved });
}

/**
 * Closes the books of a step that ended: what was used leaves the process as good or as waste, and what was set aside
 * and not needed goes back. Where the device never said what it used, the counts say it (paper), or the plan does,
 * scaled to what really ran (ink, plates): then marked as assumed. `again`: they were closed before, and counts that
 * came late correct them.
 */
export function settleUses(draft: FileDraft, stepId: string, again = false): void {
  for (const use of draft.uses.filter((row) => row.stepId === stepId)) settleUse(draft, use, again);
}

function settleUse(draft: FileDraft, use: Use, again: boolean): void {
  const { stepId, item, unit } = use;
  const step = draft.step(stepId);
  drawUpTo(draft, use, usedInAll(step, use));
  const drawn = draft.uses.find((row) => row.stepId === stepId && row.item === item)!;
  const lost = unit === 'kg' ? drawn.waste : Math.max(drawn.waste, drawn.actual - step.good - step.samples);
  const waste = Math.max(0, Math.min(drawn.actual, again ? drawn.actual - step.good - step.samples : lost));
  const gone = again ? { good: use.actual - use.waste, waste: use.waste } : { good: 0, waste: 0 };
  const reason = again ? 'count corrected' : 'step ended';
  const leave = (amount: number, to: 'good' | 'spoils' | 'scrap'): void => {
    draft.move({ item, unit, amount, from: 'process', to, reason }, stepId);
    draft.move({ item, unit, amount: -amount, from: to, to: 'process', reason }, stepId);
  };
  // Corrections come back into the process first, so that it never gives out more than it holds.
  leave(waste - gone.waste, lossAccount(use));
  leave(drawn.actual - waste - gone.good, 'good');
  draft.move(
    { item, unit, amount: drawn.reserved, from: 'reserved', to: 'store', reason: 'not needed' },
    stepId,
  );
  draft.setUse(stepId, item, { waste, reserved: 0 });
}

/** All that a step used of one thing. The counters are the floor: nobody printed more sheets than were drawn. */
function usedInAll(step: Step, use: Use): number {
  const fed = step.good + step.waste + step.samples;
  const share = step.inAmount > 0 ? fed / step.inAmount : 0;
  if (use.unit === 'sheets') return Math.max(use.source === 'assumed' ? 0 : use.actual, fed);
  if (use.source !== 'assumed') return use.actual;
  // To the milligram: a balance that is off by a binary digit looks like a fault in the books.
  return use.unit === 'plates' ? fed : roundTo(use.planned * share, 6);
}
