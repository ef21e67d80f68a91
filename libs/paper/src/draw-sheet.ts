import type { Plan, PlanCell, PlanSheet, Side } from '#libs/craft';
import { lineMm, MARGIN_MM, scaleFor, smallPrint, titleText } from './frame.js';
import { arrow, drawing, line, rect, tag, text } from './svg.js';

/** Head of the sheet drawing, mm: title and one line. */
const TOP_MM = 44;

/** A sheet point on the drawing: SVG counts down, the sheet counts up from the gripper. */
function at(sheet: PlanSheet, x: number, y: number): [number, number] {
  return [MARGIN_MM + x, TOP_MM + sheet.sheetHeightMm - y];
}

function cellDrawing(sheet: PlanSheet, cell: PlanCell): string[] {
  const [x, y] = at(sheet, cell.xMm, cell.yMm + cell.heightMm);
  const [cx, cy] = at(sheet, cell.xMm + cell.widthMm / 2, cell.yMm + cell.heightMm / 2);
  const size = Math.min(cell.widthMm, cell.heightMm) / 3;
  const reach = (cell.rotation % 180 === 0 ? cell.heightMm : cell.widthMm) / 2;
  // Turned about its centre like the page: the triangle lies at the head, the folio stands upright to it.
  const folio = tag(
    'g',
    { transform: `rotate(${(360 - cell.rotation) % 360} ${cx} ${cy})` },
    [
      tag('path', {
        d: `M${cx - size / 4} ${cy - reach + size / 3} L${cx} ${cy - reach + 3} L${cx + size / 4} ${cy - reach + size / 3} z`,
      }),
      text(cx, cy + size / 3, size, cell.page === 0 ? 'blank' : String(cell.page), {
        'text-anchor': 'middle',
      }),
    ].join(''),
  );
  return [rect(x, y, cell.widthMm, cell.heightMm), folio];
}

function bleedDrawing(sheet: PlanSheet, cell: PlanCell): string {
  const b = sheet.bleedMm;
  const [x, y] = at(sheet, cell.xMm - b, cell.yMm + cell.heightMm + b);
  return rect(x, y, cell.widthMm + 2 * b, cell.heightMm + 2 * b, {
    'stroke-dasharray': '2 2',
    'stroke-width': 0.2,
  });
}

/** Teeth along the gripper edge, which lies at the bottom of either side for its own pass. */
function gripperDrawing(sheet: PlanSheet): string[] {
  const teeth = Math.max(4, Math.floor(sheet.sheetWidthMm / 40));
  const step = sheet.sheetWidthMm / teeth;
  const marks = Array.from({ length: teeth }, (_, i) => {
    const [x, y] = at(sheet, (i + 0.5) * step, 0);
    return tag('path', { d: `M${x - 5} ${y + 8} L${x} ${y} L${x + 5} ${y + 8} z` });
  });
  const [x1, y1] = at(sheet, 0, sheet.gripperMm);
  return [
    ...marks,
    line(x1, y1, x1 + sheet.sheetWidthMm, y1, { 'stroke-dasharray': '6 3', 'stroke-width': 0.3 }),
  ];
}

/** The edge that the front is laid against; turned sideways it lies on the other side of the drawing. */
function layDrawing(sheet: PlanSheet, side: Side): string[] {
  const leftOnFront = sheet.sideLay === 'operator';
  const left = side === 'front' || sheet.turn === 'headOverTail' ? leftOnFront : !leftOnFront;
  const [x, y] = at(sheet, left ? 0 : sheet.sheetWidthMm, 100);
  return [
    rect(left ? x - 4 : x, y, 4, 40, { fill: '#000' }),
    text(left ? x - 2 : x + 2, y - 3, 5 * scaleFor(sheet.sheetWidthMm), 'lay', {
      'text-anchor': left ? 'end' : 'start',
    }),
  ];
}

