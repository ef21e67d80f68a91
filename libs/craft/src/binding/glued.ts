import type { PlanBinding } from '../plan.js';
import type { BinderDefinition } from '../plant.js';

/**
 * Spine of a glued book, mm: half its pages are leaves of one caliper, the cover lies on both sides (handbook
 * t02-spine). Glue adds to it; a blank dummy of the real paper decides.
 */
export function gluedSpineMm(pages: number, caliperUm: number, coverCaliperUm: number): number {
  return ((pages / 2) * caliperUm + 2 * coverCaliperUm) / 1000;
}

/** Thickness of the block before its cover is on, mm. */
export function blockThicknessMm(pages: number, caliperUm: number): number {
  return ((pages / 2) * caliperUm) / 1000;
}

/** Why the binder cannot bind the book, or null where it can. */
export function binderRefusal(binder: BinderDefinition, pages: number, caliperUm: number): string | null {
  const thick = blockThicknessMm(pages, caliperUm);
  const words = `${pages} pages of this stock are ${thick.toFixed(1)} mm thick`;
  if (thick > binder.maxBlockMm)
    return `${binder.name} binds blocks of ${binder.maxBlockMm} mm at most, ${words}`;
  if (thick < binder.minBlockMm)
    return `${binder.name} binds blocks of ${binder.minBlockMm} mm at least, ${words}`;
  return null;
}

export interface GluedBook {
  trimWidthMm: number;
  spineMm: number;
  /** From the front of the book to its back. */
  sections: readonly { name: string; firstPage: number }[];
}

/**
 * Binding of a book with a glued spine: sections are gathered in reading order, the cover goes round last. Its four
 * scores are measured on the open cover from its left edge: both edges of the spine, and where the side glue ends.
 */
export function gluedBinding(binder: BinderDefinition, book: GluedBook): PlanBinding {
  const { sections, spineMm, trimWidthMm } = book;
  const left = binder.trim.faceMm + trimWidthMm;
  const right = left + spineMm;
  return {
    kind: 'SoftCover',
    spineMm,
    signatureOrder: [...sections.map((s) => s.name), 'cover'],
    stations: sections.map((s, i) => ({ n: i + 1, signature: s.name, firstPage: s.firstPage })),
    coverScoresMm: [left - binder.sideGlueMm, left, right, right + binder.sideGlueMm],
    trim: { ...binder.trim },
  };
}
