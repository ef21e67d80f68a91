import { roundTo } from '#libs/kernel';
import type { FoldStep } from '../order.js';
import type { GridFold } from './fold-pile.js';
import type { CountFrom, Heads } from './number-pages.js';

/** A leaflet before it is folded: its panels from the left and from below, and the folds that close it. */
export interface LeafletScheme {
  /** Code of the catalogue; `F<pages>-X` (any scheme of that page count) for a list of folds. */
  code: string;
  columnsMm: number[];
  rowsMm: number[];
  folds: GridFold[];
  countFrom: CountFrom;
  heads: Heads;
}

/** How much shorter a panel is that is folded in between others, so that it does not buckle (common practice, 1 to 2 mm). */
export const INNER_SHORTER_MM = 1.5;

interface CatalogueLeaflet {
  folds: (widthMm: number, heightMm: number) => FoldStep[];
  countFrom: CountFrom;
}

const left = (to: FoldStep['to'], travelMm: number): FoldStep => ({ from: 'Left', to, travelMm });
const front = (to: FoldStep['to'], travelMm: number): FoldStep => ({ from: 'Front', to, travelMm });

/**
 * The codes of the open standard that are planned, by the folds of a leaflet of a closed size. F8-7 and F16-6 are proven
 * by page lists of its samples; of F4-1, F6-2 and F8-1 samples confirm the grid, of F6-1 the name (a wrap fold); the
 * standard publishes the folds themselves as pictures only. All other codes are asked for as a list of folds.
 */
const catalogue: Readonly<Record<string, CatalogueLeaflet>> = {
  'F4-1': { folds: (w) => [left('Down', w)], countFrom: 'top' },
  'F6-1': { folds: (w) => [left('Up', w - INNER_SHORTER_MM), left('Up', w)], countFrom: 'top' },
  'F6-2': { folds: (w) => [left('Down', w - INNER_SHORTER_MM), left('Down', w)], countFrom: 'bottom' },
  'F8-1': { folds: (w) => [left('Up', 2 * w), left('Up', w)], countFrom: 'top' },
  'F8-7': { folds: (w, h) => [front('Down', h), left('Up', w)], countFrom: 'bottom' },
  'F16-6': { folds: (w, h) => [left('Down', 2 * w), front('Up', h), left('Down', w)], countFrom: 'bottom' },
};

export const leafletCodes: readonly string[] = Object.keys(catalogue);

/** The scheme of a code for a closed size, mm; null for a code that is not planned. */
export function leafletByCode(code: string, widthMm: number, heightMm: number): LeafletScheme | null {
  const entry = catalogue[code];
  if (entry === undefined) return null;
  const scheme = leafletByFolds(entry.folds(widthMm, heightMm), widthMm, heightMm);
  return scheme === null ? null : { ...scheme, code, countFrom: entry.countFrom, heads: 'spineLeft' };
}

/**
 * The scheme of a list of folds: unfolding the closed piece from the last fold to the first gives the flat size and every
 * crease. The closed piece lies upright as the folds are given; page 1 is on top of it. Null where a fold lays more over
 * than there is to lie on.
 */
export function leafletByFolds(
  steps: readonly FoldStep[],
  widthMm: number,
  heightMm: number,
): LeafletScheme | null {
  const x = unfolded(stepsFrom(steps, 'Left'), widthMm);
  const y = unfolded(stepsFrom(steps, 'Front'), heightMm);
  if (x === null || y === null) return null;
  const [columnsMm, rowsMm] = [panels(x), panels(y)];
  const present = { Left: x, Front: y };
  const folds = steps.map((step): GridFold => {
    const axis = present[step.from];
    const taken = axis.creasesMm.filter((at) => at < step.travelMm + NEAR_MM).length;
    present[step.from] = folded(axis, step.travelMm);
    return {
      moves: step.from === 'Left' ? 'left' : 'lower',
      lines: taken,
      direction: step.to === 'Up' ? 'over' : 'under',
    };
  });
  const code = `F${2 * columnsMm.length * rowsMm.length}-X`;
  return { code, columnsMm, rowsMm, folds, countFrom: 'top', heads: 'upright' };
}

/** Creases nearer than this to one another or to an edge are one (mm): lengths are given to a tenth. */
const NEAR_MM = 0.05;

/** One direction of a piece: how long it is, and where it will be creased, in ascending order. */
interface Axis {
  lengthMm: number;
  creasesMm: number[];
}

const stepsFrom = (steps: readonly FoldStep[], from: FoldStep['from']): number[] =>
  steps.filter((step) => step.from === from).map((step) => step.travelMm);

/** Unfolds one direction: each crease goes through all that lay under it, so it is there on both sides of the fold. */
function unfolded(travelsMm: readonly number[], closedMm: number): Axis | null {
  let axis: Axis = { lengthMm: closedMm, creasesMm: [] };
  for (const travel of travelsMm.toReversed()) {
    if (!(travel > 0) || travel > axis.lengthMm + NEAR_MM) return null;
    const mirrored = axis.creasesMm.map((at) => travel - at).filter((at) => at > NEAR_MM);
    const still = axis.creasesMm.map((at) => travel + at);
    axis = {
      lengthMm: axis.lengthMm + travel,
      creasesMm: [...mirrored, travel, ...still].toSorted((a, b) => a - b),
    };
  }
  return axis;
}

/** What is left of a direction once the part up to `travelMm` lies on the rest. */
function folded(axis: Axis, travelMm: number): Axis {
  return {
    lengthMm: axis.lengthMm - travelMm,
    creasesMm: axis.creasesMm.filter((at) => at > travelMm + NEAR_MM).map((at) => at - travelMm),
  };
}

function panels({ lengthMm, creasesMm }: Axis): number[] {
  const edges = [0, ...creasesMm, lengthMm];
  return edges.slice(1).map((edge, i) => roundTo(edge - (edges[i] ?? 0), 4));
}
