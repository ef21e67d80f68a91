import type { Call } from './command.js';

/** What a terminal would obey instead of show: control characters but for line ends and tabs. */
const CONTROL = /[\p{Cc}\u2028\u2029]/gu;

/**
 * Text that only shows: names in tickets come from strangers, and a terminal obeys what is hidden in them (ECMA-48,
 * "Control functions for coded character sets": C0, DEL and C1).
 */
export function printable(text: string): string {
  return text.replace(CONTROL, (c) => (c === '\n' || c === '\t' ? c : '\ufffd'));
}

/** The one JSON document of a command that was called with `--json`. */
export function sayJson(call: Pick<Call, 'raw'>, value: unknown): void {
  call.raw(`${JSON.stringify(value, null, 2)}\n`);
}
