import type { Findings, ValueType } from '../codec/index.js';
import { splitTokens } from '../codec/index.js';
import { attributeOf, pathOf, type XmlDocument, type XmlElement } from '../xml/index.js';

/** A value with the place it was read from, so that a later problem can name it. */
export interface Placed<T> {
  readonly value: T;
  readonly line: number | null;
  readonly path: string;
}

export function placed<T>(doc: XmlDocument, at: XmlElement, value: T): Placed<T> {
  return { value, line: at.line || null, path: pathOf(doc, at) };
}

/**
 * The value of a span: what was agreed (Actual), else what is preferred, else the first of what is acceptable (Range;
 * `words` is how many blank-separated words make one value). Undefined where nothing is said or it cannot be read; the
 * latter is a finding.
 */
export function readSpan<T>(
  span: XmlElement,
  type: ValueType<T>,
  findings: Findings,
  words = 1,
): T | undefined {
  for (const name of ['Actual', 'Preferred', 'Range']) {
    const stated = attributeOf(span, name);
    if (stated === undefined) continue;
    const value = type.read(name === 'Range' ? firstOfRange(stated, words) : stated);
    if (value === undefined) findings.wrong(span, name, stated, type.expects);
    return value;
  }
  return undefined;
}

function firstOfRange(range: string, words: number): string {
  return splitTokens(range.split('~')[0]!).slice(0, words).join(' ');
}
