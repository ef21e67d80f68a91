import { listOf } from './combine.js';
import { characterCount, collapse, isName, isToken, splitTokens, withBlanks } from './lexical.js';
import type { ValueType } from './value-type.js';

/** Any text, as it stands. */
export const text: ValueType<string> = { expects: 'text', read: (value) => value, write: (value) => value };

/** Text of so many characters, with `space` done to its white space first. */
function sized(
  least: number,
  most: number,
  space: (value: string) => string = (value) => value,
): ValueType<string> {
  const length = least === 0 ? `at most ${most}` : `${least} to ${most}`;
  return {
    expects: `text of ${length} characters`,
    read(value) {
      const read = space(value);
      // Counting code points is only needed when the plain length is too long.
      const count = read.length > most ? characterCount(read) : read.length;
      return count >= least && count <= most ? read : undefined;
    },
    write: (value) => value,
  };
}

/** One line of text; tabs and line ends read as blanks. Limits in characters: the standard's string types. */
export const shortString = sized(0, 63, withBlanks);
export const longString = sized(0, 255, withBlanks);
export const string = sized(0, 1023, withBlanks);
export const regExp = sized(1, 20480, withBlanks);
export const xPath = sized(1, 20480, collapse);
/** Text of any number of lines. */
export const longText = sized(0, 20480);

/** A word of name characters, at most `most`; longer than the standard's 63 only in XJDF. */
function token(most: number): ValueType<string> {
  const limit = most === Number.POSITIVE_INFINITY ? '' : `, at most ${most} characters`;
  return {
    expects: `a word without blanks${limit}`,
    read(value) {
      const read = collapse(value);
      return isToken(read) && characterCount(read) <= most ? read : undefined;
    },
    write: (value) => value,
  };
}

export const nmtoken = token(63);
export const anyToken = token(Number.POSITIVE_INFINITY);

/** xs:NMTOKENS: at least one. */
export const anyTokens = listOf(anyToken, { atLeast: 1 });

export const upTo2048Tokens = listOf(anyToken, { atLeast: 1, atMost: 2048 });

/** The standard's NMTOKENS: also none, when it is quite empty. */
export const nmtokens: ValueType<readonly string[]> = {
  expects: 'at most 2048 words separated by blanks',
  read: (value) => (value === '' ? [] : upTo2048Tokens.read(value)),
  write: upTo2048Tokens.write,
};

/** Blank-separated words of any characters. */
export const tokens: ValueType<readonly string[]> = {
  expects: 'a list of names separated by blanks',
  read: splitTokens,
  write: (value) => value.join(' '),
};

function name(most: number): ValueType<string> {
  return {
    expects: 'a name: a letter or underscore, then letters, digits, points, hyphens or underscores',
    read(value) {
      const read = collapse(value);
      return isName(read) && characterCount(read) <= most ? read : undefined;
    },
    write: (value) => value,
  };
}

/** The standard's ID and IDREF: at most 63 characters. */
export const id = name(63);
/** xs:ID and xs:IDREF. */
export const anyId = name(Number.POSITIVE_INFINITY);
export const ids = listOf(anyId, { atLeast: 1 });

/** A name that may have a prefix. */
export interface PrefixedName {
  /** '' without one. */
  readonly prefix: string;
  readonly local: string;
}

export const prefixedName: ValueType<PrefixedName> = {
  expects: 'a name, with or without a prefix and a colon',
  read(value) {
    const parts = collapse(value).split(':');
    const [first = '', second] = parts;
    if (parts.length > 2 || !parts.every(isName)) return undefined;
    return second === undefined ? { prefix: '', local: first } : { prefix: first, local: second };
  },
  write: ({ prefix, local }) => (prefix === '' ? local : `${prefix}:${local}`),
};

const LANGUAGE = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;

/** A language tag, such as de or en-GB. */
export const language: ValueType<string> = {
  expects: 'a language tag such as en or de-AT',
  read(value) {
    const read = collapse(value);
    return LANGUAGE.test(read) ? read : undefined;
  },
  write: (value) => value,
};

export const languages = listOf(language);

/** Languages, or "all". */
export const languagesOrAll: ValueType<readonly string[]> = {
  expects: 'language tags separated by blanks, or all',
  // "all" has the form of a language tag, so that it needs no reading of its own.
  read: languages.read,
  write: languages.write,
};

/** Octets as pairs of hexadecimal digits; `least` and `most` count octets. */
function hex(least: number, most: number): ValueType<Uint8Array> {
  return {
    expects: 'pairs of hexadecimal digits',
    read(value) {
      const read = collapse(value);
      const count = read.length / 2;
      if (count < least || count > most || !/^([0-9a-fA-F]{2})*$/.test(read)) return undefined;
      return Uint8Array.from({ length: count }, (_, i) => Number.parseInt(read.slice(i * 2, i * 2 + 2), 16));
    },
    write: (value) =>
      Array.from(value, (octet) => octet.toString(16).padStart(2, '0').toUpperCase()).join(''),
  };
}

export const hexBinary = hex(2, 20480);
export const anyHexBinary = hex(0, Number.POSITIVE_INFINITY);
export const hexBinaries = listOf(hexBinary);
