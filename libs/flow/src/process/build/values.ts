import { pointsFromMm } from '#libs/kernel';

/** Lengths in millimetres as a list of points, the unit of the standard (1/72 inch). */
export function points(...mm: readonly number[]): string {
  return mm.map((value) => pointsFromMm(value)).join(' ');
}

/** Text that fits the standard's short strings (63 characters) and has no line ends. */
export function shortText(value: string): string {
  return value.replaceAll(/\s+/g, ' ').trim().slice(0, 63);
}

/** A name without blanks, as NMTOKEN values must be. */
export function token(value: string): string {
  return value.replaceAll(/[^\p{L}\p{N}._:-]/gu, '_').slice(0, 63);
}

/** `Front` or `Back`, as the partition key Side writes it. */
export function sideKey(side: 'front' | 'back'): string {
  return side === 'front' ? 'Front' : 'Back';
}

const PROCESS_INKS = new Map([
  ['Cyan', '1 0 0 0'],
  ['Magenta', '0 1 0 0'],
  ['Yellow', '0 0 1 0'],
  ['Black', '0 0 0 1'],
]);

/** The CMYK value of a process ink on its own; undefined for a spot ink. */
export function processInkCmyk(ink: string): string | undefined {
  return PROCESS_INKS.get(ink);
}

/** Values without repeats, in the order in which they first occur. */
export function distinct<T>(values: readonly T[]): T[] {
  return [...new Set(values)];
}
