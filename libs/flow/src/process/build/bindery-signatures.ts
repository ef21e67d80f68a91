import type { Plan, PlanCell, PlanSheet } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';

/** A rectangle of a sheet in millimetres, with the signature that comes out of it. */
export interface Place {
  readonly signature: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Places of a sheet that hold the same cells, and what the cells hold. */
export interface Pattern {
  readonly places: readonly Place[];
  readonly element: XmlElement;
}

/** The bindery signatures of a sheet: equal ones once, with all their places. */
export function patternsOf(plan: Plan, sheet: PlanSheet): readonly Pattern[] {
  const found = new Map<string, { places: Place[]; element: XmlElement }>();
  for (const place of placesOf(plan, sheet)) {
    const made = binderySignature(plan, sheet, place);
    // Signatures that are bound are told apart even where they are folded alike.
    const key = `${plan.binding.kind === 'None' ? '' : place.signature} ${JSON.stringify(made)}`;
    const known = found.get(key);
    if (known === undefined) found.set(key, { places: [place], element: made });
    else known.places.push(place);
  }
  return [...found.values()];
}

function placesOf(plan: Plan, sheet: PlanSheet): readonly Place[] {
  const blocks = plan.blocks.filter((block) => block.sheet === sheet.name);
  if (blocks.length > 0) return blocks;
  return [{ signature: '', xMm: 0, yMm: 0, widthMm: sheet.sheetWidthMm, heightMm: sheet.sheetHeightMm }];
}

/**
 * The cells of one place, row by row from the bottom, each with the pages of its two faces counted from 0 within the
 * signature. Source of the order: the standard's sample processes/strippingComplexExample.
 */
function binderySignature(plan: Plan, sheet: PlanSheet, place: Place): XmlElement {
  const front = inside(sheet.front, place);
  const rows = rowsOf(
    front.length > 0 ? front : inside(sheet.back, place).map((cell) => turned(sheet, cell)),
  );
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const cells = rows.flatMap((row) =>
    runsOf(row).map((run) =>
      element('SignatureCell', {
        FrontPages: pageList(plan, run),
        BackPages: pageList(
          plan,
          run.map((cell) => behind(sheet, cell)),
        ),
        Orientation: ORIENTATION[run[0]!.rotation],
      }),
    ),
  );
  return element(
    'BinderySignature',
    { BinderySignatureType: 'Fold', NumberUp: `${columns} ${rows.length}` },
    cells,
  );
}

const ORIENTATION = { 0: 'Up', 90: 'Left', 180: 'Down', 270: 'Right' } as const;

const middle = (cell: Pick<PlanCell, 'xMm' | 'yMm' | 'widthMm' | 'heightMm'>) => ({
  x: cell.xMm + cell.widthMm / 2,
  y: cell.yMm + cell.heightMm / 2,
});

function inside(cells: readonly PlanCell[], place: Place): readonly PlanCell[] {
  return cells.filter((cell) => {
    const { x, y } = middle(cell);
    return x > place.xMm && x < place.xMm + place.widthMm && y > place.yMm && y < place.yMm + place.heightMm;
  });
}

/** Where a cell of one side lies in the coordinates of the other (as the plan has them: sideways, or head over tail). */
function turned(sheet: PlanSheet, cell: PlanCell): PlanCell {
  return sheet.turn === 'headOverTail'
    ? { ...cell, yMm: sheet.sheetHeightMm - cell.yMm - cell.heightMm }
    : { ...cell, xMm: sheet.sheetWidthMm - cell.xMm - cell.widthMm };
}

function behind(sheet: PlanSheet, cell: PlanCell): PlanCell | undefined {
  const { x, y } = middle(cell);
  return sheet.back.find((other) => {
    const at = middle(turned(sheet, other));
    return Math.abs(at.x - x) < cell.widthMm / 2 && Math.abs(at.y - y) < cell.heightMm / 2;
  });
}

function rowsOf(cells: readonly PlanCell[]): readonly (readonly PlanCell[])[] {
  const rows: PlanCell[][] = [];
  for (const cell of [...cells].sort((a, b) => middle(a).y - middle(b).y)) {
    const row = rows.find(([first]) => Math.abs(middle(first!).y - middle(cell).y) < cell.heightMm / 2);
    if (row === undefined) rows.push([cell]);
    else row.push(cell);
  }
  return rows.map((row) => row.sort((a, b) => a.xMm - b.xMm));
}

/** Neighbours in a row whose heads point the same way: one SignatureCell lists them. */
function runsOf(row: readonly PlanCell[]): readonly (readonly PlanCell[])[] {
  const runs: PlanCell[][] = [];
  for (const cell of row) {
    const last = runs.at(-1);
    if (last !== undefined && last[0]!.rotation === cell.rotation) last.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

/** Pages as places within their signature; -1 is the standard's mark for no page. */
function pageList(plan: Plan, cells: readonly (PlanCell | undefined)[]): string | undefined {
  if (cells.every((cell) => cell === undefined)) return undefined;
  return cells
    .map((cell) => {
      if (cell === undefined || cell.page === 0) return -1;
      const signature = plan.signatures.find(({ name }) => name === cell.signature);
      return signature?.pages.includes(cell.page) ? signature.pages.indexOf(cell.page) : cell.page - 1;
    })
    .join(' ');
}
