import type { Rotation, Turn } from '../plan.js';

/** A rectangle by its lower-left corner, mm. */
export interface Rect {
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

export type Edge = 'right' | 'upper' | 'left' | 'lower';

/** Edges in counter-clockwise order, so that a quarter turn is one step. */
const edges: readonly Edge[] = ['right', 'upper', 'left', 'lower'];

/** The edge that an edge becomes when the piece is turned counter-clockwise. */
export function turnedEdge(edge: Edge, rotation: Rotation): Edge {
  return edges[(edges.indexOf(edge) + rotation / 90) % 4] ?? edge;
}

export function addRotation(a: Rotation, b: Rotation): Rotation {
  const sum = (a + b) % 360;
  return sum === 90 || sum === 180 || sum === 270 ? sum : 0;
}

export function oppositeRotation(rotation: Rotation): Rotation {
  return rotation === 90 ? 270 : rotation === 270 ? 90 : rotation;
}

/** Size of a box after turning it. */
export function turnedSize(widthMm: number, heightMm: number, rotation: Rotation): [number, number] {
  return rotation === 0 || rotation === 180 ? [widthMm, heightMm] : [heightMm, widthMm];
}

/** A rectangle inside a box of the given size, after the box is turned and set back onto the origin. */
export function turnedRect(rect: Rect, boxWidthMm: number, boxHeightMm: number, rotation: Rotation): Rect {
  const { xMm: x, yMm: y, widthMm: w, heightMm: h } = rect;
  switch (rotation) {
    case 0:
      return rect;
    case 90:
      return { xMm: boxHeightMm - y - h, yMm: x, widthMm: h, heightMm: w };
    case 180:
      return { xMm: boxWidthMm - x - w, yMm: boxHeightMm - y - h, widthMm: w, heightMm: h };
    case 270:
      return { xMm: y, yMm: boxWidthMm - x - w, widthMm: h, heightMm: w };
  }
}

/** Unit vector of a direction that is right (0°), up (90°) … before turning. */
export function direction(edge: Edge): { x: number; y: number } {
  return {
    right: { x: 1, y: 0 },
    upper: { x: 0, y: 1 },
    left: { x: -1, y: 0 },
    lower: { x: 0, y: -1 },
  }[edge];
}

/** Where a rectangle of the front lies on the back (turned sideways or not at all, or head over tail). */
export function onBack(rect: Rect, sheetWidthMm: number, sheetHeightMm: number, turn: Turn): Rect {
  return turn === 'headOverTail'
    ? { ...rect, yMm: sheetHeightMm - rect.yMm - rect.heightMm }
    : { ...rect, xMm: sheetWidthMm - rect.xMm - rect.widthMm };
}

/** Rotation on the back of a page whose head points the same way in space as a front page of that rotation. */
export function rotationOnBack(rotation: Rotation, turn: Turn): Rotation {
  const mirrored = oppositeRotation(rotation);
  return turn === 'headOverTail' ? addRotation(mirrored, 180) : mirrored;
}
