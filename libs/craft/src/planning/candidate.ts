import type { Price } from '../cost/price.js';
import type { PlanBinding } from '../plan.js';
import type { Draft } from './draft.js';
import type { Reason } from './job.js';

/** One complete way to make the job. */
export interface Candidate {
  /** In words, for the list of alternatives. */
  what: string;
  draft: Draft;
  binding: PlanBinding;
  price: Price;
}

export interface Found {
  candidates: Candidate[];
  reasons: Reason[];
}

/** Prices closer than this are the same for a choice: the figures behind them are not surer. */
const SAME_PRICE_PCT = 1;

/**
 * The order of choice: with the grain before across it, the fewest sections (less to fold, collect and check), then the
 * cheapest; of those that cost about the same as the cheapest, the one with the fewest sheets first.
 */
export function bestFirst(candidates: readonly Candidate[]): Candidate[] {
  const sorted = candidates.toSorted((a, b) => rank(a) - rank(b) || a.price.amount - b.price.amount);
  const [first] = sorted;
  if (first === undefined) return [];
  const limit = first.price.amount * (1 + SAME_PRICE_PCT / 100);
  const close = sorted.filter((c) => rank(c) === rank(first) && c.price.amount <= limit);
  const chosen = close.toSorted((a, b) => sheets(a) - sheets(b))[0] ?? first;
  return [chosen, ...sorted.filter((c) => c !== chosen)];
}

function rank(candidate: Candidate): number {
  return Number(candidate.draft.acrossGrain) * 1000 + candidate.draft.signatures.length;
}

function sheets(candidate: Candidate): number {
  return candidate.draft.sheets.reduce((sum, sheet) => sum + sheet.sheetsToPress, 0);
}
