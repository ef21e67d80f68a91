/**
 * A circle in a directed graph, each node leading to the next and the last to the first; empty where there is none. Takes
 * away what nothing leads to and what leads nowhere until nothing more goes: what is left leads round. Linear in the edges.
 */
export function firstCircle<N>(next: ReadonlyMap<N, ReadonlyMap<N, unknown>>): N[] {
  const left = withoutDeadEnds(next);
  const [start] = left.keys();
  if (start === undefined) return [];
  const seen = new Map<N, number>();
  const path: N[] = [];
  for (let at = start; ; at = left.get(at)![0]!) {
    const before = seen.get(at);
    if (before !== undefined) return path.slice(before);
    seen.set(at, path.length);
    path.push(at);
  }
}

/** The nodes from which one can go on for ever, with where they lead within those. */
function withoutDeadEnds<N>(next: ReadonlyMap<N, ReadonlyMap<N, unknown>>): ReadonlyMap<N, readonly N[]> {
  const leadingTo = new Map<N, N[]>();
  const open = new Map<N, number>();
  for (const [node, after] of next) {
    open.set(node, after.size);
    for (const one of after.keys()) {
      const from = leadingTo.get(one) ?? [];
      leadingTo.set(one, from);
      from.push(node);
    }
  }
  const ended = [...leadingTo.keys(), ...open.keys()].filter((node) => (open.get(node) ?? 0) === 0);
  const gone = new Set(ended);
  for (const node of gone) {
    for (const from of leadingTo.get(node) ?? []) {
      const rest = open.get(from)! - 1;
      open.set(from, rest);
      if (rest === 0) gone.add(from);
    }
  }
  const stays = [...next].filter(([node]) => !gone.has(node));
  return new Map(stays.map(([node, after]) => [node, [...after.keys()].filter((one) => !gone.has(one))]));
}
