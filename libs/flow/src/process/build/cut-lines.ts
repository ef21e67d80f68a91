import type { Plan, PlanSheet } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import { points } from './values.js';

interface Piece {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The cuts of a sheet in their order, each as the line through the piece that it divides. Cutting the pieces one after
 * the other gives every line its length; all coordinates are those of the sheet's front, in points.
 */
export function cutLines(plan: Plan, sheet: PlanSheet): readonly XmlElement[] {
  const pieces = new Map<string, Piece>([
    [sheet.name, { x: 0, y: 0, width: sheet.sheetWidthMm, height: sheet.sheetHeightMm }],
  ]);
  const lines: XmlElement[] = [];
  const cuts = plan.cuts.filter((cut) => cut.sheet === sheet.name).sort((a, b) => a.order - b.order);
  for (const { piece, axis, positionMm, yields } of cuts) {
    const from = pieces.get(piece);
    if (from === undefined) continue;
    const [lower, upper] = divided(from, axis, positionMm);
    pieces.set(yields[0], lower);
    pieces.set(yields[1], upper);
    lines.push(
      element('Cut', {
        WorkingDirection: 'Top',
        StartPosition: points(upper.x, upper.y),
        WorkingPath: axis === 'x' ? points(from.width, 0) : points(0, from.height),
      }),
    );
  }
  return lines;
}

function divided(piece: Piece, axis: 'x' | 'y', at: number): readonly [Piece, Piece] {
  if (axis === 'x') {
    const below = at - piece.y;
    return [
      { ...piece, height: below },
      { ...piece, y: at, height: piece.height - below },
    ];
  }
  const left = at - piece.x;
  return [
    { ...piece, width: left },
    { ...piece, x: at, width: piece.width - left },
  ];
}
