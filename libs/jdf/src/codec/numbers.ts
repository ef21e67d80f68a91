import { converted, listOf, only } from './combine.js';
import { collapse } from './lexical.js';
import type { ValueType } from './value-type.js';

const DECIMAL = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;
const WHOLE = /^[-+]?\d+$/;

/** xs:double, INF and -INF with it. Undefined for NaN, which the standard's own type forbids, and for anything else. */
export function parseNumber(text: string): number | undefined {
  // Most have no white space around them. Adding 0 makes a negative nothing a plain one.
  if (DECIMAL.test(text)) return Number(text) + 0;
  const value = collapse(text);
  return DECIMAL.test(value) ? Number(value) + 0 : infinity(value);
}

/** A number as the standard spells it; INF and -INF without a bound. */
export function formatNumber(value: number): string {
  if (Number.isFinite(value)) return String(value);
  return value > 0 ? 'INF' : '-INF';
}

function infinity(value: string): number | undefined {
  if (value === 'INF') return Number.POSITIVE_INFINITY;
  return value === '-INF' ? Number.NEGATIVE_INFINITY : undefined;
}

export const number: ValueType<number> = { expects: 'a number', read: parseNumber, write: formatNumber };

/** XJDF's xs:float, which may be NaN. */
export const float: ValueType<number> = {
  expects: 'a number',
  read: (text) => (collapse(text) === 'NaN' ? Number.NaN : parseNumber(text)),
  write: (value) => (Number.isNaN(value) ? 'NaN' : formatNumber(value)),
};

/** A whole number; INF and -INF are none. */
export const integer: ValueType<number> = {
  expects: 'a whole number',
  read(text) {
    const value = collapse(text);
    return WHOLE.test(value) ? Number(value) + 0 : undefined;
  },
  // Exactly, and without the exponent that String has from 1e21 on.
  write: (value) => (Math.abs(value) <= Number.MAX_SAFE_INTEGER ? String(value) : String(BigInt(value))),
};

/** The standard's Integer: a whole number, INF or -INF. Counts above 2^53 lose their last digits. */
export const integerOrInfinity: ValueType<number> = {
  expects: 'a whole number, INF or -INF',
  read: (text) => integer.read(text) ?? infinity(collapse(text)),
  write: (value) => (Number.isFinite(value) ? integer.write(value) : formatNumber(value)),
};

/** Whole numbers of so many bits, with sign. */
function signed(bits: number): ValueType<number> {
  const limit = 2n ** BigInt(bits - 1);
  return {
    expects: `a whole number of at most ${bits} bits`,
    read(text) {
      const value = collapse(text);
      if (!WHOLE.test(value)) return undefined;
      const exact = BigInt(value.replace('+', ''));
      return exact >= -limit && exact < limit ? Number(exact) : undefined;
    },
    // The nearest number to the highest one lies above it.
    write: (value) => (value < limit ? integer.write(value) : String(limit - 1n)),
  };
}

/** xs:int. */
export const int32 = signed(32);

/** xs:long. Above 2^53 the last digits are lost. */
export const int64 = signed(64);

/** The standard's LongInteger: xs:long, INF or -INF. */
export const longInteger: ValueType<number> = {
  expects: 'a whole number of at most 64 bits, INF or -INF',
  read: (text) => int64.read(text) ?? infinity(collapse(text)),
  write: (value) => (Number.isFinite(value) ? int64.write(value) : formatNumber(value)),
};

/** A number from `low` to `high`, the ends included. */
export function within(type: ValueType<number>, low: number, high: number): ValueType<number> {
  return only(type, (value) => value >= low && value <= high, `${type.expects} from ${low} to ${high}`);
}

/** 0 to 100, as priorities are. */
export const percent = within(integer, 0, 100);

/** 0 to 1, as colour values are. */
export const share = within(number, 0, 1);

// The schema's own type forbids the digits 1 and 0 that xs:boolean would allow.
export const boolean: ValueType<boolean> = {
  expects: 'true or false',
  read(text) {
    const value = collapse(text);
    return value === 'true' ? true : value === 'false' ? false : undefined;
  },
  write: String,
};

/** XJDF's xs:boolean: also 1 and 0. */
export const booleanOrDigit: ValueType<boolean> = {
  expects: 'true or false',
  read(text) {
    const value = collapse(text);
    return value === '1' ? true : value === '0' ? false : boolean.read(value);
  },
  write: String,
};

export const numbers = listOf(number);
export const integers = listOf(integer);

/** Step and repeat: how often in x, in y and on top of each other. */
export const stepRepeat = converted(
  listOf(integerOrInfinity, { exactly: 3 }),
  ([x, y, z]) => ({ x: x!, y: y!, z: z! }),
  ({ x, y, z }) => [x, y, z],
);
