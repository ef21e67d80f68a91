import { roundTo } from '#libs/kernel';
import type { PlanCell, Side, Turn } from '../plan.js';
import {
  addRotation,
  direction,
  onBack,
  type Rect,
  rotationOnBack,
  turnedEdge,
  turnedRect,
} from './geometry.js';
import type { SectionBlock, SectionLayout } from './place-section.js';

/** Which section stands in which block, with the reader page of each page of the section. */
export interface PlacedSection {
  block: SectionBlock;
  signature: string;
  part: string;
  readerPages: readonly number[];
}

/**
 * Page cells of both sides. Every page has its own share of creep: it is moved towards its spine by `shiftMm` of it.
 */
export function sectionCells(
  layout: SectionLayout,
  placed: readonly PlacedSection[],
  turn: Turn,
  shiftMm: (page: number) => number,
): Record<Side, PlanCell[]> {
  const { form, area, rotation } = layout;
  const cells: Record<Side, PlanCell[]> = { front: [], back: [] };
  for (const { block, signature, part, readerPages } of placed) {
    for (const leaf of form.leaves) {
      const box = turnedRect(leaf.rect, form.widthMm, form.heightMm, rotation);
      const toSpine = direction(turnedEdge(leaf.spine, rotation));
      const head = addRotation(leaf.front.rotation, rotation);
      for (const place of [leaf.front, leaf.back]) {
        const page = readerPages[place.page - 1] ?? 0;
        const shift = page === 0 ? 0 : shiftMm(page);
        const rect: Rect = {
          ...box,
          xMm: block.xMm + block.contentXMm + box.xMm + toSpine.x * shift,
          yMm: block.yMm + block.contentYMm + box.yMm + toSpine.y * shift,
        };
        const own = place.side === 'front' ? rect : onBack(rect, area.sheetWidthMm, area.sheetHeightMm, turn);
        cells[place.side].push({
          part,
          page,
          xMm: roundTo(own.xMm, 4),
          yMm: roundTo(own.yMm, 4),
          widthMm: own.widthMm,
          heightMm: own.heightMm,
          rotation: place.side === 'front' ? head : rotationOnBack(head, turn),
          signature,
        });
      }
    }
  }
  return cells;
}
