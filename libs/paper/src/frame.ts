import { rect, text, wrapped } from './svg.js';

/** Room round a drawing, mm. */
export const MARGIN_MM = 24;
/** Height of a line of small print, mm. */
export const LINE_MM = 7;

/** Lines of small print below a drawing. */
export function smallPrint(x: number, y: number, lines: readonly string[]): string[] {
  return lines.map((words, i) => text(x, y + (i + 1) * LINE_MM, 5, words));
}

/** A caution in a frame of its own; returns the content and its height. */
export function cautionBox(
  x: number,
  y: number,
  widthMm: number,
  caution: string,
): { content: string[]; heightMm: number } {
  const lines = wrapped(`Caution. ${caution}`, Math.max(30, Math.floor(widthMm / 2.8)));
  const heightMm = (lines.length + 1) * LINE_MM;
  return {
    content: [
      rect(x, y, widthMm, heightMm, { 'stroke-width': 1.2 }),
      ...lines.map((words, i) => text(x + 4, y + (i + 1) * LINE_MM, 5, words, { 'font-weight': 'bold' })),
    ],
    heightMm,
  };
}

/** What the plan says about a machine, or a plain reminder where it says nothing. */
export function cautionFor(cautions: readonly string[], machine: string): string {
  return (
    cautions.find((text) => text.startsWith(`${machine}:`)) ??
    `${machine}: trained people only; the machine's manual and local rules come first.`
  );
}
