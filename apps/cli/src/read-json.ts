import { done, error, type Result, refuse } from '#libs/kernel';

/**
 * Reads JSON text (RFC 8259). Refusals: NOT_TEXT; JSON_NOT_WELL_FORMED with the line where it stops to be JSON and the
 * JSON Pointer (RFC 6901) of the innermost object or list that is open there.
 */
export function readJson(bytes: Uint8Array): Result<unknown> {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse(error('NOT_TEXT', 'The file is not UTF-8 text.', { path: '' }));
  }
  try {
    return done(JSON.parse(text));
  } catch (cause) {
    const { at, path } = placeOfFault(text);
    const what = cause instanceof Error ? cause.message : 'unknown cause';
    const line = text.slice(0, at).split('\n').length;
    return refuse(error('JSON_NOT_WELL_FORMED', `The JSON can't be read: ${what}.`, { line, path }));
  }
}

interface Open {
  readonly list: boolean;
  /** Of the member or element that is being read. */
  key: string | number;
}

/** One string, number, word or mark, sticky; what is not one of these is the fault. */
const TOKEN =
  /[ \t\r\n]*(?:("(?:[^"\\\p{Cc}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\d.])|true|false|null)|([{}[\],:]))/uy;

/** What may come next. */
type Expected = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd';

/** The engine tells where a fault is only sometimes, and never in what; this walks to the same place. */
function placeOfFault(text: string): { at: number; path: string } {
  const stack: Open[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    TOKEN.lastIndex = at;
    const token: RegExpExecArray | null = TOKEN.exec(text);
    const next: Expected | null =
      token === null ? null : step(stack, expected, token[1] ?? null, token[3] ?? null);
    if (token === null || next === null) break;
    expected = next;
    at = TOKEN.lastIndex;
  }
  const blank = /[ \t\r\n]*/y;
  blank.lastIndex = at;
  blank.exec(text);
  return { at: blank.lastIndex, path: stack.slice(0, -1).map(pointer).join('') };
}

const pointer = ({ key }: Open): string => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`;

/** Takes one token; null when it may not stand there. A string or value that ends leaves its holder to go on. */
function step(stack: Open[], expected: Expected, text: string | null, mark: string | null): Expected | null {
  const top = stack.at(-1);
  const takesValue = expected === 'value' || expected === 'valueOrEnd';
  if (mark === '{' || mark === '[') {
    if (!takesValue) return null;
    stack.push({ list: mark === '[', key: mark === '[' ? 0 : '' });
    return mark === '[' ? 'valueOrEnd' : 'keyOrEnd';
  }
  if (mark === '}' || mark === ']') {
    const ends = expected === 'commaOrEnd' || expected === (mark === ']' ? 'valueOrEnd' : 'keyOrEnd');
    if (!ends || top === undefined || top.list !== (mark === ']')) return null;
    stack.pop();
    return 'commaOrEnd';
  }
  if (mark === ',') {
    if (expected !== 'commaOrEnd' || top === undefined) return null;
    if (!top.list) return 'key';
    top.key = Number(top.key) + 1;
    return 'value';
  }
  if (mark === ':') return expected === 'colon' ? 'value' : null;
  if (expected === 'key' || expected === 'keyOrEnd') {
    if (text === null || top === undefined) return null;
    top.key = JSON.parse(text) as string;
    return 'colon';
  }
  return takesValue ? 'commaOrEnd' : null;
}
