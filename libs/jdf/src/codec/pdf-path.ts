import { longText } from './texts.js';
import type { ValueType } from './value-type.js';

const COUNTS = { m: 2, l: 2, c: 6, v: 4, y: 4, re: 4, h: 0 } as const;

/** A drawing operator of PDF with its numbers: move, line, three curves, rectangle, close. */
export interface PathStep {
  readonly operator: keyof typeof COUNTS;
  readonly operands: readonly number[];
}

// No exponents and no points at the ends, one white space character between words.
const OPERAND = /^[+-]?\d+(\.\d+)?$/;

/** A path of PDF operators, at least one: `0 0 m 10 0 l h`. */
export const pdfPath: ValueType<readonly PathStep[]> = {
  expects: 'a PDF path such as 0 0 m 10 0 l h, one blank between words',
  read(text) {
    const steps: PathStep[] = [];
    let operands: number[] = [];
    for (const word of longText.read(text)?.split(/[ \t\r\n]/) ?? []) {
      if (OPERAND.test(word)) {
        operands.push(Number(word));
        continue;
      }
      if (!Object.hasOwn(COUNTS, word)) return undefined;
      const operator = word as PathStep['operator'];
      if (operands.length !== COUNTS[operator]) return undefined;
      steps.push({ operator, operands });
      operands = [];
    }
    return steps.length === 0 || operands.length > 0 ? undefined : steps;
  },
  write: (steps) =>
    steps.map(({ operator, operands }) => [...operands.map(plain), operator].join(' ')).join(' '),
};

/** PDF numbers have no exponent. */
function plain(value: number): string {
  const shown = String(value);
  return shown.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : shown;
}
