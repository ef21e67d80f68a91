import type { Rotation, Side } from '../plan.js';
import { type FoldedPile, foldSheet, type GridFold } from './fold-pile.js';

/** One page place of the unfolded sheet, seen from the side that it is on. */
export interface PagePlace {
  /** Page within the signature, from 1. */
  page: number;
  side: Side;
  /** Column and row of the cell as the FRONT lies; the back page lies behind its front page. */
  column: number;
  row: number;
  /** Head of the page, counter-clockwise from up, on its own side (the back seen after a sideways turn). */
  rotation: Rotation;
}

/** From which end of the folded pile the pages are counted. */
export type CountFrom = 'top' | 'bottom';

/**
 * Where heads point: as a book is read, with the last crease on the left, or up as the folded piece lies, wherever its
 * last crease is.
 */
export type Heads = 'spineLeft' | 'upright';

type Direction = readonly [x: number, y: number];

const headings: readonly [Rotation, Direction][] = [
  [0, [0, 1]],
  [90, [-1, 0]],
  [180, [0, -1]],
  [270, [1, 0]],
];

function rotationOf([x, y]: Direction): Rotation {
  const found = headings.find(([, [hx, hy]]) => hx === x && hy === y);
  return found ? found[0] : 0;
}

/**
 * Where heads point in the folded pile when it is read with its spine on the left: seen from the top the crease edge
 * turns to the left, seen from below the pile is turned over about its spine and heads point the other way.
 */
function headInPile(pile: FoldedPile, from: CountFrom): Direction {
  const fromTop: Record<NonNullable<FoldedPile['crease']>, Direction> = {
    left: [0, 1],
    right: [0, -1],
    lower: [-1, 0],
    upper: [1, 0],
  };
  const [x, y] = pile.crease === null ? ([0, 1] as const) : fromTop[pile.crease];
  return from === 'top' ? [x, y] : [-x, -y];
}

const flip = (value: number, mirrored: boolean): number => (mirrored && value !== 0 ? -value : value);

/**
 * Numbers the leaves of a folded pile from the outside and maps every page back to its cell: leaf i carries pages
 * 2i − 1 and 2i. Source of the procedure: the fold model of the open ticket standard (origin at the lower-left of the
 * folded piece), confirmed by the page lists of its stripping sample.
 */
export function numberPages(pile: FoldedPile, from: CountFrom, heads: Heads = 'spineLeft'): PagePlace[] {
  const [headX, headY] = heads === 'upright' ? ([0, 1] as const) : headInPile(pile, from);
  const leaves = from === 'top' ? pile.leaves.toReversed() : pile.leaves;
  return leaves.flatMap((leaf, i) => {
    const head: Direction = [flip(headX, leaf.mirroredX), flip(headY, leaf.mirroredY)];
    const outerIsFront = leaf.faceUp === (from === 'top');
    const place = (page: number, side: Side): PagePlace => ({
      page,
      side,
      column: leaf.column,
      row: leaf.row,
      rotation: rotationOf(side === 'front' ? head : [flip(head[0], true), head[1]]),
    });
    return outerIsFront
      ? [place(2 * i + 1, 'front'), place(2 * i + 2, 'back')]
      : [place(2 * i + 1, 'back'), place(2 * i + 2, 'front')];
  });
}

/** Folds a grid and numbers it in one go; null when the folds do not bring the sheet down to one cell. */
export function pagesByFolding(
  columns: number,
  rows: number,
  folds: readonly GridFold[],
  from: CountFrom,
  heads: Heads = 'spineLeft',
): PagePlace[] | null {
  const pile = foldSheet(columns, rows, folds);
  return pile === null ? null : numberPages(pile, from, heads);
}
