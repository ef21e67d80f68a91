import { type Instant, isoTime } from '#libs/kernel';
import { formatDuration, parseDateTime, parseDuration } from './time.js';

/** How one kind of attribute value is read and written. */
export interface ValueType<T> {
  /** What it must look like, for the message when it does not. */
  readonly expects: string;
  /** Undefined when the text is not such a value. */
  read(text: string): T | undefined;
  write(value: T): string;
}

const NUMBER = /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/;

/** xs:double and the standard's INF and -INF. */
export function parseNumber(text: string): number | undefined {
  const trimmed = text.trim();
  if (NUMBER.test(trimmed)) return Number(trimmed);
  if (trimmed === 'INF') return Number.POSITIVE_INFINITY;
  return trimmed === '-INF' ? Number.NEGATIVE_INFINITY : undefined;
}

export function formatNumber(value: number): string {
  if (Number.isFinite(value)) return String(value);
  return value > 0 ? 'INF' : '-INF';
}

/** Tokens of a blank-separated list. */
export function splitTokens(text: string): string[] {
  return text.split(/[ \t\r\n]+/).filter((token) => token !== '');
}

export const text: ValueType<string> = { expects: 'text', read: (value) => value, write: (value) => value };

export const number: ValueType<number> = { expects: 'a number', read: parseNumber, write: formatNumber };

export const integer: ValueType<number> = {
  expects: 'a whole number',
  read: (value) => (/^\s*[-+]?\d+\s*$/.test(value) ? Number(value) : undefined),
  write: String,
};

/** 0 to 100, as priorities are. */
export const percent: ValueType<number> = {
  expects: 'a whole number from 0 to 100',
  read(value) {
    const read = integer.read(value);
    return read !== undefined && read >= 0 && read <= 100 ? read : undefined;
  },
  write: String,
};

// The schema's own type forbids the digits 1 and 0 that xs:boolean would allow.
export const boolean: ValueType<boolean> = {
  expects: 'true or false',
  read: (value) => (value.trim() === 'true' ? true : value.trim() === 'false' ? false : undefined),
  write: String,
};

/** An instant in milliseconds since 1970 UTC. */
export const time: ValueType<Instant> = {
  expects: 'a date and time with a zone, such as 2024-08-09T11:35:41+02:00',
  read: parseDateTime,
  write: isoTime,
};

/** Seconds. */
export const duration: ValueType<number> = {
  expects: 'a duration in days, hours, minutes and seconds, such as PT1H30M',
  read: parseDuration,
  write: formatDuration,
};

export const tokens: ValueType<readonly string[]> = {
  expects: 'a list of names separated by blanks',
  read: splitTokens,
  write: (value) => value.join(' '),
};

export const integers: ValueType<readonly number[]> = {
  expects: 'a list of whole numbers separated by blanks',
  read: (value) => all(splitTokens(value).map(integer.read)),
  write: (value) => value.join(' '),
};

export const numbers: ValueType<readonly number[]> = {
  expects: 'a list of numbers separated by blanks',
  read: (value) => all(splitTokens(value).map(parseNumber)),
  write: (value) => value.map(formatNumber).join(' '),
};

/** One of the names that the standard lists. */
export function oneOf<const V extends string>(values: readonly V[]): ValueType<V> {
  return {
    expects: `one of ${values.join(', ')}`,
    read: (value) => values.find((known) => known === value.trim()),
    write: (value) => value,
  };
}

/** Several of the names that the standard lists. */
export function someOf<const V extends string>(values: readonly V[]): ValueType<readonly V[]> {
  return {
    expects: `a list of ${values.join(', ')}`,
    read: (value) => all(splitTokens(value).map(oneOf(values).read)),
    write: (value) => value.join(' '),
  };
}

function all<T>(values: readonly (T | undefined)[]): readonly T[] | undefined {
  return values.every((value) => value !== undefined) ? (values as readonly T[]) : undefined;
}
