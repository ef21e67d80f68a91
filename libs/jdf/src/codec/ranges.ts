import { durationOrInfinity } from './durations.js';
import { rectangle, shape, xyPair } from './geometry.js';
import { splitTokens } from './lexical.js';
import { integerOrInfinity, number } from './numbers.js';
import { clockTime, dateTime } from './stated-time.js';
import { nmtoken, string } from './texts.js';
import type { ValueType } from './value-type.js';

/** From one value to another, both included; a single value is from itself to itself. */
export interface Range<T> {
  readonly from: T;
  readonly to: T;
}

const SEPARATOR = '~';

/** Values and ranges of them: `1 ~ 5 7`. Each value takes `words` blank-separated words. */
export function rangeListOf<T>(item: ValueType<T>, words = 1): ValueType<readonly Range<T>[]> {
  const one = (tokens: readonly string[]): T | undefined =>
    tokens.length === words ? item.read(tokens.join(' ')) : undefined;
  return {
    expects: `values and ranges such as a ~ b, separated by blanks; each value is ${item.expects}`,
    read(text) {
      const tokens = splitTokens(text);
      const ranges: Range<T>[] = [];
      for (let at = 0; at < tokens.length; ) {
        const from = one(tokens.slice(at, at + words));
        at += words;
        if (from === undefined) return undefined;
        if (tokens[at] !== SEPARATOR) {
          ranges.push({ from, to: from });
          continue;
        }
        const to = one(tokens.slice(at + 1, at + 1 + words));
        at += 1 + words;
        if (to === undefined) return undefined;
        ranges.push({ from, to });
      }
      return ranges;
    },
    write: (ranges) => ranges.map((range) => writeRange(range, item)).join(' '),
  };
}

function writeRange<T>({ from, to }: Range<T>, item: ValueType<T>): string {
  const [first, last] = [item.write(from), item.write(to)];
  return first === last ? first : `${first} ${SEPARATOR} ${last}`;
}

/** One range with its separator: `a ~ b`. */
export function rangeOf<T>(item: ValueType<T>, words = 1): ValueType<Range<T>> {
  const list = rangeListOf(item, words);
  return {
    expects: `a range such as a ~ b; each value is ${item.expects}`,
    read(text) {
      const ranges = text.includes(SEPARATOR) ? list.read(text) : undefined;
      return ranges?.length === 1 ? ranges[0] : undefined;
    },
    write: ({ from, to }) => `${item.write(from)} ${SEPARATOR} ${item.write(to)}`,
  };
}

// Integer ranges are the only ones that need no blanks around the separator: 0~3.
const BOUND = String.raw`(?:[-+]?\d+|INF)`;
const RANGE = `${BOUND}(?: *~ *${BOUND})?`;
const ONE_RANGE = new RegExp(`^${RANGE}$`);
const RANGES = new RegExp(`^${RANGE}(?: +${RANGE})* *$`);

const integerList = rangeListOf(integerOrInfinity);

function readIntegerRanges(text: string, form: RegExp): readonly Range<number>[] | undefined {
  const value = string.read(text);
  if (value === undefined || !form.test(value)) return undefined;
  return integerList.read(value.replaceAll(SEPARATOR, ` ${SEPARATOR} `));
}

/** Whole numbers from 0; negative ones count from the end, -1 is the last: `0 ~ -1`. */
export const integerRangeList: ValueType<readonly Range<number>[]> = {
  expects: 'whole numbers and ranges of them such as 0 ~ 3 5 -1',
  read: (text) => readIntegerRanges(text, RANGES),
  write: integerList.write,
};

/** One whole number or range of them. */
export const integerRange: ValueType<Range<number>> = {
  expects: 'a whole number or a range such as 0 ~ 3',
  read: (text) => readIntegerRanges(text, ONE_RANGE)?.[0],
  write: (range) => integerList.write([range]),
};

export const doubleRange = rangeOf(number);
export const doubleRangeList = rangeListOf(number);
export const xyPairRange = rangeOf(xyPair, 2);
export const xyPairRangeList = rangeListOf(xyPair, 2);
export const shapeRange = rangeOf(shape, 3);
export const shapeRangeList = rangeListOf(shape, 3);
export const rectangleRange = rangeOf(rectangle, 4);
export const rectangleRangeList = rangeListOf(rectangle, 4);
export const nameRange = rangeOf(nmtoken);
export const nameRangeList = rangeListOf(nmtoken);
export const dateTimeRange = rangeOf(dateTime);
export const dateTimeRangeList = rangeListOf(dateTime);
export const durationRange = rangeOf(durationOrInfinity);
export const durationRangeList = rangeListOf(durationOrInfinity);
export const clockTimeRange = rangeOf(clockTime);
