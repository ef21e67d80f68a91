import { isFinal, nodeStatus } from '../machines/index.js';
import type { Source, Use } from '../state/ticket.js';
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
 * scaled to what really ran (ink, plates): then marked as assumed.
 */
export function settleUses(draft: FileDraft, stepId: string): void {
  const step = draft.step(stepId);
  const fed = step.good + step.waste + step.samples;
  for (const use of draft.uses.filter((row) => row.stepId === stepId)) {
    const share = step.inAmount > 0 ? fed / step.inAmount : 0;
    const counted = use.unit === 'sheets' || use.unit === 'plates' ? fed : use.planned * share;
    const said = use.source === 'assumed' ? 0 : use.actual;
    // The counters of the step are the floor: nobody printed more sheets than were drawn.
    const actual = Math.max(said, use.source === 'assumed' || use.unit === 'sheets' ? counted : 0);
    drawUpTo(draft, use, actual);
    const drawn = draft.uses.find((row) => row.stepId === stepId && row.item === use.item)!;
    const lost =
      use.unit === 'kg' ? drawn.waste : Math.max(drawn.waste, drawn.actual - step.good - step.samples);
    const waste = Math.max(0, Math.min(drawn.actual, lost));
    draft.setUse(stepId, use.item, { waste, reserved: 0 });
    const done = (amount: number, to: 'good' | 'spoils' | 'scrap'): void =>
      draft.move(
        { item: use.item, unit: use.unit, amount, from: 'process', to, reason: 'step ended' },
        stepId,
      );
    done(drawn.actual - waste, 'good');
    done(waste, lossAccount(use));
    draft.move(
      {
        item: use.item,
        unit: use.unit,
        amount: drawn.reserved,
        from: 'reserved',
        to: 'store',
        reason: 'not needed',
      },
      stepId,
    );
  }
}
