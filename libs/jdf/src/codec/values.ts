import { type Instant, isoTime } from '#libs/kernel';
import { readAll } from './combine.js';
import { formatDuration, parseDuration } from './durations.js';
import { collapse, splitTokens } from './lexical.js';
import { parseDateTime } from './stated-time.js';
import type { ValueType } from './value-type.js';

/** An instant in milliseconds since 1970 UTC. Stricter than the schema: without a zone it is none. */
export const time: ValueType<Instant> = {
  expects: 'a date and time with a zone, such as 2024-08-09T11:35:41+02:00',
  read: parseDateTime,
  write: isoTime,
};

/** Seconds. Stricter than the schema: years and months have no fixed length. */
export const duration: ValueType<number> = {
  expects: 'a duration in days, hours, minutes and seconds, such as PT1H30M',
  read: parseDuration,
  write: formatDuration,
};

/** One of the names that the standard lists. */
export function oneOf<const V extends string>(values: readonly V[]): ValueType<V> {
  return {
    expects: `one of ${values.join(', ')}`,
    read(text) {
      const name = collapse(text);
      return values.find((known) => known === name);
    },
    write: (value) => value,
  };
}

/** Several of the names that the standard lists. */
export function someOf<const V extends string>(values: readonly V[]): ValueType<readonly V[]> {
  return {
    expects: `a list of ${values.join(', ')}`,
    read: (text) => readAll(splitTokens(text), oneOf(values)),
    write: (value) => value.join(' '),
  };
}
