/** A task of a change-over. Times in seconds. */
export interface NetworkTask {
  name: string;
  durationS: number;
  after: readonly string[];
  /** What only one task can have at a time: a person, a common drive, a unit. */
  needs: readonly string[];
}

export interface NetworkSchedule {
  durationS: number;
  startS: ReadonlyMap<string, number>;
  /** A chain without slack from the start to the end. */
  criticalPath: string[];
}

interface Node extends NetworkTask {
  /** Longest way from the start of the task to the end, waiting for nobody. */
  tailS: number;
}

function withTails(tasks: readonly NetworkTask[]): Node[] {
  const tails = new Map<string, number>();
  const tail = (task: NetworkTask): number => {
    const known = tails.get(task.name);
    if (known !== undefined) return known;
    const followers = tasks.filter((t) => t.after.includes(task.name));
    const value = task.durationS + Math.max(0, ...followers.map(tail));
    tails.set(task.name, value);
    return value;
  };
  return tasks.map((task) => ({ ...task, tailS: tail(task) }));
}

interface Partial {
  ends: ReadonlyMap<string, number>;
  starts: ReadonlyMap<string, number>;
  freeAt: ReadonlyMap<string, number>;
}

function earliest(task: Node, at: Partial): number {
  return Math.max(
    0,
    ...task.after.map((name) => at.ends.get(name) ?? 0),
    ...task.needs.map((need) => at.freeAt.get(need) ?? 0),
  );
}

function put(task: Node, at: Partial): Partial {
  const start = earliest(task, at);
  const end = start + task.durationS;
  return {
    starts: new Map(at.starts).set(task.name, start),
    ends: new Map(at.ends).set(task.name, end),
    freeAt: new Map([...at.freeAt, ...task.needs.map((need): [string, number] => [need, end])]),
  };
}

/**
 * Shortest schedule of a task network in which some tasks share a person or a part of the machine: branch and bound
 * over the orders in which the tasks can be taken up, bounded by the longest remaining way. Exact; a change-over has a
 * dozen tasks at most. Tasks named in `after` must be in the list, without a cycle.
 */
export function shortestSchedule(tasks: readonly NetworkTask[]): NetworkSchedule {
  const nodes = withTails(tasks).toSorted((a, b) => b.tailS - a.tailS);
  let best: Partial | null = null;
  let bestS = Number.POSITIVE_INFINITY;

  const search = (at: Partial): void => {
    const open = nodes.filter((t) => !at.starts.has(t.name));
    if (open.length === 0) {
      const end = Math.max(0, ...at.ends.values());
      if (end < bestS) [best, bestS] = [at, end];
      return;
    }
    const ready = open.filter((t) => t.after.every((name) => at.ends.has(name)));
    if (ready.some((t) => earliest(t, at) + t.tailS >= bestS)) return;
    // A task that shares nothing delays nobody: take it at once instead of trying every order.
    const alone = ready.find((t) => t.needs.length === 0);
    for (const task of alone ? [alone] : ready) search(put(task, at));
  };

  search({ starts: new Map(), ends: new Map(), freeAt: new Map() });
  const found: Partial = best ?? { starts: new Map(), ends: new Map(), freeAt: new Map() };
  const durationS = Math.max(0, ...found.ends.values());
  return { durationS, startS: found.starts, criticalPath: chain(nodes, found, durationS) };
}

/** Walks back from a task that ends last to what it waited for: a predecessor or whoever held what it needs. */
function chain(nodes: readonly Node[], at: Partial, durationS: number): string[] {
  const end = (name: string): number => at.ends.get(name) ?? 0;
  let task = nodes.find((t) => end(t.name) === durationS);
  const names: string[] = [];
  while (task !== undefined) {
    const current: Node = task;
    names.unshift(current.name);
    const start = at.starts.get(current.name) ?? 0;
    const waitedFor = (t: Node): boolean =>
      t.name !== current.name &&
      end(t.name) === start &&
      !names.includes(t.name) &&
      (current.after.includes(t.name) || t.needs.some((need) => current.needs.includes(need)));
    task = start === 0 ? undefined : nodes.find(waitedFor);
  }
  return names;
}
