import type { Edge, Rect } from '../layouts/geometry.js';
import type { PlanCut } from '../plan.js';
import { type CutWant, cutPile, opposite, type Pile, sheetPile } from './pile.js';

/** One printed piece that the programme must leave. */
export interface WantedPiece extends Rect {
  name: string;
  column: number;
  row: number;
}

export interface CutJob {
  sheet: string;
  sheetWidthMm: number;
  sheetHeightMm: number;
  /** A full grid: every column of every row. */
  pieces: readonly WantedPiece[];
  /** Finished work is trimmed on all sides; work that is still to be folded is only divided. */
  trimmed: boolean;
  minGaugeMm: number;
  perCutS: number;
  perTurnS: number;
}

export interface CutProgramme {
  cuts: PlanCut[];
  /** Seconds of one lift for cuts and turns, without loading. */
  seconds: number;
  /** The pieces at the end by name. */
  piles: Pile[];
}

type Axis = 'columns' | 'rows';

/** Which way the programme goes: order of the outer trims, what is parted first, which edge stays at the gauge. */
interface Route {
  trims: readonly Edge[];
  first: Axis;
  columnGauge: Edge;
  rowGauge: Edge;
}

interface Work {
  job: CutJob;
  cuts: PlanCut[];
  seconds: number;
  waste: number;
}

function cut(work: Work, pile: Pile, want: CutWant): { front: Pile; back: Pile } {
  const done = cutPile(pile, work.job.sheet, work.cuts.length + 1, want);
  work.cuts.push(done.cut);
  work.seconds += work.job.perCutS + done.quarterTurns * work.job.perTurnS;
  return done;
}

function wasteName(work: Work): string {
  work.waste += 1;
  return `waste-${work.job.sheet}-${work.waste}`;
}

const restName = (work: Work): string => `${work.job.sheet}-rest${work.cuts.length + 1}`;

function outline(pieces: readonly Rect[]): Record<Edge, number> {
  return {
    left: Math.min(...pieces.map((p) => p.xMm)),
    right: Math.max(...pieces.map((p) => p.xMm + p.widthMm)),
    lower: Math.min(...pieces.map((p) => p.yMm)),
    upper: Math.max(...pieces.map((p) => p.yMm + p.heightMm)),
  };
}

function edgeAt(pile: Pile, edge: Edge): number {
  return outline([pile])[edge];
}

function trimAll(work: Work, start: Pile, order: readonly Edge[]): Pile {
  const want = outline(work.job.pieces);
  const single = work.job.pieces.length === 1 ? work.job.pieces[0] : undefined;
  const needed = order.filter((edge) => Math.abs(edgeAt(start, edge) - want[edge]) > 1e-6);
  return needed.reduce((pile, edge, i) => {
    const last = i === needed.length - 1;
    return cut(work, pile, {
      positionMm: want[edge],
      gauge: opposite[edge],
      frontName: wasteName(work),
      backName: last && single ? single.name : restName(work),
      note: `trim the ${pile.edges[edge]} side`,
    }).back;
  }, start);
}

/** Lines at which a pile is parted, from the front to the gauge: behind each strip, and before the next one. */
function strips(pieces: readonly WantedPiece[], axis: Axis): { key: number; from: number; to: number }[] {
  const keys = [...new Set(pieces.map((p) => (axis === 'columns' ? p.column : p.row)))].toSorted(
    (a, b) => a - b,
  );
  return keys.map((key) => {
    const all = pieces.filter((p) => (axis === 'columns' ? p.column : p.row) === key);
    const box = outline(all);
    return axis === 'columns'
      ? { key, from: box.left, to: box.right }
      : { key, from: box.lower, to: box.upper };
  });
}

