import { roundTo } from '#libs/kernel';
import type { PlanCell, Rotation, Side, Turn } from '../plan.js';
import { arrangeAxis } from './arrange.js';
import { onBack, type Rect, rotationOnBack, turnedSize } from './geometry.js';
import { outerMargins, type Printable } from './printable.js';

/** Copies of one flat piece in a grid on the sheet. */
export interface FlatLayout {
  area: Printable;
  rotation: Rotation;
  columns: number;
  rows: number;
  /** Between two trimmed pieces: twice the bleed, or none, then one cut parts both. */
  gapMm: number;
  bleedMm: number;
  /** Trimmed pieces row by row from the lower left. */
  pieces: Rect[];
}

export interface FlatWant {
  area: Printable;
  trimWidthMm: number;
  trimHeightMm: number;
  bleedMm: number;
  minBleedMm: number;
}

/** Most pieces in a direction: n pieces and n − 1 gaps between the outer margins (handbook, step and repeat). */
function most(lengthMm: number, pieceMm: number, gapMm: number): number {
  return Math.max(0, Math.floor((lengthMm + gapMm + 1e-9) / (pieceMm + gapMm)));
}

/** The fullest grid upright and the fullest grid turned by a quarter; empty where not even one piece fits. */
export function flatLayouts(want: FlatWant): FlatLayout[] {
  const { area, bleedMm } = want;
  const outer = outerMargins(area, bleedMm, want.minBleedMm);
  const gapMm = 2 * bleedMm;
  return ([0, 90] as const).flatMap((rotation) => {
    const [width, height] = turnedSize(want.trimWidthMm, want.trimHeightMm, rotation);
    const columns = most(area.sheetWidthMm - outer.left - outer.right, width, gapMm);
    const rows = most(area.sheetHeightMm - outer.lower - outer.upper, height, gapMm);
    if (columns === 0 || rows === 0) return [];
    const content = (n: number, size: number): number => n * size + (n - 1) * gapMm;
    const xs = arrangeAxis(
      oneBlock(area.sheetWidthMm, content(columns, width), outer.left, outer.right, true),
    );
    const ys = arrangeAxis(
      oneBlock(area.sheetHeightMm, content(rows, height), outer.lower, outer.upper, false),
    );
    const [x, y] = [xs?.[0], ys?.[0]];
    if (x === undefined || y === undefined) return [];
    const pieces = Array.from({ length: columns * rows }, (_, i) => ({
      xMm: roundTo(x.contentStartMm + (i % columns) * (width + gapMm), 4),
      yMm: roundTo(y.contentStartMm + Math.floor(i / columns) * (height + gapMm), 4),
      widthMm: width,
      heightMm: height,
    }));
    return [{ area, rotation, columns, rows, gapMm, bleedMm, pieces }];
  });
}

function oneBlock(sheetMm: number, contentMm: number, layEdgeMm: number, farEdgeMm: number, spread: boolean) {
  return { sheetMm, contentMm, count: 1, layEdgeMm, layCutMm: 0, farCutMm: 0, farEdgeMm, lip: null, spread };
}

/** Page 1 on the front of every piece and, where there is one, page 2 behind it. */
export function flatCells(
  layout: FlatLayout,
  pages: number,
  turn: Turn,
  signature: string,
): Record<Side, PlanCell[]> {
  const { area, rotation } = layout;
  const front = layout.pieces.map(
    (piece): PlanCell => ({ part: 'body', page: 1, ...piece, rotation, signature }),
  );
  if (pages < 2) return { front, back: [] };
  const back = layout.pieces.map((piece): PlanCell => {
    const rect = onBack(piece, area.sheetWidthMm, area.sheetHeightMm, turn);
    return { part: 'body', page: 2, ...rect, rotation: rotationOnBack(rotation, turn), signature };
  });
  return { front, back };
}
