import { roundTo } from '#libs/kernel';
import type { Edge, Rect } from '../layouts/geometry.js';
import type { PlanCut } from '../plan.js';

/** A pile on the guillotine table: a rectangle of the sheet, how it lies, and what each of its edges is. */
export interface Pile extends Rect {
  name: string;
  /** Turn against the sheet's own coordinates as the operator sees it, back gauge at the far side. */
  lieDeg: number;
  edges: Record<Edge, string>;
}

/** How a pile lies when an edge is at the gauge; it starts with the gripper edge there. */
const lieOf: Record<Edge, number> = { lower: 180, left: 270, upper: 0, right: 90 };

export const opposite: Record<Edge, Edge> = { left: 'right', right: 'left', lower: 'upper', upper: 'lower' };

/** The pile as it comes from the press. The side lay is at the smallest x of the front. */
export function sheetPile(name: string, widthMm: number, heightMm: number): Pile {
  return {
    name,
    xMm: 0,
    yMm: 0,
    widthMm,
    heightMm,
    lieDeg: lieOf.lower,
    edges: { lower: 'gripper', upper: 'tail', left: 'lay', right: 'offLay' },
  };
}

export interface CutWant {
  positionMm: number;
  /** Edge that lies against the back gauge. */
  gauge: Edge;
  frontName: string;
  backName: string;
  note: string;
}

export interface CutDone {
  cut: PlanCut;
  front: Pile;
  back: Pile;
  quarterTurns: number;
}

const runsAlongX = (edge: Edge): boolean => edge === 'lower' || edge === 'upper';

/** Parts a pile; what lies in front of the knife falls towards the operator, the rest stays at the gauge. */
export function cutPile(pile: Pile, sheet: string, order: number, want: CutWant): CutDone {
  const { gauge, positionMm } = want;
  const alongX = runsAlongX(gauge);
  const [start, size] = alongX ? [pile.yMm, pile.heightMm] : [pile.xMm, pile.widthMm];
  const low = positionMm - start;
  const lowIsBack = gauge === 'lower' || gauge === 'left';
  const lieDeg = lieOf[gauge];
  const label = `cut ${order}`;
  const part = (isLow: boolean, name: string): Pile => {
    const edge: Edge = alongX ? (isLow ? 'upper' : 'lower') : isLow ? 'right' : 'left';
    const from = isLow ? start : positionMm;
    const length = isLow ? low : size - low;
    const rect = alongX ? { yMm: from, heightMm: length } : { xMm: from, widthMm: length };
    return { ...pile, ...rect, name, lieDeg, edges: { ...pile.edges, [edge]: label } };
  };
  const back = part(lowIsBack, want.backName);
  const front = part(!lowIsBack, want.frontName);
  const turnDeg = (lieDeg - pile.lieDeg + 360) % 360;
  const lowName = lowIsBack ? want.backName : want.frontName;
  const highName = lowIsBack ? want.frontName : want.backName;
  return {
    front,
    back,
    quarterTurns: turnDeg === 270 ? 1 : turnDeg / 90,
    cut: {
      sheet,
      order,
      piece: pile.name,
      axis: alongX ? 'x' : 'y',
      positionMm: roundTo(positionMm, 4),
      gaugeMm: roundTo(lowIsBack ? low : size - low, 4),
      edgeAtGauge: pile.edges[gauge],
      turnDeg,
      fallsInFront: want.frontName,
      yields: [lowName, highName],
      note: want.note,
    },
  };
}
