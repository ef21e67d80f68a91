import type { LeafletScheme } from '../imposition/leaflet.js';
import { pagesByFolding } from '../imposition/number-pages.js';
import type { Rotation } from '../plan.js';
import type { Edge, Rect } from './geometry.js';

/** A page place of a piece that lies upright with its front up. */
export interface Panel extends Rect {
  /** Page on the front of the panel and on its back; null where nothing is printed. */
  front: number;
  back: number | null;
  /** Head of the front page; the head of the back page points the same way. */
  rotation: Rotation;
}

/**
 * A piece that is cut out of the sheet on all four sides: a poster, a card, an open leaflet, an open cover. Upright,
 * front up, origin at the lower-left corner of the piece as it is cut.
 */
export interface PieceForm {
  widthMm: number;
  heightMm: number;
  panels: readonly Panel[];
  /** Paper between each cut edge and the trimmed pages; 0 where the cut is the trim. */
  trimMm: Readonly<Record<Edge, number>>;
  /** Axis along which the fibres should lie because the piece is folded along it; null where it does not matter. */
  grain: 'x' | 'y' | null;
}

const noTrim: PieceForm['trimMm'] = { left: 0, right: 0, lower: 0, upper: 0 };

/** A flat piece of one page, or of two that lie back to back. */
export function flatForm(widthMm: number, heightMm: number, pages: number): PieceForm {
  const panel: Panel = {
    xMm: 0,
    yMm: 0,
    widthMm,
    heightMm,
    front: 1,
    back: pages > 1 ? 2 : null,
    rotation: 0,
  };
  return { widthMm, heightMm, panels: [panel], trimMm: noTrim, grain: null };
}

/** An open leaflet with its front up; null where its folds do not close it to one panel. */
export function leafletForm(scheme: LeafletScheme): PieceForm | null {
  const { columnsMm, rowsMm, folds, countFrom, heads } = scheme;
  const places = pagesByFolding(columnsMm.length, rowsMm.length, folds, countFrom, heads);
  if (places === null) return null;
  const before = (sizes: readonly number[], n: number): number =>
    sizes.slice(0, n).reduce((sum, size) => sum + size, 0);
  const panels = places
    .filter(({ side }) => side === 'front')
    .map(({ column, row, page, rotation }): Panel => {
      const back = places.find((p) => p.side === 'back' && p.column === column && p.row === row);
      return {
        xMm: before(columnsMm, column),
        yMm: before(rowsMm, row),
        widthMm: columnsMm[column] ?? 0,
        heightMm: rowsMm[row] ?? 0,
        front: page,
        back: back?.page ?? null,
        rotation,
      };
    });
  const last = folds.at(-1)?.moves;
  return {
    widthMm: before(columnsMm, columnsMm.length),
    heightMm: before(rowsMm, rowsMm.length),
    panels,
    trimMm: noTrim,
    grain: last === 'left' || last === 'right' ? 'y' : 'x',
  };
}

export interface CoverSize {
  /** Closed, trimmed size of the book. */
  trimWidthMm: number;
  trimHeightMm: number;
  /** 0 where the cover is folded over nothing but its own sections. */
  spineMm: number;
  trimMm: { headMm: number; footMm: number; faceMm: number };
}

/** An open cover with its outside up: pages 4 and 1 outside, 2 and 3 inside, the spine between them. */
export function coverForm({ trimWidthMm, trimHeightMm, spineMm, trimMm }: CoverSize): PieceForm {
  const { headMm, footMm, faceMm } = trimMm;
  const panel = (xMm: number, front: number, back: number): Panel => ({
    xMm,
    yMm: footMm,
    widthMm: trimWidthMm,
    heightMm: trimHeightMm,
    front,
    back,
    rotation: 0,
  });
  return {
    widthMm: 2 * faceMm + 2 * trimWidthMm + spineMm,
    heightMm: footMm + trimHeightMm + headMm,
    panels: [panel(faceMm, 4, 3), panel(faceMm + trimWidthMm + spineMm, 1, 2)],
    trimMm: { left: faceMm, right: faceMm, lower: footMm, upper: headMm },
    grain: 'y',
  };
}
