import type { Matrix, Rectangle, XYPair } from '../../../codec/index.js';

/** Lengths are rounded when they are written: less than this, in points of 1/72 inch, is no difference. */
export const SLACK_POINTS = 0.1;

/** Where a piece of a size lies that a matrix places, in points; what is turned askew with the corners around it. */
export function placed({ x, y }: XYPair, { a, b, c, d, e, f }: Matrix): Rectangle {
  const [xs, ys] = [
    [e, e + a * x, e + c * y, e + a * x + c * y],
    [f, f + b * x, f + d * y, f + b * x + d * y],
  ];
  return { llx: Math.min(...xs!), lly: Math.min(...ys!), urx: Math.max(...xs!), ury: Math.max(...ys!) };
}

/** Whether a box lies on a sheet whose lower left corner is 0 0; a side of 0 is open, as that of a web. */
export function isOn({ x, y }: XYPair, { llx, lly, urx, ury }: Rectangle): boolean {
  const inX = llx >= -SLACK_POINTS && (x <= 0 || urx <= x + SLACK_POINTS);
  return inX && lly >= -SLACK_POINTS && (y <= 0 || ury <= y + SLACK_POINTS);
}

/** Something with its place. */
export interface Boxed {
  readonly box: Rectangle;
}

/**
 * Those that lie on one that was there before, going from left to right; each is told once. What has been passed is left
 * out and what lies on another is not kept, so the others stand above one another and each has two neighbours: n log n.
 */
export function overlapping<B extends Boxed>(boxes: readonly B[]): B[] {
  const shrunk = boxes
    .map((of) => ({ of, ...less(of.box) }))
    .filter(({ llx, lly, urx, ury }) => {
      return llx < urx && lly < ury;
    });
  const byEnd = [...shrunk].sort((one, other) => one.urx - other.urx);
  const found: B[] = [];
  const open: (typeof shrunk)[number][] = [];
  let ended = 0;
  for (const box of [...shrunk].sort((one, other) => one.llx - other.llx)) {
    for (; byEnd[ended]!.urx <= box.llx; ended++) {
      const at = placeIn(open, byEnd[ended]!.lly);
      if (open[at] === byEnd[ended]) open.splice(at, 1);
    }
    const at = placeIn(open, box.lly);
    const [below, above] = [open[at - 1], open[at]];
    if ((below && below.ury > box.lly) || (above && above.lly < box.ury)) found.push(box.of);
    else open.splice(at, 0, box);
  }
  return found;
}

/** The first of those sorted by their lower edge that does not begin lower than this. */
function placeIn(open: readonly Rectangle[], lly: number): number {
  let [from, to] = [0, open.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (open[middle]!.lly < lly) from = middle + 1;
    else to = middle;
  }
  return from;
}

function less({ llx, lly, urx, ury }: Rectangle): Rectangle {
  const half = SLACK_POINTS / 2;
  return { llx: llx + half, lly: lly + half, urx: urx - half, ury: ury - half };
}
