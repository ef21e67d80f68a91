import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { GridFold } from './fold-pile.js';
import { pagesByFolding } from './number-pages.js';
import { creepShiftMm, sectionSizes } from './sections.js';

function values<T>(file: string): T[] {
  const root = process.env.SIDELAY_CHECKDATA_DIR;
  if (!root) throw new Error('SIDELAY_CHECKDATA_DIR is not set; this lane needs the check data.');
  const parsed: { values: T[] } = JSON.parse(readFileSync(join(root, file), 'utf8'));
  return parsed.values;
}

interface Form {
  pages: number;
  columns: number;
  rows: number;
  folds: { axis: string; movingLines: number; movingPart: string; over: boolean }[];
  formFaceUpAtFolder: { page: number; rotate: number }[][];
  formFaceDownSeenAfterSidewaysTurn: { page: number; rotate: number }[][];
}

const parts: Record<string, GridFold['moves']> = {
  left: 'left',
  right: 'right',
  top: 'upper',
  bottom: 'lower',
};

describe('handbook check data for imposition', () => {
  // Source: check data t02-folded-forms (fold geometry; 8 and 16 pages are the classical right-angle schemes).
  it('folds every form of the check data to the pages that it lists', () => {
    for (const form of values<Form>('t02-folded-forms.json')) {
      const folds = form.folds.map(
        (f): GridFold => ({
          moves: parts[f.movingPart] ?? 'left',
          lines: f.movingLines,
          direction: f.over ? 'over' : 'under',
        }),
      );
      const places = pagesByFolding(form.columns, form.rows, folds, 'top') ?? [];
      const side = (name: 'front' | 'back') =>
        Array.from({ length: form.rows }, (_, fromTop) =>
          Array.from({ length: form.columns }, (_, column) => {
            // The back is listed as it is seen after a sideways turn: its columns run the other way.
            const at = name === 'front' ? column : form.columns - 1 - column;
            const p = places.find(
              (q) => q.side === name && q.row === form.rows - 1 - fromTop && q.column === at,
            );
            return { page: p?.page, rotate: p?.rotation };
          }),
        );
      expect(side('front')).toEqual(form.formFaceUpAtFolder);
      expect(side('back')).toEqual(form.formFaceDownSeenAfterSidewaysTurn);
    }
  });

  // Source: check data t02-signatures (common practice).
  it('divides every page count of the check data into the same sections', () => {
    for (const v of values<{ pages: number; sizes_16_8_4: number[]; sizes_32_16_8_4: number[] }>(
      't02-signatures.json',
    )) {
      expect(sectionSizes(v.pages, [16, 8, 4])).toEqual(v.sizes_16_8_4);
      expect(sectionSizes(v.pages, [32, 16, 8, 4])).toEqual(v.sizes_32_16_8_4);
    }
  });

  // Source: check data t02-creep (push-out of nested sheets, exact stack).
  it('moves the pages of every nested sheet as the check data says', () => {
    for (const v of values<{
      pages: number;
      thickness_mm: number;
      creepTotal_mm: number;
      imageShiftOfSheet: Record<string, number>;
    }>('t02-creep.json')) {
      for (const [sheet, shift] of Object.entries(v.imageShiftOfSheet)) {
        expect(creepShiftMm(2 * Number(sheet), v.pages, v.thickness_mm * 1000)).toBeCloseTo(shift, 4);
      }
      expect(creepShiftMm(v.pages / 2, v.pages, v.thickness_mm * 1000)).toBeCloseTo(v.creepTotal_mm, 4);
    }
  });
});
