import type { PressDefinition } from '../plant.js';

/** What keeps ink off the edges of a sheet on a press, mm. */
export interface Printable {
  sheetWidthMm: number;
  sheetHeightMm: number;
  gripperMm: number;
  /** The gripped tail; 0 where the tail is never gripped. */
  tailMm: number;
  /** No ink nearer to the left and right edges. */
  sideMm: number;
  /** No ink nearer to the tail edge. */
  tailFreeMm: number;
  colourBarMm: number;
}

/**
 * Printable area of a sheet, which lies centred across the press: gripper, free edge all round, gripped tail and the
 * largest image (practice of the trade; usable length as in handbook t02-sheetfit).
 */
export function printableArea(
  press: PressDefinition,
  sheetWidthMm: number,
  sheetHeightMm: number,
  tailGripped: boolean,
): Printable {
  const tailMm = tailGripped ? press.gripperMm : 0;
  return {
    sheetWidthMm,
    sheetHeightMm,
    gripperMm: press.gripperMm,
    tailMm,
    sideMm: Math.max(press.freeEdgeMm, (sheetWidthMm - press.maxImageWidthMm) / 2),
    tailFreeMm: Math.max(press.freeEdgeMm, tailMm, sheetHeightMm - press.gripperMm - press.maxImageHeightMm),
    colourBarMm: press.colourBarMm,
  };
}

/** Why a press cannot take sheets of that size, or null where it can. */
export function sheetSizeRefusal(press: PressDefinition, widthMm: number, heightMm: number): string | null {
  if (widthMm > press.maxSheetWidthMm || heightMm > press.maxSheetHeightMm) {
    return `${press.name} takes ${press.maxSheetWidthMm} × ${press.maxSheetHeightMm} mm at most, the sheet is ${widthMm} × ${heightMm} mm`;
  }
  if (widthMm < press.minSheetWidthMm || heightMm < press.minSheetHeightMm) {
    return `${press.name} takes ${press.minSheetWidthMm} × ${press.minSheetHeightMm} mm at least, the sheet is ${widthMm} × ${heightMm} mm`;
  }
  return null;
}

/** Paper that must lie outside the trimmed pages at each sheet edge, mm. */
export interface OuterMargins {
  left: number;
  right: number;
  lower: number;
  upper: number;
}

/**
 * Bleed lies inside the printable area. The colour bar lies between the pages and the tail; it may take the outer bleed
 * down to `minBleedMm`, because that strip is cut off.
 */
export function outerMargins(area: Printable, bleedMm: number, minBleedMm: number): OuterMargins {
  const bar = area.colourBarMm > 0 ? area.colourBarMm + Math.min(bleedMm, minBleedMm) : 0;
  return {
    left: area.sideMm + bleedMm,
    right: area.sideMm + bleedMm,
    lower: area.gripperMm + bleedMm,
    upper: area.tailFreeMm + Math.max(bleedMm, bar),
  };
}
