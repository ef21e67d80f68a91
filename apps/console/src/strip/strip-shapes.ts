/** Geometry of one strip in pixels: the slip with its notch, what fits as a label. */
import { type TimeWindow, xOf } from './time-axis.js';

export interface Box {
  readonly x: number;
  readonly width: number;
}

/** A stretch of time clipped to the drawing, or null when it lies outside. At least `leastPx` wide, so that it is seen. */
export function boxOf(
  window: TimeWindow,
  widthPx: number,
  fromMs: number,
  toMs: number,
  leastPx = 3,
): Box | null {
  if (toMs < window.fromMs || fromMs > window.toMs) return null;
  const x = Math.max(0, xOf(window, widthPx, fromMs));
  const right = Math.min(widthPx, Math.max(xOf(window, widthPx, toMs), x + leastPx));
  return right <= x ? null : { x, width: right - x };
}

/** Outline of a slip of paper from `left` to `right`, with a V cut into both long edges where the job is due. */
export function slipPath(
  left: number,
  right: number,
  height: number,
  dueX: number | null,
  notchPx: number,
): string {
  const inside = dueX !== null && dueX - notchPx >= left && dueX + notchPx <= right;
  const top = inside ? `H${dueX - notchPx} L${dueX} ${notchPx} L${dueX + notchPx} 0 ` : '';
  const foot = inside ? `H${dueX + notchPx} L${dueX} ${height - notchPx} L${dueX - notchPx} ${height} ` : '';
  return `M${left} 0 ${top}H${right} V${height} ${foot}H${left} Z`;
}

/** The text if it fits into `roomPx`, else cut with an ellipsis, else nothing: three letters say too little. */
export function fitText(text: string, roomPx: number, letterPx: number): string {
  const room = Math.floor(roomPx / letterPx);
  if (text.length <= room) return text;
  return room >= 5 ? `${text.slice(0, room - 1).trimEnd()}…` : '';
}

export interface Placed {
  readonly x: number;
  readonly anchor: 'start' | 'end';
  readonly text: string;
}

/** Puts a line of text at `x`: to the right where it fits, else ending at the right edge, cut only if it is too long. */
export function placeText(text: string, x: number, widthPx: number, letterPx: number): Placed {
  const start = Math.max(0, Math.min(x, widthPx));
  if (text.length * letterPx <= widthPx - start) return { x: start, anchor: 'start', text };
  return { x: widthPx, anchor: 'end', text: fitText(text, widthPx, letterPx) };
}
