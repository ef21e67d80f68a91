/**
 * Reads a plan as somebody would who has only the plan document: folds paper by its numbers, cuts by its
 * numbers, and says what comes out. Shares no code with the planner.
 */
import type { Plan, PlanCell, PlanFolding, PlanSheet } from '#libs/craft';

interface Box {
  x: number;
  y: number;
  w: number;
  h: number;
}

/** A leaf while it is folded: its trimmed page, the pages of both sides, which is up, and where the head points. */
interface Leaf extends Box {
  front: number;
  back: number;
  frontUp: boolean;
  head: { x: number; y: number };
}

const boxOf = (c: PlanCell): Box => ({ x: c.xMm, y: c.yMm, w: c.widthMm, h: c.heightMm });

/** A back cell in the coordinates of the front. */
export function seenFromFront(cell: PlanCell, sheet: PlanSheet): Box {
  const box = boxOf(cell);
  return sheet.turn === 'headOverTail'
    ? { ...box, y: sheet.sheetHeightMm - box.y - box.h }
    : { ...box, x: sheet.sheetWidthMm - box.x - box.w };
}

const near = (a: Box, b: Box, slack: number): boolean =>
  Math.abs(a.x - b.x) <= slack &&
  Math.abs(a.y - b.y) <= slack &&
  Math.abs(a.w - b.w) <= slack &&
  Math.abs(a.h - b.h) <= slack;

/** The page behind a front page, or null where there is none in that place. */
export function pageBehind(cell: PlanCell, sheet: PlanSheet): number | null {
  return sheet.back.find((b) => near(seenFromFront(b, sheet), boxOf(cell), 0.01))?.page ?? null;
}

function headOf(rotation: number): { x: number; y: number } {
  const angle = (rotation * Math.PI) / 180;
  return { x: -Math.round(Math.sin(angle)), y: Math.round(Math.cos(angle)) };
}

function quarterTurn(box: Box, size: { w: number; h: number }): Box {
  return { x: size.h - box.y - box.h, y: box.x, w: box.h, h: box.w };
}

function leavesOf(plan: Plan, folding: PlanFolding): { leaves: Leaf[]; size: { w: number; h: number } } {
  const block = plan.blocks.find((b) => b.name === folding.block)!;
  const sheet = plan.sheets.find((s) => s.name === block.sheet)!;
  let leaves = sheet.front
    .filter(
      (c) =>
        c.xMm > block.xMm - 1 &&
        c.yMm > block.yMm - 1 &&
        c.xMm + c.widthMm < block.xMm + block.widthMm + 1 &&
        c.yMm + c.heightMm < block.yMm + block.heightMm + 1,
    )
    .map((c): Leaf => {
      const box = boxOf(c);
      return {
        ...box,
        x: box.x - block.xMm,
        y: box.y - block.yMm,
        front: c.page,
        back: pageBehind(c, sheet) ?? -1,
        frontUp: true,
        head: headOf(c.rotation),
      };
    });
  let size = { w: block.widthMm, h: block.heightMm };
  for (let turned = 0; turned < folding.startRotationDeg; turned += 90) {
    const before = size;
    leaves = leaves.map((l) => ({ ...l, ...quarterTurn(l, before), head: { x: -l.head.y, y: l.head.x } }));
    size = { w: before.h, h: before.w };
  }
  return { leaves, size };
}

export interface Folded {
  /** Pages in reading order. */
  pages: number[];
  /** Largest distance between the trimmed pages of the pile, mm. */
  apartMm: number;
  /** All heads point the same way, and the spine lies on their left. */
  headsUp: boolean;
  startsAt: [number, number];
}