function arrows(sheet: PlanSheet): string[] {
  const [x, y] = at(sheet, sheet.sheetWidthMm, sheet.sheetHeightMm);
  const size = 5 * scaleFor(sheet.sheetWidthMm);
  const alongX = (sheet.grain === 'long') === sheet.sheetWidthMm >= sheet.sheetHeightMm;
  const gx = x - 40;
  const gy = y - 22;
  const grain = alongX ? arrow(gx - 25, gy, gx + 25, gy, true) : arrow(gx, gy - 18, gx, gy + 18, true);
  return [
    arrow(x + 10, y + 10, x + 10, y + 70),
    text(x + 8, y + 78 + size, size, 'feed', { 'text-anchor': 'middle' }),
    grain,
    text(gx - 30, gy + size / 3, size, 'grain', { 'text-anchor': 'end' }),
  ];
}

function cutDrawing(plan: Plan, sheet: PlanSheet, side: Side): string[] {
  return plan.cuts
    .filter((cut) => cut.sheet === sheet.name)
    .map((cut) => {
      const { sheetWidthMm: w, sheetHeightMm: h } = sheet;
      const mirrored = side === 'back';
      const overTail = sheet.turn === 'headOverTail';
      const dashed = { 'stroke-dasharray': '8 2 2 2', 'stroke-width': 0.3 };
      if (cut.axis === 'y') {
        const x = mirrored && !overTail ? w - cut.positionMm : cut.positionMm;
        const [px, py] = at(sheet, x, h);
        return line(px, py - 4, px, py + h + 4, dashed);
      }
      const y = mirrored && overTail ? h - cut.positionMm : cut.positionMm;
      const [px, py] = at(sheet, 0, y);
      return line(px - 4, py, px + w + 4, py, dashed);
    });
}

/**
 * One side of a sheet as it lies for its pass, gripper edge at the bottom: pages with folio and head, bleed, lay, feed and
 * grain, colour bar, cut lines. SVG in millimetres, true to size. An index beyond the plan's sheets gives an empty drawing.
 */
export function drawSheet(plan: Plan, sheetIndex: number, side: Side): string {
  const sheet = plan.sheets[sheetIndex];
  if (sheet === undefined) return drawing('no sheet', 10, 10, []);
  const cells = sheet[side];
  const inks = sheet.units.filter((u) => u.side === side).map((u) => `${u.unit} ${u.ink}`);
  const below = [
    `${sheet.press}, ${sheet.workStyle}, turn ${sheet.turn}; ${sheet.stock}, ${sheet.grain} grain; units ${inks.join(', ') || 'none'}`,
    `${sheet.sheetsToPress} sheets to press: ${sheet.goodSheets} good, ${sheet.makereadySheets} set-up, ${sheet.runningWasteSheets} running waste`,
  ];
  const [x0, y0] = at(sheet, 0, sheet.sheetHeightMm);
  const title = `${plan.jobId} ${plan.name}, sheet ${sheet.name}, ${side}, ${sheet.sheetWidthMm} × ${sheet.sheetHeightMm} mm`;
  const foot = TOP_MM + sheet.sheetHeightMm + 10;
  return drawing(
    title,
    sheet.sheetWidthMm + 2 * MARGIN_MM,
    foot + (below.length + 1) * lineMm(sheet.sheetWidthMm),
    [
      titleText(MARGIN_MM, 16, sheet.sheetWidthMm, title),
      rect(x0, y0, sheet.sheetWidthMm, sheet.sheetHeightMm, { 'stroke-width': 1 }),
      ...cells.map((cell) => bleedDrawing(sheet, cell)),
      ...cells.flatMap((cell) => cellDrawing(sheet, cell)),
      ...sheet.marks
        .filter((mark) => mark.side === side)
        .map((mark) => {
          const [x, y] = at(sheet, mark.xMm, mark.yMm + mark.heightMm);
          return rect(x, y, mark.widthMm, mark.heightMm, { fill: 'url(#waste)' });
        }),
      ...cutDrawing(plan, sheet, side),
      ...gripperDrawing(sheet),
      ...layDrawing(sheet, side),
      ...arrows(sheet),
      ...smallPrint(MARGIN_MM, foot, sheet.sheetWidthMm, below),
    ],
  );
}
