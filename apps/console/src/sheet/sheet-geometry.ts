/**
 * A sheet side as drawn: the contract's coordinates (origin lower left, y up, gripper at the bottom) turned into SVG's
 * (y down), so that the drawing stands as the sheet lies for its pass.
 */
import type { PlanCell, PlanSheet, Side } from '#libs/craft';

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
  /** The edge of the cell that is the page's head, from and to. */
  readonly head: readonly [number, number, number, number];
}

export function cellShape(cell: PlanCell, sheetHeightMm: number): CellShape {
  const { xMm, yMm, widthMm, heightMm, rotation, page } = cell;
  const topMm = sheetHeightMm - yMm - heightMm;
  const right = xMm + widthMm;
  const foot = topMm + heightMm;
  const heads = {
    0: [xMm, topMm, right, topMm],
    90: [xMm, topMm, xMm, foot],
    180: [xMm, foot, right, foot],
    270: [right, topMm, right, foot],
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