/** Folds a signature by the plan's numbers. Bottom leaf first. */
export function foldByPlan(plan: Plan, folding: PlanFolding): Folded {
  const start = leavesOf(plan, folding);
  let leaves = start.leaves;
  let { w, h } = start.size;
  let crease = { x: -1, y: 0 };
  for (const { axis, positionMm: at, moves, direction } of folding.folds) {
    const across = axis === 'y';
    const low = moves === 'left' || moves === 'lower';
    const middle = (l: Leaf): number => (across ? l.x + l.w / 2 : l.y + l.h / 2);
    const goes = (l: Leaf): boolean => middle(l) < at === low;
    const moved = leaves
      .filter(goes)
      .reverse()
      .map((l): Leaf => {
        const box = across ? { x: 2 * at - l.x - l.w } : { y: 2 * at - l.y - l.h };
        const head = across ? { x: -l.head.x, y: l.head.y } : { x: l.head.x, y: -l.head.y };
        return { ...l, ...box, head, frontUp: !l.frontUp };
      });
    const still = leaves.filter((l) => !goes(l));
    leaves = direction === 'over' ? [...still, ...moved] : [...moved, ...still];
    const size = across ? w : h;
    const from = low ? at : Math.min(0, 2 * at - size);
    const to = low ? Math.max(size, 2 * at) : at;
    leaves = leaves.map((l) => (across ? { ...l, x: l.x - from } : { ...l, y: l.y - from }));
    if (across) w = to - from;
    else h = to - from;
    crease = across ? { x: low ? -1 : 1, y: 0 } : { x: 0, y: low ? -1 : 1 };
  }
  const fromTop = leaves.toReversed().flatMap((l) => (l.frontUp ? [l.front, l.back] : [l.back, l.front]));
  const first = plan.signatures.find((s) => s.name === folding.signature)!.pages[0];
  const top = fromTop[0] === first;
  const head = leaves[0]!.head;
  // Left of the head seen from above; from below left and right change places.
  const left = top ? { x: -head.y, y: head.x } : { x: head.y, y: -head.x };
  const xs = leaves.map((l) => l.x);
  const ys = leaves.map((l) => l.y);
  return {
    pages: top ? fromTop : fromTop.toReversed(),
    apartMm: Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)),
    headsUp:
      leaves.every((l) => l.head.x === head.x && l.head.y === head.y) &&
      Math.abs(left.x - crease.x) < 1e-9 &&
      Math.abs(left.y - crease.y) < 1e-9,
    startsAt: [start.size.w, start.size.h],
  };
}

/** What lies on the table when all cuts of a sheet are done. */
export function cutByPlan(plan: Plan, sheet: PlanSheet): Map<string, Box> {
  const piles = new Map<string, Box>([
    [sheet.name, { x: 0, y: 0, w: sheet.sheetWidthMm, h: sheet.sheetHeightMm }],
  ]);
  for (const cut of plan.cuts.filter((c) => c.sheet === sheet.name)) {
    const box = piles.get(cut.piece);
    if (box === undefined) throw new Error(`there is no piece ${cut.piece}`);
    piles.delete(cut.piece);
    const at = cut.positionMm;
    const along = cut.axis === 'y';
    piles.set(cut.yields[0], along ? { ...box, w: at - box.x } : { ...box, h: at - box.y });
    piles.set(
      cut.yields[1],
      along ? { ...box, x: at, w: box.x + box.w - at } : { ...box, y: at, h: box.y + box.h - at },
    );
  }
  return piles;
}

/** Largest overlap of two cells of a side, mm: the smaller of how far they reach into each other in x and in y. */
export function largestOverlapMm(cells: readonly PlanCell[]): number {
  let most = 0;
  cells.forEach((a, i) => {
    for (const b of cells.slice(i + 1)) {
      const x = Math.min(a.xMm + a.widthMm, b.xMm + b.widthMm) - Math.max(a.xMm, b.xMm);
      const y = Math.min(a.yMm + a.heightMm, b.yMm + b.heightMm) - Math.max(a.yMm, b.yMm);
      most = Math.max(most, Math.min(x, y));
    }
  });
  return most;
}
