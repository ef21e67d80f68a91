import type { GridFold } from './fold-pile.js';
import type { CountFrom } from './number-pages.js';

/**
 * How sure a row is. `proven`: a page list of the standard's samples comes out of it; `grid`: a sample confirms the
 * grid, the folds are the plain halvings; `memory`: from memory, check against the published figure before use.
 */
export type Confidence = 'proven' | 'grid' | 'memory';

export interface FoldScheme {
  /** Code of the open standard, `F<pages>-<scheme>`. */
  code: string;
  columns: number;
  rows: number;
  folds: readonly GridFold[];
  countFrom: CountFrom;
  confidence: Confidence;
}

const left = (lines: number, direction: GridFold['direction']): GridFold => ({
  moves: 'left',
  lines,
  direction,
});
const lower = (lines: number, direction: GridFold['direction']): GridFold => ({
  moves: 'lower',
  lines,
  direction,
});

/**
 * Fold catalogue as data. The codes and grids are the open standard's (its samples strippingComplexExample,
 * StrippingF16-6 and the layout preparation figures); the standard publishes the fold sequences only as pictures, so
 * the directions here are the ones from which its page lists follow.
 */
export const foldCatalogue: readonly FoldScheme[] = [
  { code: 'F4-1', columns: 2, rows: 1, folds: [left(1, 'under')], countFrom: 'top', confidence: 'grid' },
  {
    code: 'F8-7',
    columns: 2,
    rows: 2,
    folds: [lower(1, 'under'), left(1, 'over')],
    countFrom: 'bottom',
    confidence: 'proven',
  },
  {
    code: 'F16-6',
    columns: 4,
    rows: 2,
    folds: [left(2, 'under'), lower(1, 'over'), left(1, 'under')],
    countFrom: 'bottom',
    confidence: 'proven',
  },
  {
    code: 'F32-X',
    columns: 4,
    rows: 4,
    folds: [left(2, 'under'), lower(2, 'over'), left(1, 'under'), lower(1, 'over')],
    countFrom: 'bottom',
    confidence: 'memory',
  },
];

export function foldScheme(code: string): FoldScheme | null {
  return foldCatalogue.find((scheme) => scheme.code === code) ?? null;
}

/** Scheme of a folded section of so many pages; null where none is known. */
export function sectionScheme(pages: number): FoldScheme | null {
  const codeByPages: Record<number, string> = { 4: 'F4-1', 8: 'F8-7', 16: 'F16-6', 32: 'F32-X' };
  const code = codeByPages[pages];
  return code === undefined ? null : foldScheme(code);
}
