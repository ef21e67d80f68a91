/**
 * The book of materials: every move takes an amount from one account to another, so that nothing appears or vanishes.
 * `spoils` may be fed again for set-up but never count as paper drawn or as good; what is drawn beyond the book is
 * booked against `difference` and asks for a count (practice of the trade, no source).
 */
export const accounts = [
  'supplier',
  'store',
  'reserved',
  'process',
  'good',
  'spoils',
  'scrap',
  'difference',
] as const;
export type Account = (typeof accounts)[number];

export interface StockMove {
  item: string;
  lot: string | null;
  unit: string;
  amount: number;
  from: Account;
  to: Account;
}

/** Amount in each account after all moves of one item; accounts that nothing touched are 0. */
export function balance(moves: readonly StockMove[], item: string): Record<Account, number> {
  const sums: Record<Account, number> = {
    supplier: 0,
    store: 0,
    reserved: 0,
    process: 0,
    good: 0,
    spoils: 0,
    scrap: 0,
    difference: 0,
  };
  for (const move of moves) {
    if (move.item !== item) continue;
    sums[move.from] -= move.amount;
    sums[move.to] += move.amount;
  }
  return sums;
}

/**
 * The moves of a draw at a machine: first what is reserved for the job, then what is free in the store; what the book
 * does not have comes from `difference`. A draw is never refused, for the pile is really there.
 */
export function drawMoves(
  want: Omit<StockMove, 'from' | 'to'>,
  reservedForJob: number,
  freeInStore: number,
): StockMove[] {
  const reserved = Math.min(want.amount, Math.max(0, reservedForJob));
  const store = Math.min(want.amount - reserved, Math.max(0, freeInStore));
  const beyond = want.amount - reserved - store;
  const move = (from: Account, amount: number): StockMove => ({ ...want, amount, from, to: 'process' });
  return [move('reserved', reserved), move('store', store), move('difference', beyond)].filter(
    (m) => m.amount > 0,
  );
}
