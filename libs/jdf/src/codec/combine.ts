import { collapse, splitTokens } from './lexical.js';
import type { ValueType } from './value-type.js';

/** Blank-separated values of a kind; by default any number of them, also none. */
export function listOf<T>(
  item: ValueType<T>,
  count: { readonly exactly?: number; readonly atLeast?: number; readonly atMost?: number } = {},
): ValueType<readonly T[]> {
  const { exactly, atLeast = 0, atMost = Number.POSITIVE_INFINITY } = count;
  const least = exactly ?? atLeast;
  const most = exactly ?? atMost;
  const number = exactly === undefined ? '' : `${exactly} `;
  return {
    expects: `${number}blank-separated values, each ${item.expects}`,
    read(text) {
      const tokens = splitTokens(text);
      if (tokens.length < least || tokens.length > most) return undefined;
      return readAll(tokens, item);
    },
    write: (values) => values.map(item.write).join(' '),
  };
}

/** All tokens as values; undefined when one of them is none. */
export function readAll<T>(tokens: readonly string[], item: ValueType<T>): readonly T[] | undefined {
  const values: T[] = [];
  for (const token of tokens) {
    const value = item.read(token);
    if (value === undefined) return undefined;
    values.push(value);
  }
  return values;
}

/** A kind of value in another form; `from` may refuse what the first kind allows. */
export function converted<T, U>(
  type: ValueType<T>,
  from: (value: T) => U | undefined,
  to: (value: U) => T,
  expects: string = type.expects,
): ValueType<U> {
  return {
    expects,
    read(text) {
      const value = type.read(text);
      return value === undefined ? undefined : from(value);
    },
    write: (value) => type.write(to(value)),
  };
}

/** The kind with only some of its values. */
export function only<T>(type: ValueType<T>, holds: (value: T) => boolean, expects: string): ValueType<T> {
  return converted(
    type,
    (value) => (holds(value) ? value : undefined),
    (value) => value,
    expects,
  );
}

/** Text that a pattern describes, white space collapsed first. */
export function matching(pattern: RegExp, expects: string): ValueType<string> {
  return {
    expects,
    read(text) {
      const value = collapse(text);
      return pattern.test(value) ? value : undefined;
    },
    write: (value) => value,
  };
}
