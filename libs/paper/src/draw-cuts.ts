import type { Plan, PlanCut, PlanSheet } from '#libs/craft';
import { cautionBox, cautionFor, lineMm, MARGIN_MM, scaleFor, smallPrint, titleText } from './frame.js';
import { drawing, line, rect, text } from './svg.js';

interface Piece {
  x: number;
  y: number;
  w: number;
  h: number;
}

/** The line that a cut makes, and what lies on the table when all are done, in the sheet's own coordinates. */
function replay(sheet: PlanSheet, cuts: readonly PlanCut[]) {
  const pieces = new Map<string, Piece>([
    [sheet.name, { x: 0, y: 0, w: sheet.sheetWidthMm, h: sheet.sheetHeightMm }],
  ]);
  const lines = cuts.map((cut) => {
    const piece = pieces.get(cut.piece) ?? { x: 0, y: 0, w: 0, h: 0 };
    pieces.delete(cut.piece);
    const at = cut.positionMm;
    const upright = cut.axis === 'y';
    pieces.set(cut.yields[0], upright ? { ...piece, w: at - piece.x } : { ...piece, h: at - piece.y });
    pieces.set(
      cut.yields[1],
      upright
        ? { ...piece, x: at, w: piece.x + piece.w - at }
        : { ...piece, y: at, h: piece.y + piece.h - at },
    );
    return upright
      ? { cut, x1: at, y1: piece.y, x2: at, y2: piece.y + piece.h }
      : { cut, x1: piece.x, y1: at, x2: piece.x + piece.w, y2: at };
  });
  return { pieces, lines };
}

function inWords(cut: PlanCut): string {
  const turn = cut.turnDeg === 0 ? 'as it lies' : `turn ${cut.turnDeg}° counter-clockwise`;
  return `${cut.order}  ${cut.piece}: ${turn}, ${cut.edgeAtGauge} at the gauge, gauge ${cut.gaugeMm} mm; ${cut.fallsInFront} falls in front (${cut.note})`;
}

/**
 * Cutting programme of a sheet: the pile from above as the operator stands before it at the start, gripper edge at the
 * back gauge (top), knife lines numbered, waste hatched, then every cut in words, the lifts and the usual caution.
 */
export function drawCuts(plan: Plan, sheetIndex: number): string {
  const sheet = plan.sheets[sheetIndex];
  const cuts = sheet === undefined ? [] : plan.cuts.filter((cut) => cut.sheet === sheet.name);
  if (sheet === undefined || cuts.length === 0) return drawing('nothing to cut', 10, 10, []);
  const { sheetWidthMm: w, sheetHeightMm: h } = sheet;
  const top = 52;
  // The pile starts with its gripper edge away from the operator: turned by half against the sheet drawing.
  const px = (x: number): number => MARGIN_MM + w - x;
  const py = (y: number): number => top + y;
  const { pieces, lines } = replay(sheet, cuts);
  const shapes = [...pieces].flatMap(([name, p]) => {
    const waste = name.startsWith('waste');
    const box = rect(px(p.x + p.w), py(p.y), p.w, p.h, waste ? { fill: 'url(#waste)' } : {});
    // Piles of several versions are told apart by what is written on them.
    const pile = plan.blocks.find((block) => block.name === name)?.pileLabel;
    const words = pile === undefined ? name : `${name} ${pile}`;
    const label = text(px(p.x + p.w / 2), py(p.y + p.h / 2), 9, words, { 'text-anchor': 'middle' });
    return waste ? [box] : [box, label];
  });
  const knives = lines.flatMap(({ cut, x1, y1, x2, y2 }) => [
    line(px(x1), py(y1), px(x2), py(y2), { 'stroke-width': 1 }),
    // Two cuts beside a gap lie close: every second number stands further along its line.
    text(
      px((x1 + x2) / 2 + (cut.axis === 'x' && cut.order % 2 === 0 ? 20 : 0)) + 2,
      py((y1 + y2) / 2 + (cut.axis === 'y' && cut.order % 2 === 0 ? 14 : 0)) - 1,
      5 * scaleFor(w),
      String(cut.order),
      { 'font-weight': 'bold' },
    ),
  ]);
  const lift = plan.lifts.find((l) => l.sheet === sheet.name);
  const words = [
    ...(lift === undefined
      ? []
      : [`${lift.count} lifts of ${lift.sheets} sheets at most, ${lift.heightMm} mm high, ${lift.kg} kg`]),
    ...cuts.map(inWords),
  ];
  const foot = top + h + 8;
  const box = cautionBox(
    MARGIN_MM,
    foot + (words.length + 1) * lineMm(w),
    w,
    `${cautionFor(plan.cautions, 'Guillotine')} Keep hands behind the front edge of the table while the clamp moves.`,
  );
  const title = `${plan.jobId} ${plan.name}, cutting sheet ${sheet.name}`;
  return drawing(title, w + 2 * MARGIN_MM, foot + (words.length + 2) * lineMm(w) + box.heightMm, [
    titleText(MARGIN_MM, 16, w, title),
    text(MARGIN_MM + w / 2, 40, 5 * scaleFor(w), 'back gauge', { 'text-anchor': 'middle' }),
    line(MARGIN_MM - 8, 45, MARGIN_MM + w + 8, 45, { 'stroke-width': 3 }),
    ...shapes,
    ...knives,
    ...smallPrint(MARGIN_MM, foot, w, words),
    ...box.content,
  ]);
}
