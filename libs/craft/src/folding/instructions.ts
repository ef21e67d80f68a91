import { roundTo } from '#libs/kernel';
import { foldedGrid, type GridFold, type MovingPart } from '../imposition/fold-pile.js';
import type { LeafletScheme } from '../imposition/leaflet.js';
import { oppositeRotation, turnedSize } from '../layouts/geometry.js';
import type { SectionBlock, SectionLayout } from '../layouts/place-section.js';
import type { Rotation } from '../plan.js';

/** A fold as the folder makes it: where the crease lies in the piece as it lies then, and how far from its leading edge. */
export interface FoldMove {
  axis: 'x' | 'y';
  positionMm: number;
  moves: MovingPart;
  direction: 'over' | 'under';
  /** Distance of the crease from the edge of the part that moves. */
  travelMm: number;
  /** Size of the piece across and along the feed (the crease lies across it). */
  pieceAcrossMm: number;
  pieceAlongMm: number;
}

/** One direction of a piece while it is folded: its extent and the remaining fold lines, in its own first coordinates. */
interface Extent {
  fromMm: number;
  toMm: number;
  lines: number[];
}

function foldExtent(extent: Extent, crease: number, moves: MovingPart, taken: number): Extent {
  const lowMoves = moves === 'left' || moves === 'lower';
  const travel = lowMoves ? crease - extent.fromMm : extent.toMm - crease;
  const rest = lowMoves ? extent.lines.slice(taken) : extent.lines.slice(0, extent.lines.length - taken);
  return lowMoves
    ? { fromMm: crease, toMm: Math.max(extent.toMm, crease + travel), lines: rest }
    : { fromMm: Math.min(extent.fromMm, crease - travel), toMm: crease, lines: rest };
}

/**
 * The folds of a section in its block, from the same fold list that placed its pages. Positions are those of contract
 * section 4: in the piece as it lies before that fold, its lower-left corner at the origin.
 */
export function foldMoves(layout: SectionLayout, block: SectionBlock): FoldMove[] {
  const { form, rotation } = layout;
  const back = oppositeRotation(rotation);
  const [widthMm, heightMm] = turnedSize(block.widthMm, block.heightMm, back);
  const { left, lower } = marginsUpright(layout, block, back);
  return movesThrough(
    form.scheme.folds,
    { fromMm: 0, toMm: widthMm, lines: form.columnLinesMm.map((at) => at + left) },
    { fromMm: 0, toMm: heightMm, lines: form.rowLinesMm.map((at) => at + lower) },
  );
}

/** The folds of an open leaflet that lies upright, its lower-left corner at the origin. */
export function leafletMoves({ columnsMm, rowsMm, folds }: LeafletScheme): FoldMove[] {
  return movesThrough(folds, panelExtent(columnsMm), panelExtent(rowsMm));
}

function panelExtent(panelsMm: readonly number[]): Extent {
  const ends = panelsMm.map((_, i) => panelsMm.slice(0, i + 1).reduce((sum, mm) => sum + mm, 0));
  return { fromMm: 0, toMm: ends.at(-1) ?? 0, lines: ends.slice(0, -1) };
}

function movesThrough(folds: readonly GridFold[], across0: Extent, along0: Extent): FoldMove[] {
  const [columns, rows] = [across0.lines.length + 1, along0.lines.length + 1];
  let [x, y] = [across0, along0];
  const moves: FoldMove[] = [];
  const done: GridFold[] = [];
  for (const fold of folds) {
    const across = fold.moves === 'left' || fold.moves === 'right';
    const extent = across ? x : y;
    const grid = foldedGrid(columns, rows, done);
    const lines = across ? grid.columns : grid.rows;
    const lowMoves = fold.moves === 'left' || fold.moves === 'lower';
    const crease = extent.lines[lowMoves ? fold.lines - 1 : lines - fold.lines - 1] ?? 0;
    const other = across ? y : x;
    moves.push({
      axis: across ? 'y' : 'x',
      positionMm: roundTo(crease - extent.fromMm, 4),
      moves: fold.moves,
      direction: fold.direction,
      travelMm: roundTo(lowMoves ? crease - extent.fromMm : extent.toMm - crease, 4),
      pieceAcrossMm: roundTo(other.toMm - other.fromMm, 4),
      pieceAlongMm: roundTo(extent.toMm - extent.fromMm, 4),
    });
    const next = foldExtent(extent, crease, fold.moves, fold.lines);
    if (across) x = next;
    else y = next;
    done.push(fold);
  }
  return moves;
}

/** Outer margins of the block at the left and the lower edge of the form, once the block is turned upright again. */
function marginsUpright(
  layout: SectionLayout,
  block: SectionBlock,
  back: Rotation,
): { left: number; lower: number } {
  const [width, height] = turnedSize(layout.form.widthMm, layout.form.heightMm, layout.rotation);
  const right = block.widthMm - block.contentXMm - width;
  const upper = block.heightMm - block.contentYMm - height;
  switch (back) {
    case 0:
      return { left: block.contentXMm, lower: block.contentYMm };
    case 90:
      return { left: upper, lower: block.contentXMm };
    case 180:
      return { left: right, lower: upper };
    case 270:
      return { left: block.contentYMm, lower: right };
  }
}
