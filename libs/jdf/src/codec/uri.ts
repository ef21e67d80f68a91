import { characterCount, collapse } from './lexical.js';
import type { ValueType } from './value-type.js';

// Characters that no URI may have are escaped by whoever follows it, so they count as ordinary ones here (XML Schema
// part 2, section 3.2.17). What is left of RFC 3986's grammar is where the delimiters may stand.
const ORDINARY = String.raw`[^%:/?#[\]@]|%[0-9a-fA-F]{2}`;
const SEGMENT = `(?:${ORDINARY}|[:@])`;
const AUTHORITY = `(?:(?:${ORDINARY}|:)*@)?(?:\\[[^\\]]*\\]|(?:${ORDINARY})*)(?::\\d*)?`;
const REST = `(?:\\?(?:${SEGMENT}|[/?])*)?(?:#(?:${SEGMENT}|[/?[\\]])*)?$`;
const PATH = `(?:/${SEGMENT}*)*`;

const ABSOLUTE = new RegExp(
  `^[a-zA-Z][a-zA-Z0-9+.-]*:(?://${AUTHORITY}${PATH}|(?:/?${SEGMENT}+${PATH}|/?))${REST}`,
);
const RELATIVE = new RegExp(
  `^(?://${AUTHORITY}${PATH}|(?:/(?:${SEGMENT}+${PATH})?|(?:${ORDINARY}|@)+${PATH})?)${REST}`,
);

function uriOf(least: number, most: number): ValueType<string> {
  return {
    expects:
      'a URL such as cid:page1@example.test or pages/1.pdf, with every % before two hexadecimal digits',
    read(value) {
      const read = collapse(value);
      const count = characterCount(read);
      if (count < least || count > most) return undefined;
      return ABSOLUTE.test(read) || RELATIVE.test(read) ? read : undefined;
    },
    write: (value) => value,
  };
}

/** The standard's URL and URI: 1 to 4095 characters, absolute or relative, any characters of Unicode unescaped. */
export const url = uriOf(1, 4095);
/** XJDF's. */
export const anyUrl = uriOf(0, Number.POSITIVE_INFINITY);
