import type { PartKeys } from '../elements/part.js';
import { agrees, canonical, type Interval, intervals, isList } from './key-value.js';
import type { PartGroup, PartNode } from './part-node.js';

interface Member extends Interval {
  readonly part: PartNode;
  /** The highest end of those up to this one. */
  readonly reach: number | string;
}

/** A group that sorts its parts by value when it is first asked for one. */
class KeyGroup implements PartGroup {
  readonly #crowded: boolean;
  #same: ReadonlyMap<string, readonly PartNode[]> | undefined;
  #members: readonly Member[] | undefined;

  constructor(
    readonly key: string,
    readonly parts: readonly PartNode[],
  ) {
    this.#crowded = parts.some(({ more }) => more.length > 0);
  }

  having(value: string): readonly PartNode[] {
    this.#same ??= groupedBy(this.parts, (part) => canonical(this.key, part.value));
    return this.#same.get(canonical(this.key, value)) ?? NONE;
  }

  meant(selection: PartKeys): readonly PartNode[] {
    const wanted = selection[this.key];
    const found = wanted === undefined ? this.parts : this.#agreeing(wanted);
    return this.#crowded ? found.filter((part) => agreesFurther(part, selection)) : found;
  }

  #agreeing(wanted: string): readonly PartNode[] {
    const found = this.having(wanted);
    if (!isList(this.key)) return found;
    this.#members ??= membersOf(this.key, this.parts);
    const members = this.#members;
    const sharing = intervals(this.key, wanted).flatMap((asked) => overlapping(members, asked));
    return [...new Set([...found, ...sharing])].sort(byOrder);
  }
}

const NONE: readonly PartNode[] = [];

/** The groups of the parts below one part, which are given in document order. */
export function groupsOf(parts: readonly PartNode[]): readonly PartGroup[] {
  const [first] = parts;
  // A sound tree has one key a level.
  if (first !== undefined && parts.every(({ key }) => key === first.key))
    return [new KeyGroup(first.key, parts)];
  return [...groupedBy(parts, ({ key }) => key)].map(([key, those]) => new KeyGroup(key, those));
}

function groupedBy(
  parts: readonly PartNode[],
  nameOf: (part: PartNode) => string,
): ReadonlyMap<string, readonly PartNode[]> {
  const groups = new Map<string, PartNode[]>();
  for (const part of parts) {
    const name = nameOf(part);
    const there = groups.get(name);
    if (there === undefined) groups.set(name, [part]);
    else there.push(part);
  }
  return groups;
}

/** Whether nothing is asked for but what the further keys of a wrongly written part say. */
const agreesFurther = ({ more }: PartNode, selection: PartKeys): boolean =>
  more.every(({ key, value }) => selection[key] === undefined || agrees(key, value, selection[key]));

/** Members of list values by their lower end. */
function membersOf(key: string, parts: readonly PartNode[]): readonly Member[] {
  const found = parts.flatMap((part) =>
    intervals(key, part.value).map((interval) => ({ ...interval, part })),
  );
  found.sort((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0));
  let reach: number | string | undefined;
  return found.map((member) => {
    reach = reach === undefined || member.high > reach ? member.high : reach;
    return { ...member, reach };
  });
}

/** Looks from the last member that begins early enough backwards, as long as any before it reaches far enough. */
function overlapping(members: readonly Member[], asked: Interval): PartNode[] {
  let from = 0;
  let to = members.length;
  while (from < to) {
    const middle = (from + to) >>> 1;
    if (members[middle]!.low <= asked.high) from = middle + 1;
    else to = middle;
  }
  const found: PartNode[] = [];
  for (let i = from - 1; i >= 0 && members[i]!.reach >= asked.low; i--) {
    if (members[i]!.high >= asked.low) found.push(members[i]!.part);
  }
  return found;
}

export const byOrder = (a: PartNode, b: PartNode): number => a.order - b.order;
