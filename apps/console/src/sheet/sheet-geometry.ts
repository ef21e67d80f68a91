/**
 * A sheet side as drawn: the contract's coordinates (origin lower left, y up, gripper at the bottom) turned into SVG's
 * (y down), so that the drawing stands as the sheet lies for its pass.
 */
import type { PlanCell, PlanSheet, Side } from '#libs/craft';

/** Share of the shorter edge by which the head line lies inside. */
const HEAD_INSET = 0.05;

export interface CellShape {
  readonly xMm: number;
  /** From the top of the drawing. */
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly page: number;
  /** Centre of the cell, where the folio stands. */
  readonly centre: readonly [number, number];
  /** Clockwise, as SVG turns; the folio stands with its head to the page's head. */
  readonly turnDeg: number;
  /** A line along the page's head, a little inside the cell, so that heads which meet stay two lines. */
  readonly head: readonly [number, number, number, number];
}

export function cellShape(cell: PlanCell, sheetHeightMm: number): CellShape {
  const { xMm, yMm, widthMm, heightMm, rotation, page } = cell;
  const topMm = sheetHeightMm - yMm - heightMm;
  const right = xMm + widthMm;
  const foot = topMm + heightMm;
  const inset = Math.min(widthMm, heightMm) * HEAD_INSET;
  const [left, top, rightIn, footIn] = [xMm + inset, topMm + inset, right - inset, foot - inset];
  const heads = {
    0: [left, top, rightIn, top],
    90: [left, top, left, footIn],
    180: [left, footIn, rightIn, footIn],
    270: [rightIn, top, rightIn, footIn],
  } as const;
  return {
    xMm,
    topMm,
    widthMm,
    heightMm,
    page,
    centre: [xMm + widthMm / 2, topMm + heightMm / 2],
    turnDeg: (360 - rotation) % 360,
    head: heads[rotation],
  };
}

/** The gripped strip at the bottom of a side: the gripper edge, or the tail where the back is gripped there. */
export function grippedAt(sheet: PlanSheet, side: Side): { edge: 'gripper' | 'tail'; mm: number } {
  return side === 'back' && sheet.turn === 'headOverTail'
    ? { edge: 'tail', mm: sheet.tailMm }
    : { edge: 'gripper', mm: sheet.gripperMm };
}

/** Pages in the order one reads them off the drawing from the gripper up, each row from left to right. */
export function pagesFromGripper(cells: readonly PlanCell[]): number[] {
  return [...cells].sort((a, b) => a.yMm - b.yMm || a.xMm - b.xMm).map((cell) => cell.page);
}
