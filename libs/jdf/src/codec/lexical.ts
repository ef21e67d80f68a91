/** White space is these four characters only, and may be collapsed or replaced before a value is read. Source: XML Schema part 2, section 4.3.6. */
const WHITE = /[ \t\r\n]+/g;
const OTHER_WHITE = /[\t\r\n]/;
const NOT_COLLAPSED = /^ | $| {2}|[\t\r\n]/;

/** Runs of white space as one blank, none at the ends. */
export function collapse(text: string): string {
  // Most values are written so.
  return NOT_COLLAPSED.test(text) ? text.replace(WHITE, ' ').replace(/^ | $/g, '') : text;
}

/** Each white space character as a blank. */
export function withBlanks(text: string): string {
  return text.replace(/[\t\r\n]/g, ' ');
}

/** Tokens of a blank-separated list. */
export function splitTokens(text: string): string[] {
  const tokens = text.split(' ');
  // Most lists are written with single blanks.
  return tokens.includes('') || OTHER_WHITE.test(text)
    ? text.split(WHITE).filter((token) => token !== '')
    : tokens;
}

/** Characters as people and the schema count them: one for each code point, however it is stored. */
export function characterCount(text: string): number {
  let count = text.length;
  for (let i = 1; i < text.length; i++) {
    if (isLow(text.charCodeAt(i)) && isHigh(text.charCodeAt(i - 1))) count--;
  }
  return count;
}

const isHigh = (unit: number): boolean => unit >= 0xd800 && unit <= 0xdbff;
const isLow = (unit: number): boolean => unit >= 0xdc00 && unit <= 0xdfff;

// Source: XML 1.0 second edition (to which XML Schema refers), appendix B: its tables follow from Unicode's categories.
const NAME_START = String.raw`\p{Lu}\p{Ll}\p{Lt}\p{Lo}\p{Nl}_`;
const NAME_CHARACTER = String.raw`${NAME_START}\p{Mc}\p{Me}\p{Mn}\p{Lm}\p{Nd}.\-\u{B7}`;

const NAME = new RegExp(`^[${NAME_START}][${NAME_CHARACTER}]*$`, 'u');
const TOKEN = new RegExp(`^[:${NAME_CHARACTER}]+$`, 'u');

/** Whether it is a name without a colon, as IDs are (xs:NCName). */
export function isName(text: string): boolean {
  return NAME.test(text);
}

/** Whether it is made of name characters only (xs:NMTOKEN). */
export function isToken(text: string): boolean {
  return TOKEN.test(text);
}
