import type { Order } from '../order.js';
import type { Plant } from '../plant.js';
import { planSequence } from './plan-job.js';

/** One order of jobs, and the change-overs of all presses together when they follow each other so. */
export interface JobSequence {
  jobs: string[];
  changeoverS: number;
}

/** All orders of so many jobs are tried; of more, only the one given and its reverse. */
const TRY_ALL_UP_TO = 3;

function permutations<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((item, i) => permutations(items.toSpliced(i, 1)).map((rest) => [item, ...rest]));
}

/**
 * The orders in which jobs can follow each other, the one with the least change-over first. Empty where one of them
 * cannot be planned, or there is only one.
 */
export function compareOrders(orders: readonly Order[], plant: Plant): JobSequence[] {
  if (orders.length < 2) return [];
  const tries = orders.length <= TRY_ALL_UP_TO ? permutations(orders) : [[...orders], orders.toReversed()];
  const found: JobSequence[] = [];
  for (const row of tries) {
    let changeoverS = 0;
    for (const planned of planSequence(row, plant)) {
      if (!planned.ok) return [];
      changeoverS += planned.value.changeovers.reduce((sum, change) => sum + change.durationS, 0);
    }
    found.push({ jobs: row.map(({ jobId }) => jobId), changeoverS });
  }
  return found.toSorted((a, b) => a.changeoverS - b.changeoverS);
}
