// Further away than this it is another word, not a slip of the hand.
const FURTHEST = 2;

/** The name that a misspelt one was probably meant to be: the nearest by single changed letters. */
export function nearest(name: string, names: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.min(FURTHEST, Math.floor(name.length / 3)) + 1;
  for (const candidate of names) {
    if (Math.abs(candidate.length - name.length) >= least) continue;
    const far = distance(name.toLowerCase(), candidate.toLowerCase());
    if (far < least) {
      best = candidate;
      least = far;
    }
  }
  return best;
}

/** Letters to be changed, added or left out (Levenshtein). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + same));
    }
    row = next;
  }
  return row[b.length]!;
}
