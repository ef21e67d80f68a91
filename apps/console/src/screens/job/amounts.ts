import type { Consumption } from '../../server/shapes.js';
import { words } from '../../words/index.js';

/** Whole pieces as they are, kilograms to the gram. */
export function amountWords(amount: number, unit: string): string {
  const digits = unit === 'kg' ? 3 : 0;
  return `${amount.toLocaleString(words.locale, { maximumFractionDigits: digits })} ${unit}`;
}

/** Used less planned, with its sign; a dash while nothing is used, for then there is nothing to compare. */
export function differenceWords(row: Pick<Consumption, 'planned' | 'actual' | 'unit'>): string {
  if (row.actual === 0) return '–';
  const more = row.actual - row.planned;
  return `${more > 0 ? '+' : more < 0 ? '−' : '±'}${amountWords(Math.abs(more), row.unit)}`;
}
