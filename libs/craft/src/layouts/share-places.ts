/** How the places of a form are shared out among kinds of piece, and how many sheets that takes. */
export interface Share {
  /** Good sheets after which each kind has its quantity: set by the kind that is served worst. */
  sheets: number;
  /** Places of each kind, in the order given. */
  places: number[];
}

/**
 * Shares `places` out so that the fewest sheets are run; exact: with s sheets a kind needs ceil(quantity ÷ s) places, and
 * the least s for which all of these fit is found by halving. Places left over go to the kinds that are served worst,
 * which is where a miscount would hurt first. Null where there are fewer places than kinds.
 */
export function sharePlaces(quantities: readonly number[], places: number): Share | null {
  if (quantities.length === 0 || quantities.length > places) return null;
  const needed = (sheets: number): number => quantities.reduce((sum, q) => sum + Math.ceil(q / sheets), 0);
  let [low, high] = [1, Math.max(...quantities)];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (needed(middle) <= places) high = middle;
    else low = middle + 1;
  }
  const shared = quantities.map((q) => Math.ceil(q / low));
  for (let left = places - shared.reduce((a, b) => a + b, 0); left > 0; left--) {
    const loads = quantities.map((q, i) => q / (shared[i] ?? 1));
    const worst = loads.indexOf(Math.max(...loads));
    shared[worst] = (shared[worst] ?? 0) + 1;
  }
  return { sheets: low, places: shared };
}
