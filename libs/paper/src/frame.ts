import { rect, text, wrapped } from './svg.js';

/** Room round a drawing, mm. */
export const MARGIN_MM = 24;
/** Height of a line of small print on a drawing up to 400 mm wide, mm. */
const LINE_MM = 7;

/** Drawings are true to size but are read on a page or a screen: print grows with the sheet. */
export function scaleFor(widthMm: number): number {
  return Math.max(1, widthMm / 400);
}

/** Height of a line of small print, mm. */
export function lineMm(widthMm: number): number {
  return LINE_MM * scaleFor(widthMm);
}

export function titleText(x: number, y: number, widthMm: number, words: string): string {
  return text(x, y, 7 * scaleFor(widthMm), words, { 'font-weight': 'bold' });
}

/** Lines of small print below a drawing of that width. */
export function smallPrint(x: number, y: number, widthMm: number, lines: readonly string[]): string[] {
  return lines.map((words, i) => text(x, y + (i + 1) * lineMm(widthMm), 5 * scaleFor(widthMm), words));
}

/** A caution in a frame of its own; returns the content and its height. */
export function cautionBox(
  x: number,
  y: number,
  widthMm: number,
  caution: string,
): { content: string[]; heightMm: number } {
  const lines = wrapped(`Caution. ${caution}`, Math.max(30, Math.floor(widthMm / (2.8 * scaleFor(widthMm)))));
  const line = lineMm(widthMm);
  const heightMm = (lines.length + 1) * line;
  return {
    content: [
      rect(x, y, widthMm, heightMm, { 'stroke-width': 1.2 }),
      ...lines.map((words, i) =>
        text(x + 4, y + (i + 1) * line, 5 * scaleFor(widthMm), words, { 'font-weight': 'bold' }),
      ),
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