/** Parts a pile into its columns or rows; strips fall in front one by one, gaps between them as waste. */
function part(
  work: Work,
  pile: Pile,
  pieces: readonly WantedPiece[],
  axis: Axis,
  gauge: Edge,
): { pile: Pile; pieces: WantedPiece[] }[] {
  const lowAtGauge = gauge === 'left' || gauge === 'lower';
  const rows = strips(pieces, axis);
  const order = lowAtGauge ? rows.toReversed() : rows;
  const parts: { pile: Pile; pieces: WantedPiece[] }[] = [];
  let rest = pile;
  order.forEach((strip, i) => {
    const mine = pieces.filter((p) => (axis === 'columns' ? p.column : p.row) === strip.key);
    const next = order[i + 1];
    if (next === undefined) {
      parts.push({ pile: rest, pieces: mine });
      return;
    }
    const name = (s: { key: number }): string => stripName(work, pieces, axis, s.key);
    const [mineAt, nextAt] = lowAtGauge ? [strip.from, next.to] : [strip.to, next.from];
    const gap = work.job.trimmed && Math.abs(mineAt - nextAt) > 1e-6;
    const lastNext = i + 2 === order.length;
    const divide = work.job.trimmed ? mineAt : (mineAt + nextAt) / 2;
    const done = cut(work, rest, {
      positionMm: divide,
      gauge,
      frontName: name(strip),
      backName: !gap && lastNext ? name(next) : restName(work),
      note: work.job.trimmed ? 'part' : 'divide; the lay edges stay',
    });
    parts.push({ pile: done.front, pieces: mine });
    rest = done.back;
    if (gap) {
      rest = cut(work, rest, {
        positionMm: nextAt,
        gauge,
        frontName: wasteName(work),
        backName: lastNext ? name(next) : restName(work),
        note: 'cut the gap away',
      }).back;
    }
  });
  return parts;
}

function stripName(work: Work, pieces: readonly WantedPiece[], axis: Axis, key: number): string {
  const mine = pieces.filter((p) => (axis === 'columns' ? p.column : p.row) === key);
  const only = mine.length === 1 ? mine[0] : undefined;
  return only?.name ?? `${work.job.sheet}-${axis === 'columns' ? 'column' : 'row'}${key + 1}`;
}

function follow(job: CutJob, route: Route): CutProgramme {
  const work: Work = { job, cuts: [], seconds: 0, waste: 0 };
  const start = sheetPile(job.sheet, job.sheetWidthMm, job.sheetHeightMm);
  const trimmed = job.trimmed ? trimAll(work, start, route.trims) : start;
  const gauges = { columns: route.columnGauge, rows: route.rowGauge };
  const second: Axis = route.first === 'columns' ? 'rows' : 'columns';
  const piles = part(work, trimmed, job.pieces, route.first, gauges[route.first]).flatMap((strip) =>
    part(work, strip.pile, strip.pieces, second, gauges[second]).map((p) => p.pile),
  );
  return { cuts: work.cuts, seconds: work.seconds, piles };
}

/** The edge against the gauge is a lay edge of the press or a fresh cut: so the far sides are trimmed before the lays. */
const trimOrders: readonly (readonly Edge[])[] = [
  ['upper', 'right', 'lower', 'left'],
  ['upper', 'right', 'left', 'lower'],
  ['right', 'upper', 'lower', 'left'],
  ['right', 'upper', 'left', 'lower'],
  ['upper', 'lower', 'right', 'left'],
  ['right', 'left', 'upper', 'lower'],
];

/**
 * The programme that takes the least time (cuts and turns) among all orders of trimming and parting, with no distance
 * between knife and gauge below the machine's least. A text says why there is none. Cuts part one pile each; the edge at
 * the gauge is always a lay edge or a fresh cut (practice of the trade; number of cuts as in handbook t07-cutcount).
 */
export function cutProgramme(job: CutJob): CutProgramme | string {
  const rowGauges: Edge[] = job.trimmed ? ['lower', 'upper'] : ['lower'];
  const columnGauges: Edge[] = job.trimmed ? ['left', 'right'] : ['left'];
  const routes = (job.trimmed ? trimOrders : [[]]).flatMap((trims) =>
    (['columns', 'rows'] as const).flatMap((first) =>
      columnGauges.flatMap((columnGauge) =>
        rowGauges.map((rowGauge): Route => ({ trims, first, columnGauge, rowGauge })),
      ),
    ),
  );
  const programmes = routes.map((route) => follow(job, route));
  const possible = programmes.filter((p) => p.cuts.every((c) => c.gaugeMm >= job.minGaugeMm));
  const best = possible.toSorted((a, b) => a.seconds - b.seconds)[0];
  if (best !== undefined) return best;
  const least = Math.max(...programmes.map((p) => Math.min(...p.cuts.map((c) => c.gaugeMm))));
  return `a piece would lie ${least.toFixed(1)} mm from the knife to the gauge, ${job.minGaugeMm} mm is the least`;
}
