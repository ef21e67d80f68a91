import { Fault } from '#libs/kernel';

/** A state machine as a table: from each status, the statuses that may follow. */
export interface Machine<S extends string> {
  readonly name: string;
  readonly initial: S;
  readonly moves: Readonly<Record<S, readonly S[]>>;
}

/** Whether `to` may follow `from`. Staying is no move and always allowed. */
export function mayMove<S extends string>(machine: Machine<S>, from: S, to: S): boolean {
  return from === to || machine.moves[from].includes(to);
}

/** A status that nothing follows. */
export function isFinal<S extends string>(machine: Machine<S>, status: S): boolean {
  return machine.moves[status].length === 0;
}

/** Refuses to start on a table with a status that cannot be reached, or that leads to one it does not list. */
export function checkMachine<S extends string>(machine: Machine<S>): void {
  const reached = new Set<S>([machine.initial]);
  const open: S[] = [machine.initial];
  for (let status = open.pop(); status !== undefined; status = open.pop()) {
    const next = machine.moves[status];
    if (next === undefined) {
      throw new Fault('BROKEN', `${machine.name}: "${status}" is reached but has no row`);
    }
    for (const to of next) {
      if (!reached.has(to)) {
        reached.add(to);
        open.push(to);
      }
    }
  }
  const lost = (Object.keys(machine.moves) as S[]).filter((status) => !reached.has(status));
  if (lost.length > 0) throw new Fault('BROKEN', `${machine.name}: ${lost.join(', ')} cannot be reached`);
}
