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

/** With the grain before across it, then the cheapest. */
export function bestFirst(candidates: readonly Candidate[]): Candidate[] {
  return candidates.toSorted(
    (a, b) => Number(a.draft.acrossGrain) - Number(b.draft.acrossGrain) || a.price.amount - b.price.amount,
  );
}
