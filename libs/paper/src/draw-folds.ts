import type { Plan, PlanFold } from '#libs/craft';
import { cautionBox, cautionFor, lineMm, MARGIN_MM, smallPrint, titleText } from './frame.js';
import { arrow, drawing, line, rect, text } from './svg.js';

interface Stage {
  fold: PlanFold;
  widthMm: number;
  heightMm: number;
}

/** Size of the piece before every fold. */
function stages(sheetInMm: readonly [number, number], folds: readonly PlanFold[]): Stage[] {
  let [w, h] = sheetInMm;
  return folds.map((fold) => {
    const stage = { fold, widthMm: w, heightMm: h };
    const { positionMm: at } = fold;
    if (fold.axis === 'y') w = Math.max(at, w - at);
    else h = Math.max(at, h - at);
    return stage;
  });
}

/** One fold: the piece as it lies, the part that moves hatched, the crease, and the way it goes. */
function stageDrawing({ fold, widthMm: w, heightMm: h }: Stage, x: number, top: number): string[] {
  const at = fold.positionMm;
  const upright = fold.axis === 'y';
  const lowMoves = fold.moves === 'left' || fold.moves === 'lower';
  const part = upright
    ? { x: lowMoves ? x : x + at, y: top, w: lowMoves ? at : w - at, h }
    : { x, y: lowMoves ? top + h - at : top, w, h: lowMoves ? at : h - at };
  const crease = upright
    ? line(x + at, top - 6, x + at, top + h + 6, { 'stroke-dasharray': '6 3' })
    : line(x - 6, top + h - at, x + w + 6, top + h - at, { 'stroke-dasharray': '6 3' });
  const reach = Math.min(60, Math.min(w, h) / 3);
  const way = upright
    ? arrow(
        x + at - (lowMoves ? reach : -reach),
        top + h / 2,
        x + at + (lowMoves ? reach : -reach),
        top + h / 2,
      )
    : arrow(
        x + w / 2,
        top + h - at + (lowMoves ? reach : -reach),
        x + w / 2,
        top + h - at - (lowMoves ? reach : -reach),
      );
  return [
    rect(x, top, w, h, { 'stroke-width': 1 }),
    rect(part.x, part.y, part.w, part.h, { fill: 'url(#waste)', 'fill-opacity': 0.4 }),
    crease,
    way,
    text(x, top - 10, 14, `fold ${fold.order}, ${fold.direction}`),
  ];
}

function inWords(fold: PlanFold): string {
  const edge = { left: 'left', right: 'right', lower: 'lower', upper: 'upper' }[fold.moves];
  return `${fold.order}  ${fold.unit}: stop ${fold.stopMm} mm; the ${edge} part goes ${fold.direction}, crease at ${fold.positionMm} mm${fold.perforate ? ', perforated' : ''}`;
}

/**
 * Folds of one folded block (index into the plan's `folding`): the piece before every fold in a row, then units and stops
 * in words and the usual caution. SVG in millimetres.
 */
export function drawFolds(plan: Plan, foldingIndex: number): string {
  const folding = plan.folding[foldingIndex];
  if (folding === undefined) return drawing('nothing to fold', 10, 10, []);
  const all = stages(folding.sheetInMm, folding.folds);
  const top = 80;
  const gap = 30;
  const width = all.reduce((sum, s) => sum + s.widthMm + gap, 0) - gap;
  let x = MARGIN_MM;
  const shapes = all.flatMap((stage) => {
    const drawn = stageDrawing(stage, x, top);
    x += stage.widthMm + gap;
    return drawn;
  });
  const start = folding.startSide === 'front' ? 'front up' : 'back up';
  const turned =
    folding.startRotationDeg === 0 ? '' : `, turned ${folding.startRotationDeg}° counter-clockwise`;
  const lip =
    folding.lipMm === undefined ? [] : [`lip ${folding.lipMm} mm on the ${folding.lipOn ?? 'high'} folios`];
  const words = [
    `block ${folding.block}, ${start}${turned}, ${folding.sheetInMm[0]} × ${folding.sheetInMm[1]} mm`,
    ...folding.folds.map(inWords),
    ...lip,
  ];
  const foot = top + folding.sheetInMm[1] + 10;
  const box = cautionBox(
    MARGIN_MM,
    foot + (words.length + 1) * lineMm(width),
    width,
    cautionFor(plan.cautions, 'Folder'),
  );
  const title = `${plan.jobId} ${plan.name}, folding ${folding.signature}`;
  return drawing(title, width + 2 * MARGIN_MM, foot + (words.length + 2) * lineMm(width) + box.heightMm, [
    titleText(MARGIN_MM, 24, width, title),
    ...shapes,
    ...smallPrint(MARGIN_MM, foot, width, words),
    ...box.content,
  ]);
}
