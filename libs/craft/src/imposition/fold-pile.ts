/**
 * Folding by doing it: a grid of piles, each a stack of leaf cells. A fold mirrors the part that moves, reverses its
 * piles and turns its leaves over. Nothing about any scheme is looked up; a scheme is only its grid and its folds.
 */

/** The part of the piece that is laid over the rest. */
export type MovingPart = 'left' | 'right' | 'lower' | 'upper';

export interface GridFold {
  moves: MovingPart;
  /** Columns (left, right) or rows (lower, upper) of the present piece that move. */
  lines: number;
  direction: 'over' | 'under';
}

/** A leaf cell of the unfolded sheet as it lies in the folded pile. */
export interface FoldedLeaf {
  /** Column from the left, row from the bottom, of the side that faced up before folding. */
  column: number;
  row: number;
  /** The side that faced up before folding faces up again. */
  faceUp: boolean;
  /** Mirrored left to right, and bottom to top, against its first lie. */
  mirroredX: boolean;
  mirroredY: boolean;
}

/** Bottom leaf first. */
export type Pile = FoldedLeaf[];

/** Edge of the folded pile along which the last fold runs. */
export type CreaseEdge = 'left' | 'right' | 'lower' | 'upper';

export interface FoldedPile {
  leaves: Pile;
  crease: CreaseEdge | null;
}

/** `piles[row][column]`, row 0 at the bottom. */
type Piece = Pile[][];

function unfolded(columns: number, rows: number): Piece {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => [
      { column, row, faceUp: true, mirroredX: false, mirroredY: false },
    ]),
  );
}

function turnedOver(pile: Pile, alongX: boolean): Pile {
  return pile.toReversed().map((leaf) => ({
    ...leaf,
    faceUp: !leaf.faceUp,
    mirroredX: alongX ? !leaf.mirroredX : leaf.mirroredX,
    mirroredY: alongX ? leaf.mirroredY : !leaf.mirroredY,
  }));
}

function transposed(piece: Piece): Piece {
  return (piece[0] ?? []).map((_, column) => piece.map((row) => row[column] ?? []));
}

/** Folds the `lines` leftmost columns over or under the rest; the crease becomes the left edge. */
function foldLeft(piece: Piece, lines: number, over: boolean, alongX: boolean): Piece {
  return piece.map((row) => {
    const moving = row
      .slice(0, lines)
      .toReversed()
      .map((pile) => turnedOver(pile, alongX));
    const rest = row.slice(lines);
    const width = Math.max(moving.length, rest.length);
    return Array.from({ length: width }, (_, i) => {
      const moved = moving[i] ?? [];
      const still = rest[i] ?? [];
      return over ? [...still, ...moved] : [...moved, ...still];
    });
  });
}

function mirroredColumns(piece: Piece): Piece {
  return piece.map((row) => row.toReversed());
}

function foldOnce(piece: Piece, fold: GridFold): Piece {
  const over = fold.direction === 'over';
  switch (fold.moves) {
    case 'left':
      return foldLeft(piece, fold.lines, over, true);
    case 'right':
      return mirroredColumns(foldLeft(mirroredColumns(piece), fold.lines, over, true));
    case 'lower':
      return transposed(foldLeft(transposed(piece), fold.lines, over, false));
    case 'upper':
      return transposed(
        mirroredColumns(foldLeft(mirroredColumns(transposed(piece)), fold.lines, over, false)),
      );
  }
}

/** Columns and rows of the piece that a list of folds leaves. */
export function foldedGrid(
  columns: number,
  rows: number,
  folds: readonly GridFold[],
): { columns: number; rows: number } {
  let size = { columns, rows };
  for (const fold of folds) {
    const across = fold.moves === 'left' || fold.moves === 'right';
    const lines = across ? size.columns : size.rows;
    const left = Math.max(fold.lines, lines - fold.lines);
    size = across ? { ...size, columns: left } : { ...size, rows: left };
  }
  return size;
}

/**
 * Folds a sheet of `columns` × `rows` leaf cells. Null when the list does not bring the sheet down to one cell, or a
 * fold has nothing to move or nothing to lie on.
 */
export function foldSheet(columns: number, rows: number, folds: readonly GridFold[]): FoldedPile | null {
  let piece = unfolded(columns, rows);
  let crease: CreaseEdge | null = null;
  for (const fold of folds) {
    const lines = fold.moves === 'left' || fold.moves === 'right' ? (piece[0]?.length ?? 0) : piece.length;
    if (fold.lines < 1 || fold.lines >= lines) return null;
    piece = foldOnce(piece, fold);
    crease = fold.moves;
  }
  const pile = piece.length === 1 && piece[0]?.length === 1 ? piece[0][0] : undefined;
  return pile === undefined ? null : { leaves: pile, crease };
}
