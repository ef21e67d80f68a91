import { splitTokens } from '../codec/index.js';
import { type KeyKind, kindOfKey } from './keys.js';

/** From the first to the last member, both included; of numbers or of names. */
export interface Interval {
  readonly low: number | string;
  readonly high: number | string;
}

// Places counted from the end (-1 is the last) lie beyond all that are counted from the start, and INF beyond those: how
// long a run is does not stand in its parts.
const FROM_END = 2 ** 50;
const INFINITE = 2 ** 51;

/** Whether values of the key are lists, so that two of them may share a member without being the same. */
export function isList(key: string): boolean {
  const kind = kindOfKey(key);
  return kind === 'names' || kind === 'nameRanges' || kind === 'integerRanges';
}

/** One spelling for all values that mean the same: blanks, signs, leading zeros. */
export function canonical(key: string, value: string): string {
  const kind = kindOfKey(key);
  if (kind === undefined || kind === 'name') return value.trim();
  if (kind === 'integer' || kind === 'numbers') return splitTokens(value).map(plainNumber).join(' ');
  return intervals(key, value)
    .map(({ low, high }) => (low === high ? String(low) : `${low}~${high}`))
    .join(' ');
}

/** The members of a list value, in the order written; a single value is an interval of one. */
export function intervals(key: string, value: string): readonly Interval[] {
  const kind = kindOfKey(key);
  const tokens = splitTokens(kind === 'names' ? value : value.replaceAll('~', ' ~ '));
  const found: Interval[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const low = member(tokens[i]!, kind);
    const high = kind !== 'names' && tokens[i + 1] === '~' ? tokens[i + 2] : undefined;
    if (high === undefined) found.push({ low, high: low });
    else {
      found.push(ordered(low, member(high, kind)));
      i += 2;
    }
  }
  return found;
}

/** Whether a part with one value is meant where the other is asked for: the same value, or lists with a common member. */
export function agrees(key: string, has: string, wanted: string): boolean {
  if (canonical(key, has) === canonical(key, wanted)) return true;
  if (!isList(key)) return false;
  const asked = intervals(key, wanted);
  return intervals(key, has).some((one) => asked.some((other) => overlap(one, other)));
}

/** One spelling of a selection, the same for all that mean the same. */
export const spellingOf = (selection: Readonly<Record<string, string>>): string =>
  JSON.stringify(
    Object.entries(selection)
      .map(([key, value]) => [key, canonical(key, value)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

/** Whether two intervals share a value; their ends belong to them. */
export const overlap = (one: Interval, other: Interval): boolean =>
  one.low <= other.high && other.low <= one.high;

// A range may also be written from its last member down to its first.
const ordered = (low: number | string, high: number | string): Interval =>
  low <= high ? { low, high } : { low: high, high: low };

function member(token: string, kind: KeyKind | undefined): number | string {
  if (kind !== 'integerRanges') return token;
  if (token === 'INF' || token === '+INF') return INFINITE;
  const number = Number(token);
  if (!Number.isSafeInteger(number)) return token;
  return number < 0 || Object.is(number, -0) ? FROM_END + number : number;
}

function plainNumber(token: string): string {
  const number = Number(token);
  return Number.isFinite(number) ? String(number) : token;
}
