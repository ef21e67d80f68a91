import { splitTokens } from '../codec/index.js';
import type { AttributeShape } from './facts.js';

/**
 * A value of one generation as the other writes it. `exact` is false where characters had to be exchanged, so that the
 * original is worth keeping elsewhere.
 */
export interface Fitted {
  readonly value: string;
  readonly exact: boolean;
}

const TOKEN = /^[\p{L}\p{N}\p{M}._:\u00b7-]+$/u;

/** The text as an NMTOKEN: whatever no token may hold becomes an underscore. */
export function asToken(text: string): string {
  const token = text.trim().replace(/[^\p{L}\p{N}\p{M}._:\u00b7-]/gu, '_');
  return token === '' ? '_' : token;
}

/** The value as an attribute of the other generation has it; undefined where that attribute cannot say it. */
export function valueFor(value: string, to: AttributeShape, from = ''): Fitted | undefined {
  const fitted = rewritten(value, to.type, from);
  return fitted !== undefined && to.allows(fitted.value) ? fitted : undefined;
}

/** By kind of value: tokens, truth values, whole numbers, lists and ranges of them; anything else as it stands. */
function rewritten(value: string, to: string, from: string): Fitted | undefined {
  const words = splitTokens(value);
  const text = words.join(' ');
  switch (to) {
    case 'tok':
      return from === 'names' && value.includes('~') ? undefined : token(value);
    case 'toks':
      return { value: words.map(asToken).join(' '), exact: words.every((word) => TOKEN.test(word)) };
    case 'bool':
      return { value: text === '1' ? 'true' : text === '0' ? 'false' : text, exact: true };
    case 'int':
      return { value: wholeNumber(text), exact: true };
    case 'range':
      return range(text, from);
    case 'ints':
      return integers(text);
    case 'ranges':
      return { value: from === 'range' ? tilde(words) : text, exact: true };
    case 'text':
      return { value, exact: true };
    default:
      return { value: text, exact: true };
  }
}

function token(value: string): Fitted | undefined {
  const text = value.trim();
  if (text === '') return undefined;
  return TOKEN.test(text) ? { value: text, exact: true } : { value: asToken(text), exact: false };
}

/** Amounts are doubles in the older generation: a whole one may be written with a point. */
function wholeNumber(text: string): string {
  const number = /^[-+]?\d+\.0*$/.test(text) ? Number(text) : Number.NaN;
  return Number.isInteger(number) ? String(number) : text;
}

function tilde([from, to]: readonly string[]): string {
  return from === to ? String(from) : `${from} ~ ${to}`;
}

/** One range of whole numbers: `a ~ b` in the older generation, two numbers in the newer. */
function range(text: string, kind: string): Fitted | undefined {
  const [, from, to] = /^([-+]?\d+)(?:\s*~\s*([-+]?\d+))?$/.exec(text) ?? [];
  if (from !== undefined) return { value: `${from} ${to ?? from}`, exact: true };
  // Two numbers of a list of ranges are not from one to the other.
  const isRange = kind !== 'ranges' && /^[-+]?\d+ [-+]?\d+$/.test(text);
  return isRange ? { value: text, exact: true } : undefined;
}

const WHOLE = /^[-+]?\d+$/;
const MOST_NUMBERS = 1000;

/** Ranges written out, as long as they are not long. */
function integers(text: string): Fitted | undefined {
  const all: number[] = [];
  for (const [, from, to] of text.matchAll(/(\S+?)(?:\s*~\s*(\S+))?(?=\s|$)/g)) {
    if (!WHOLE.test(from!) || !WHOLE.test(to ?? from!)) return undefined;
    const [a, b] = [Number(from), Number(to ?? from)];
    if (b < a || (a < 0 && b >= 0 && to !== undefined) || all.length + b - a > MOST_NUMBERS) return undefined;
    for (let n = a; n <= b; n++) all.push(n);
  }
  return all.length === 0 ? undefined : { value: all.join(' '), exact: true };
}
