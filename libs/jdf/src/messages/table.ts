import { type Family, families } from '../jmf/family.js';
import { standardMessages } from './index.js';

export interface MessageType {
  readonly type: string;
  /** In the order of `families`. */
  readonly families: readonly Family[];
}

/** The parts of a kind: "QueryStatus" is the family Query of the type Status. Undefined for any other word. */
export function partsOfKind(kind: string): { readonly family: Family; readonly type: string } | undefined {
  const family = families.find((name) => kind.startsWith(name) && kind.length > name.length);
  return family && { family, type: kind.slice(family.length) };
}

/** The types among some kinds, each with the families it has there, ordered by name. */
export function typesOf(kinds: Iterable<string>): readonly MessageType[] {
  const found = new Map<string, Family[]>();
  for (const kind of kinds) {
    const parts = partsOfKind(kind);
    if (parts !== undefined) found.set(parts.type, [...(found.get(parts.type) ?? []), parts.family]);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([type, has]) => ({ type, families: families.filter((family) => has.includes(family)) }));
}

/** Every type of the standard with its families: what the contents are listed for. */
export const messageTypes: readonly MessageType[] = typesOf(Object.keys(standardMessages));
