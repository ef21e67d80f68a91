import type { Plan, PlanCell, PlanMark, PlanSheet, Rotation, Side } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { pagesBefore } from './lookup.js';
import { points, sideKey } from './values.js';

/**
 * The imposed job: for each side of each sheet every page with its matrix. Ord counts the pages of the Document RunList
 * from 0, body or versions first, then cover. A blank page is an empty place.
 */
export function layout(plan: Plan): ResourceDraft {
  return {
    key: 'layout',
    name: 'Layout',
    class: 'Parameter',
    shared: true,
    attributes: { PartIDKeys: 'SheetName Side', Name: 'Imposed' },
    children: plan.sheets.map((sheet) =>
      element('Layout', { SheetName: sheet.name, SourceWorkStyle: sheet.workStyle }, [
        ...side(plan, sheet, 'front'),
        ...side(plan, sheet, 'back'),
      ]),
    ),
  };
}

function side(plan: Plan, sheet: PlanSheet, which: Side): readonly XmlElement[] {
  const pages = sheet[which].filter((cell) => cell.page > 0);
  const marks = sheet.marks.filter((mark) => mark.side === which);
  if (pages.length + marks.length === 0) return [];
  return [
    element(
      'Layout',
      { Side: sideKey(which), SurfaceContentsBox: `0 0 ${points(sheet.sheetWidthMm, sheet.sheetHeightMm)}` },
      [...pages.map((cell) => page(plan, cell)), ...marks.map(mark)],
    ),
  ];
}

function page(plan: Plan, cell: PlanCell): XmlElement {
  const matrix = placing(cell);
  const size =
    cell.rotation % 180 === 0 ? points(cell.widthMm, cell.heightMm) : points(cell.heightMm, cell.widthMm);
  const before = pagesBefore(plan, cell.part);
  return element('ContentObject', {
    Ord: before + cell.page - 1,
    CTM: matrix,
    TrimCTM: matrix,
    TrimSize: size,
  });
}

function mark(bar: PlanMark): XmlElement {
  const { xMm, yMm, widthMm, heightMm } = bar;
  return element('MarkObject', { CTM: '1 0 0 1 0 0' }, [
    element('ColorControlStrip', {
      Center: points(xMm + widthMm / 2, yMm + heightMm / 2),
      Size: points(widthMm, heightMm),
    }),
  ]);
}

const TURNED: Record<Rotation, string> = {
  0: '1 0 0 1',
  90: '0 1 -1 0',
  180: '-1 0 0 -1',
  270: '0 -1 1 0',
};

/**
 * The matrix (a b c d e f; x' = a·x + c·y + e, y' = b·x + d·y + f) that turns a page whose trim begins at its origin
 * counter-clockwise and moves it into its place. Source: standard, orientation matrices of the eight names.
 */
function placing({ rotation, xMm, yMm, widthMm, heightMm }: PlanCell): string {
  const right = rotation === 90 || rotation === 180;
  const up = rotation === 180 || rotation === 270;
  return `${TURNED[rotation]} ${points(right ? xMm + widthMm : xMm, up ? yMm + heightMm : yMm)}`;
}
