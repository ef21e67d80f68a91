const median = (values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};

/**
 * Runs `ours` and `peer` in turn, `rounds` times each after some that do not count, and answers the median
 * of what each returned. In turn, and the order swapped every round, so that both meet the same machine: load comes
 * and goes in seconds, and the second of a pair finds warmer caches.
 */
export async function alternate({ ours, peer, rounds = 5, warmUp = 1 }) {
  const figures = { ours: [], peer: [] };
  const sides = { ours, peer };
  for (let round = 0; round < warmUp + rounds; round++) {
    for (const side of round % 2 === 0 ? ['ours', 'peer'] : ['peer', 'ours']) {
      const figure = await sides[side]();
      if (round >= warmUp) figures[side].push(figure);
    }
  }
  return { ours: median(figures.ours), peer: median(figures.peer) };
}

/** How many a second: runs `work` once and divides `count` by the seconds it took. */
export const perSecond = (count, work) => async () => {
  const start = performance.now();
  await work();
  return count / ((performance.now() - start) / 1000);
};
