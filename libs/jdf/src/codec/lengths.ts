/**
 * Attribute types whose numbers are points in the document (1/72 inch) and millimetres here: the only place where the
 * library converts lengths. Source of the unit: the standard, units of measure.
 */
import { mmFromPoints, pointsFromMm } from '#libs/kernel';
import { converted, only } from './combine.js';
import { matrix, rectangle, shape, xyPair } from './geometry.js';
import { number } from './numbers.js';
import { rangeListOf } from './ranges.js';
import type { ValueType } from './value-type.js';

export interface SizeMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface ShapeMm extends SizeMm {
  /** Thickness, or height of a pile. */
  readonly depthMm: number;
}

export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

export interface BoxMm {
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly rightMm: number;
  readonly topMm: number;
}

/** x' = a·x + c·y + shiftXMm, y' = b·x + d·y + shiftYMm. */
export interface TransformMm {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly shiftXMm: number;
  readonly shiftYMm: number;
}

/** Infinite lengths are none: nothing can be computed with them. */
function finite<T extends object>(type: ValueType<T>): ValueType<T> {
  return only(type, (value) => Object.values(value).every(Number.isFinite), type.expects);
}

export const lengthMm = converted(number, mmFromPoints, pointsFromMm, 'a number of points');
export const lengthRangesMm = rangeListOf(lengthMm);

export const sizeMm: ValueType<SizeMm> = converted(
  finite(xyPair),
  ({ x, y }) => ({ widthMm: mmFromPoints(x), heightMm: mmFromPoints(y) }),
  ({ widthMm, heightMm }) => ({ x: pointsFromMm(widthMm), y: pointsFromMm(heightMm) }),
  'width and height in points',
);

export const pointMm: ValueType<PointMm> = converted(
  finite(xyPair),
  ({ x, y }) => ({ xMm: mmFromPoints(x), yMm: mmFromPoints(y) }),
  ({ xMm, yMm }) => ({ x: pointsFromMm(xMm), y: pointsFromMm(yMm) }),
  'x and y in points',
);

export const shapeMm: ValueType<ShapeMm> = converted(
  finite(shape),
  ({ x, y, z }) => ({ widthMm: mmFromPoints(x), heightMm: mmFromPoints(y), depthMm: mmFromPoints(z) }),
  ({ widthMm, heightMm, depthMm }) => ({
    x: pointsFromMm(widthMm),
    y: pointsFromMm(heightMm),
    z: pointsFromMm(depthMm),
  }),
  'width, height and thickness in points',
);

export const boxMm: ValueType<BoxMm> = converted(
  finite(rectangle),
  ({ llx, lly, urx, ury }) => ({
    leftMm: mmFromPoints(llx),
    bottomMm: mmFromPoints(lly),
    rightMm: mmFromPoints(urx),
    topMm: mmFromPoints(ury),
  }),
  ({ leftMm, bottomMm, rightMm, topMm }) => ({
    llx: pointsFromMm(leftMm),
    lly: pointsFromMm(bottomMm),
    urx: pointsFromMm(rightMm),
    ury: pointsFromMm(topMm),
  }),
  'left, bottom, right and top in points',
);

export const transformMm: ValueType<TransformMm> = converted(
  finite(matrix),
  ({ e, f, ...turn }) => ({ ...turn, shiftXMm: mmFromPoints(e), shiftYMm: mmFromPoints(f) }),
  ({ shiftXMm, shiftYMm, ...turn }) => ({ ...turn, e: pointsFromMm(shiftXMm), f: pointsFromMm(shiftYMm) }),
  'a matrix of six numbers, the last two in points',
);
