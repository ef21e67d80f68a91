import fc from 'fast-check';
import type { PlanCut } from '../plan.js';
import { lifts } from './lifts.js';
import { type CutJob, type CutProgramme, cutProgramme, type WantedPiece } from './programme.js';

function grid(columns: number, rows: number, gapMm: number, over: Partial<CutJob> = {}): CutJob {
  const [w, h] = [120, 80];
  const pieces: WantedPiece[] = Array.from({ length: columns * rows }, (_, i) => ({
    name: `S1-${i + 1}`,
    column: i % columns,
    row: Math.floor(i / columns),
    xMm: 11 + (i % columns) * (w + gapMm),
    yMm: 13 + Math.floor(i / columns) * (h + gapMm),
    widthMm: w,
    heightMm: h,
  }));
  return {
    sheet: 'S1',
    sheetWidthMm: 22 + columns * w + (columns - 1) * gapMm,
    sheetHeightMm: 26 + rows * h + (rows - 1) * gapMm,
    pieces,
    trimmed: true,
    minGaugeMm: 30,
    perCutS: 9,
    perTurnS: 6,
    ...over,
  };
}

function made(job: CutJob): CutProgramme {
  const programme = cutProgramme(job);
  if (typeof programme === 'string') throw new Error(programme);
  return programme;
}

type Box = { x: number; y: number; w: number; h: number };

/** Cuts as an outsider reads them: only names, axis and position. */
function apply(job: CutJob, cuts: readonly PlanCut[]): Map<string, Box> {
  const piles = new Map<string, Box>([['S1', { x: 0, y: 0, w: job.sheetWidthMm, h: job.sheetHeightMm }]]);
  for (const cut of cuts) {
    const box = piles.get(cut.piece);
    if (box === undefined) throw new Error(`no piece ${cut.piece}`);
    piles.delete(cut.piece);
    const at = cut.positionMm;
    const [low, high]: [Box, Box] =
      cut.axis === 'y'
        ? [
            { ...box, w: at - box.x },
            { ...box, x: at, w: box.x + box.w - at },
          ]
        : [
            { ...box, h: at - box.y },
            { ...box, y: at, h: box.y + box.h - at },
          ];
    piles.set(cut.yields[0], low);
    piles.set(cut.yields[1], high);
  }
  return piles;
}

describe('cutting programme', () => {
  // Source: handbook t07-cutcount for one piece: four cuts; usual order: four sides, three turns (practice).
  it('trims one piece with four cuts and three quarter turns', () => {
    const { cuts, seconds } = made(grid(1, 1, 0));
    expect(cuts.map((c) => c.edgeAtGauge)).toEqual(['gripper', 'lay', 'cut 1', 'cut 2']);
    expect(cuts.map((c) => c.turnDeg)).toEqual([0, 90, 90, 90]);
    expect(seconds).toBe(4 * 9 + 3 * 6);
  });

  // Each cut parts one pile, so cuts = good pieces + waste pieces − 1; a shared line needs one cut, a gap two.
  it.each([
    [2, 1, 0, 5],
    [2, 1, 6, 6],
    [2, 2, 6, 10],
    [3, 7, 0, 24],
  ])('parts %i × %i pieces with a gap of %i mm by %i cuts', (columns, rows, gap, count) => {
    expect(made(grid(columns, rows, gap)).cuts).toHaveLength(count);
  });

  it('refuses a piece that would lie closer to the gauge than the machine allows', () => {
    expect(cutProgramme(grid(1, 1, 0, { minGaugeMm: 100 }))).toContain('100 mm is the least');
  });

  it('only divides work that is still to be folded, with the lay edges at the gauge', () => {
    const { cuts, piles } = made(grid(2, 1, 6, { trimmed: false }));
    expect(cuts).toHaveLength(1);
    expect(cuts[0]).toMatchObject({ axis: 'y', positionMm: 134, edgeAtGauge: 'lay', turnDeg: 90 });
    expect(piles.map((p) => [p.edges.lower, p.edges.left])).toEqual([
      ['gripper', 'cut 1'],
      ['gripper', 'lay'],
    ]);
  });

  it('leaves exactly the wanted pieces and tiles the sheet with them and the waste', () => {
    const size = fc.integer({ min: 1, max: 4 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 0, max: 8 }), fc.boolean(), (columns, rows, gap, trimmed) => {
        const job = grid(columns, rows, gap, { trimmed });
        const { cuts } = made(job);
        const piles = apply(job, cuts);
        const area = [...piles.values()].reduce((sum, b) => sum + b.w * b.h, 0);
        expect(area).toBeCloseTo(job.sheetWidthMm * job.sheetHeightMm, 3);
        if (trimmed) {
          for (const piece of job.pieces) {
            expect(piles.get(piece.name)).toEqual({
              x: piece.xMm,
              y: piece.yMm,
              w: piece.widthMm,
              h: piece.heightMm,
            });
          }
        }
        const good = [...piles.keys()].filter((name) => !name.startsWith('waste'));
        expect(good.length === job.pieces.length).toBe(true);
        expect(cuts.every((c) => c.gaugeMm >= job.minGaugeMm)).toBe(true);
        expect(cuts.map((c) => c.order)).toEqual(cuts.map((_, i) => i + 1));
        expect(cuts.every((c) => c.yields.includes(c.fallsInFront))).toBe(true);
      }),
    );
  });
});

describe('lifts', () => {
  // Source: handbook t07-lift, computed from the clamp opening and the caliper (grammage × bulk).
  it.each([
    [120, 80 * 1.3, 5000, 1153, 5],
    [100, 135 * 0.9, 30000, 823, 37],
    [60, 60 * 1.6, 999, 625, 2],
  ])(
    'of %d mm at %d µm from %i sheets hold %i sheets each, %i lifts',
    (height, caliper, n, sheets, count) => {
      expect(lifts(height, caliper, n)).toEqual({ count, sheets });
    },
  );
});
