import { converted, listOf } from './combine.js';
import { float, number } from './numbers.js';
import type { ValueType } from './value-type.js';

/** Two numbers: a position, a size, or columns and rows. */
export interface XYPair {
  readonly x: number;
  readonly y: number;
}

/** Three numbers: width, height and thickness. */
export interface Shape {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The lower left corner, then the upper right one. */
export interface Rectangle {
  readonly llx: number;
  readonly lly: number;
  readonly urx: number;
  readonly ury: number;
}

/** x' = a·x + c·y + e, y' = b·x + d·y + f. */
export interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Numbers of fixed places by the names of their places. */
export function placesOf<K extends string>(
  item: ValueType<number>,
  ...names: readonly K[]
): ValueType<{ readonly [name in K]: number }> {
  return converted(
    listOf(item, { exactly: names.length }),
    (values) => Object.fromEntries(names.map((name, i) => [name, values[i]!])) as { [name in K]: number },
    (value) => names.map((name) => value[name]),
    `${names.length} numbers separated by blanks`,
  );
}

export const xyPair: ValueType<XYPair> = placesOf(number, 'x', 'y');
export const shape: ValueType<Shape> = placesOf(number, 'x', 'y', 'z');
export const rectangle: ValueType<Rectangle> = placesOf(number, 'llx', 'lly', 'urx', 'ury');
export const matrix: ValueType<Matrix> = placesOf(number, 'a', 'b', 'c', 'd', 'e', 'f');
/** A matrix without its shift. */
export const matrixShift = placesOf(number, 'a', 'b', 'c', 'd');

/** The same in XJDF, whose numbers may be NaN. */
export const floatXyPair: ValueType<XYPair> = placesOf(float, 'x', 'y');
export const floatShape: ValueType<Shape> = placesOf(float, 'x', 'y', 'z');
export const floatRectangle: ValueType<Rectangle> = placesOf(float, 'llx', 'lly', 'urx', 'ury');
export const floatMatrix: ValueType<Matrix> = placesOf(float, 'a', 'b', 'c', 'd', 'e', 'f');

/** A curve through points, x rising; the numbers come in pairs. */
export function curveOf(item: ValueType<number>): ValueType<readonly XYPair[]> {
  return converted(
    listOf(item),
    (values) =>
      values.length % 2 === 1
        ? undefined
        : Array.from({ length: values.length / 2 }, (_, i) => ({ x: values[2 * i]!, y: values[2 * i + 1]! })),
    (points) => points.flatMap(({ x, y }) => [x, y]),
    'pairs of numbers: x y x y …',
  );
}

export const transferFunction = curveOf(number);
