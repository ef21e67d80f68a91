import type { Plan, PlanCell, PlanSheet } from '#libs/craft';

/**
 * A 16-page section in portrait, four by two, both sides in one pass. Page numbers and heads are the usual lay of a
 * right-angle 16-page section (common practice, no source): the upper row stands on its head, front and back back up.
 */
const FRONT = [
  [5, 12, 9, 8],
  [4, 13, 16, 1],
];
const BACK = [
  [7, 10, 11, 6],
  [2, 15, 14, 3],
];
const A4 = { widthMm: 210, heightMm: 297 };
const HEAD_TRIM_MM = 6;
const SHEET = { sheetWidthMm: 900, sheetHeightMm: 640, gripperMm: 10 };

function cells(rows: readonly (readonly number[])[]): PlanCell[] {
  const left = (SHEET.sheetWidthMm - 4 * A4.widthMm) / 2;
  return rows.flatMap((row, fromTop) =>
    row.map((page, column) => ({
      part: 'body',
      page,
      xMm: left + column * A4.widthMm,
      yMm: fromTop === 1 ? 16 : 16 + A4.heightMm + HEAD_TRIM_MM,
      ...A4,
      rotation: fromTop === 0 ? (180 as const) : (0 as const),
      signature: 'body-1',
    })),
  );
}

const sheet: PlanSheet = {
  name: 'body-1',
  press: 'press-full',
  workStyle: 'Perfecting',
  turn: 'none',
  ...SHEET,
  grain: 'short',
  tailMm: 0,
  copiesUp: 1,
  stock: 'silk-115-full-sg',
  front: cells(FRONT),
  back: cells(BACK),
  plates: 8,
  goodSheets: 311,
  makereadySheets: 120,
  runningWasteSheets: 5,
  sheetsToPress: 436,
  impressions: 436,
  bleedMm: 3,
  units: [],
  marks: [
    { kind: 'colourBar', side: 'front', xMm: 10, yMm: 628, widthMm: 880, heightMm: 6 },
    { kind: 'colourBar', side: 'back', xMm: 10, yMm: 628, widthMm: 880, heightMm: 6 },
  ],
  sideLay: 'operator',
};

/** The part of a plan that the console draws from. */
export const recordedPlan = {
  jobId: 'D1-01',
  name: 'Programme: The Salt Harbour',
  sheets: [sheet],
} as Partial<Plan>;
