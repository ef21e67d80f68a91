import type { PlanBinding, PlanStation } from '../plan.js';
import type { StitcherDefinition } from '../plant.js';

/** Share of the spine height, from the foot, at which stitches sit: evenly, half a space from head and foot. */
function stitchPositions(trimHeightMm: number, stitches: number): number[] {
  return Array.from({ length: stitches }, (_, i) => ((2 * i + 1) * trimHeightMm) / (2 * stitches));
}

/**
 * Binding of a saddle-stitched book: sections are collected from the outside in as listed, but hung on the chain from
 * the inside out, so the first station carries the innermost section and the cover feeder, the last one, the cover.
 */
export function saddleBinding(
  stitcher: StitcherDefinition,
  trimHeightMm: number,
  sections: readonly { name: string; firstPage: number }[],
  cover: boolean,
): PlanBinding {
  const outsideIn = [...(cover ? [{ name: 'cover', firstPage: 1 }] : []), ...sections];
  const stations = outsideIn
    .toReversed()
    .map((s, i): PlanStation => ({ n: i + 1, signature: s.name, firstPage: s.firstPage }));
  return {
    kind: 'SaddleStitch',
    signatureOrder: outsideIn.map((s) => s.name),
    stations,
    stitchPositionsMm: stitchPositions(trimHeightMm, stitcher.stitches),
    trim: { ...stitcher.trim },
  };
}

/** Thickness of the stitched back, mm: every leaf lies twice at the fold. */
export function saddleThicknessMm(pages: number, caliperUm: number): number {
  return ((pages / 2) * caliperUm) / 1000;
}

/**
 * Wire of a run, kg: stitches × (crown + two legs) × cross-section × density of steel, 7850 kg/m³ (handbook t07-wire).
 */
export function wireKg(
  wire: { diameterMm: number; stitches: number; crownMm: number; legMm: number },
  copies: number,
): number {
  const lengthM = (copies * wire.stitches * (wire.crownMm + 2 * wire.legMm)) / 1000;
  return lengthM * (Math.PI / 4) * (wire.diameterMm / 1000) ** 2 * 7850;
}

/** Why the stitcher cannot make the book, or null where it can. */
export function stitcherRefusal(
  stitcher: StitcherDefinition,
  book: {
    trimWidthMm: number;
    trimHeightMm: number;
    pages: number;
    caliperUm: number;
    sections: number;
    /** Null for a book without a cover of its own. */
    coverCaliperUm: number | null;
  },
): string | null {
  const { trimWidthMm: w, trimHeightMm: h } = book;
  if (w > stitcher.maxTrimWidthMm || h > stitcher.maxTrimHeightMm) {
    return `${stitcher.name} trims to ${stitcher.maxTrimWidthMm} × ${stitcher.maxTrimHeightMm} mm at most`;
  }
  if (w < stitcher.minTrimWidthMm || h < stitcher.minTrimHeightMm) {
    return `${stitcher.name} trims to ${stitcher.minTrimWidthMm} × ${stitcher.minTrimHeightMm} mm at least`;
  }
  if (book.coverCaliperUm !== null && !stitcher.coverFeeder) return `${stitcher.name} has no cover feeder`;
  const thick =
    saddleThicknessMm(book.pages, book.caliperUm) + saddleThicknessMm(4, book.coverCaliperUm ?? 0);
  if (thick > stitcher.maxThicknessMm) {
    return `${stitcher.name} stitches ${stitcher.maxThicknessMm} mm at most, ${book.pages} pages of this stock are ${thick.toFixed(1)} mm thick`;
  }
  if (book.sections > stitcher.stations) {
    return `${stitcher.name} has ${stitcher.stations} stations, the book would have ${book.sections} sections`;
  }
  return null;
}
