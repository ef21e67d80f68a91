import { roundTo } from '#libs/kernel';
import type { PlanCell, Rotation, Side, Turn } from '../plan.js';
import { arrangeAxis } from './arrange.js';
import {
  addRotation,
  type Edge,
  onBack,
  oppositeRotation,
  type Rect,
  rotationOnBack,
  turnedEdge,
  turnedRect,
  turnedSize,
} from './geometry.js';
import type { PieceForm } from './piece-form.js';
import { type OuterMargins, outerMargins, type Printable } from './printable.js';

/** A piece as it stands on the sheet, with the turn that brought it there. */
export interface PlacedPiece extends Rect {
  rotation: Rotation;
  column: number;
  row: number;
}

/** Copies of one piece on a sheet. */
export interface PieceLayout {
  form: PieceForm;
  area: Printable;
  rotation: Rotation;
  columns: number;
  rows: number;
  /** Row by row from the lower left, as they are cut. */
  pieces: PlacedPiece[];
}

export interface PieceWant {
  form: PieceForm;
  area: Printable;
  bleedMm: number;
  minBleedMm: number;
}

const edges: readonly Edge[] = ['left', 'right', 'lower', 'upper'];

/** Trim of each edge once the piece is turned. */
function turnedTrim(form: PieceForm, rotation: Rotation): Record<Edge, number> {
  const back = oppositeRotation(rotation);
  const at = (edge: Edge): number => form.trimMm[turnedEdge(edge, back)];
  return { left: at('left'), right: at('right'), lower: at('lower'), upper: at('upper') };
}

/** Bleed lies in the trim of a piece as far as that reaches; only what is left of it needs room beside the piece. */
function margins(want: PieceWant, rotation: Rotation): OuterMargins {
  const trim = turnedTrim(want.form, rotation);
  const bare = outerMargins(want.area, want.bleedMm, want.minBleedMm);
  const left = (edge: Edge): number => Math.max(0, bare[edge] - trim[edge]);
  return { left: left('left'), right: left('right'), lower: left('lower'), upper: left('upper') };
}

/** Paper between two pieces, mm: what their bleeds need beyond their trims. None: one cut parts both. */
export function gapMm(form: PieceForm, bleedMm: number): number {
  return 2 * Math.max(0, ...edges.map((edge) => bleedMm - form.trimMm[edge]));
}

/** Most pieces in a direction: n pieces and n − 1 gaps between the outer margins (handbook, step and repeat). */
function most(lengthMm: number, pieceMm: number, gap: number): number {
  return Math.max(0, Math.floor((lengthMm + gap + 1e-9) / (pieceMm + gap)));
}

/** The fullest grid upright and the fullest grid turned by a quarter; empty where not even one piece fits. */
export function pieceLayouts(want: PieceWant): PieceLayout[] {
  const { area, form } = want;
  const gap = gapMm(form, want.bleedMm);
  return ([0, 90] as const).flatMap((rotation) => {
    const outer = margins(want, rotation);
    const [width, height] = turnedSize(form.widthMm, form.heightMm, rotation);
    const columns = most(area.sheetWidthMm - outer.left - outer.right, width, gap);
    const rows = most(area.sheetHeightMm - outer.lower - outer.upper, height, gap);
    if (columns === 0 || rows === 0) return [];
    const content = (n: number, size: number): number => n * size + (n - 1) * gap;
    const x = oneBlock(area.sheetWidthMm, content(columns, width), outer.left, outer.right, true);
    const y = oneBlock(area.sheetHeightMm, content(rows, height), outer.lower, outer.upper, false);
    if (x === undefined || y === undefined) return [];
    const pieces = Array.from({ length: columns * rows }, (_, i): PlacedPiece => {
      const column = i % columns;
      const row = Math.floor(i / columns);
      return {
        xMm: roundTo(x + column * (width + gap), 4),
        yMm: roundTo(y + row * (height + gap), 4),
        widthMm: width,
        heightMm: height,
        rotation,
        column,
        row,
      };
    });
    return [{ form, area, rotation, columns, rows, pieces }];
  });
}

/** Where the pieces of one direction begin. */
function oneBlock(
  sheetMm: number,
  contentMm: number,
  layEdgeMm: number,
  farEdgeMm: number,
  spread: boolean,
): number | undefined {
  const want = { sheetMm, contentMm, count: 1, layEdgeMm, layCutMm: 0, farCutMm: 0, farEdgeMm, lip: null };
  return arrangeAxis({ ...want, spread })?.[0]?.contentStartMm;
}

/** Page cells of both sides: every panel of every piece, its back page behind its front page. */
export function pieceCells(
  layout: PieceLayout,
  turn: Turn,
  nameOf: (piece: number) => { part: string; signature: string },
  sides: { front: boolean; back: boolean },
): Record<Side, PlanCell[]> {
  const { area, form } = layout;
  const cells: Record<Side, PlanCell[]> = { front: [], back: [] };
  for (const [i, piece] of layout.pieces.entries()) {
    const { part, signature } = nameOf(i);
    const names = { part, signature };
    for (const panel of form.panels) {
      const { xMm, yMm, widthMm, heightMm } = turnedRect(panel, form.widthMm, form.heightMm, piece.rotation);
      const rect: Rect = {
        xMm: roundTo(piece.xMm + xMm, 4),
        yMm: roundTo(piece.yMm + yMm, 4),
        widthMm,
        heightMm,
      };
      const head = addRotation(panel.rotation, piece.rotation);
      if (sides.front) cells.front.push({ ...names, page: panel.front, ...rect, rotation: head });
      if (!sides.back || panel.back === null) continue;
      const behind = onBack(rect, area.sheetWidthMm, area.sheetHeightMm, turn);
      cells.back.push({ ...names, page: panel.back, ...behind, rotation: rotationOnBack(head, turn) });
    }
  }
  return cells;
}
