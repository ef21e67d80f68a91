import type { PartKeys } from '../elements/part.js';
import { agrees, canonical, type Interval, intervals, isList } from './key-value.js';
import type { PartNode } from './part-tree.js';

/** The parts below one part that have the same key, found by value without looking at all of them. */
interface KeyGroup {
  readonly key: string;
  readonly parts: readonly PartNode[];
  /** By value in one spelling. */
  readonly same: ReadonlyMap<string, readonly PartNode[]>;
  /** Members of list values by their lower end; `reach` is the highest end up to there. */
  readonly members: readonly Member[];
}

interface Member extends Interval {
  readonly part: PartNode;
  readonly reach: number | string;
}

const groups = new WeakMap<PartNode, readonly KeyGroup[]>();

/** Parts below a part, by key. A sound tree has one key a level, a sparse one may have several. */
function groupsBelow(node: PartNode): readonly KeyGroup[] {
  const known = groups.get(node);
  if (known !== undefined) return known;
  const byKey = new Map<string, PartNode[]>();
  for (const part of node.parts) gather(byKey, part.key, part);
  const made = [...byKey].map(([key, parts]) => {
    const same = new Map<string, PartNode[]>();
    for (const part of parts) gather(same, canonical(key, part.keys[key]!), part);
    return { key, parts, same, members: isList(key) ? membersOf(key, parts) : [] };
  });
  groups.set(node, made);
  return made;
}

function gather<T>(map: Map<string, T[]>, name: string, value: T): void {
  const there = map.get(name);
  if (there === undefined) map.set(name, [value]);
  else there.push(value);
}

function membersOf(key: string, parts: readonly PartNode[]): readonly Member[] {
  const found = parts.flatMap((part) =>
    intervals(key, part.keys[key]!).map((interval) => ({ ...interval, part })),
  );
  found.sort((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0));
  let reach: number | string | undefined;
  return found.map((member) => {
    reach = reach === undefined || member.high > reach ? member.high : reach;
    return { ...member, reach };
  });
}

/**
 * The parts below a part that agree with a selection, in document order: those with the value that it names, and all
 * where it leaves the key open.
 */
export function partsMeant(node: PartNode, selection: PartKeys): readonly PartNode[] {
  // Most parts that are asked are leaves: nothing is kept for them.
  if (node.parts.length === 0) return node.parts;
  const found = groupsBelow(node).map((group) => partsInGroup(group, selection));
  if (found.length === 1) return found[0]!;
  return found.flat().sort(byOrder);
}

/** The keys by which a part is divided further: one in a sound tree, several where a sparse one skips levels. */
export const keysBelow = (node: PartNode): readonly string[] => groupsBelow(node).map(({ key }) => key);

/** The first few values that the parts below a part have of a key, each once. */
export function valuesBelow(node: PartNode, key: string, most: number): readonly string[] {
  const values = new Set<string>();
  for (const part of node.parts) {
    if (values.size >= most) break;
    if (Object.hasOwn(part.keys, key)) values.add(part.keys[key]!);
  }
  return [...values];
}

/** The parts below a part that have exactly this value of a key, in whatever spelling. */
export function partsWith(node: PartNode, key: string, value: string): readonly PartNode[] {
  const group = groupsBelow(node).find((one) => one.key === key);
  return group?.same.get(canonical(key, value)) ?? [];
}

function partsInGroup(group: KeyGroup, selection: PartKeys): readonly PartNode[] {
  const { key, parts, same, members } = group;
  const wanted = selection[key];
  let found: readonly PartNode[] = parts;
  if (wanted !== undefined) {
    found = same.get(canonical(key, wanted)) ?? [];
    if (members.length > 0) {
      const sharing = intervals(key, wanted).flatMap((asked) => overlapping(members, asked));
      found = [...new Set([...found, ...sharing])].sort(byOrder);
    }
  }
  // Only a wrongly written part has further keys of its own.
  return found.some((part) => part.more.length > 0)
    ? found.filter(({ keys, more }) =>
        more.every((name) => selection[name] === undefined || agrees(name, keys[name]!, selection[name])),
      )
    : found;
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

const byOrder = (a: PartNode, b: PartNode): number => a.order - b.order;
