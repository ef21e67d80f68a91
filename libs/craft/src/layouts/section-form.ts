import { type FoldScheme } from '../imposition/catalogue.js';
import { type PagePlace, pagesByFolding } from '../imposition/number-pages.js';
import { addRotation, type Edge, type Rect, turnedEdge, turnedSize } from './geometry.js';

export interface Trims {
  headMm: number;
  footMm: number;
  faceMm: number;
  /** Ground off the spine before it is glued; 0 where sections are stitched through the fold. */
  spineMm: number;
}

/** A leaf of a section on its unfolded form: the trimmed page, as the front lies, and where its spine and face are. */
export interface FormLeaf {
  column: number;
  row: number;
  front: PagePlace;
  back: PagePlace;
  rect: Rect;
  spine: Edge;
  face: Edge;
}

/**
 * The unfolded form of one section without outer margins, upright as the scheme draws it: origin at the lower-left
 * trimmed page corner.
 */
export interface SectionForm {
  scheme: FoldScheme;
  pages: number;
  widthMm: number;
  heightMm: number;
  leaves: FormLeaf[];
  /** Fold lines between columns and rows, from the origin; line i lies right of column i or above row i. */
  columnLinesMm: number[];
  rowLinesMm: number[];
  /** Trim that each outer edge of the form needs. */
  outerTrimMm: Record<Edge, number>;
  trims: Trims;
}

function spineOf(place: PagePlace): Edge {
  return turnedEdge(place.page % 2 === 1 ? 'left' : 'right', place.rotation);
}

/** Trim at each side of a leaf: what is ground off at the spine, the face trim opposite, head and foot by where the head points. */
function trimAt(leaf: { front: PagePlace; spine: Edge; face: Edge }, edge: Edge, trims: Trims): number {
  if (edge === leaf.spine) return trims.spineMm;
  if (edge === leaf.face) return trims.faceMm;
  return edge === turnedEdge('upper', leaf.front.rotation) ? trims.headMm : trims.footMm;
}

function sizesAndGaps(
  count: number,
  size: (index: number) => number,
  gap: (index: number) => { before: number; after: number },
) {
  const starts: number[] = [];
  const lines: number[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    starts.push(at);
    at += size(i);
    if (i < count - 1) {
      const { before, after } = gap(i);
      lines.push(at + before);
      at += before + after;
    }
  }
  return { starts, lines, total: at };
}

/**
 * Lays the pages of a fold scheme out with the trims that folding and trimming need: imposed size = pages + face trims
 * across, + head and foot trims along (handbook t02-imposed-size; lip and outer margins are added when it is placed).
 */
export function sectionForm(
  scheme: FoldScheme,
  trimWidthMm: number,
  trimHeightMm: number,
  trims: Trims,
): SectionForm | null {
  const places = pagesByFolding(scheme.columns, scheme.rows, scheme.folds, scheme.countFrom);
  if (places === null) return null;
  const fronts = places.filter((p) => p.side === 'front');
  const bare = fronts.flatMap((front) => {
    const back = places.find((p) => p.side === 'back' && p.column === front.column && p.row === front.row);
    if (back === undefined) return [];
    const spine = spineOf(front);
    return [{ column: front.column, row: front.row, front, back, spine, face: turnedEdge(spine, 180) }];
  });
  const size = (p: PagePlace): [number, number] => turnedSize(trimWidthMm, trimHeightMm, p.rotation);
  const largest = (picked: typeof bare, edge: Edge): number =>
    Math.max(0, ...picked.map((leaf) => trimAt(leaf, edge, trims)));
  const column = (c: number) => bare.filter((leaf) => leaf.column === c);
  const row = (r: number) => bare.filter((leaf) => leaf.row === r);
  const across = sizesAndGaps(
    scheme.columns,
    (c) => Math.max(...column(c).map((leaf) => size(leaf.front)[0])),
    (c) => ({ before: largest(column(c), 'right'), after: largest(column(c + 1), 'left') }),
  );
  const along = sizesAndGaps(
    scheme.rows,
    (r) => Math.max(...row(r).map((leaf) => size(leaf.front)[1])),
    (r) => ({ before: largest(row(r), 'upper'), after: largest(row(r + 1), 'lower') }),
  );
  const leaves = bare.map((leaf): FormLeaf => {
    const [widthMm, heightMm] = size(leaf.front);
    const rect = {
      xMm: across.starts[leaf.column] ?? 0,
      yMm: along.starts[leaf.row] ?? 0,
      widthMm,
      heightMm,
    };
    return { ...leaf, rect };
  });
  return {
    scheme,
    pages: places.length,
    widthMm: across.total,
    heightMm: along.total,
    leaves,
    columnLinesMm: across.lines,
    rowLinesMm: along.lines,
    outerTrimMm: {
      left: largest(column(0), 'left'),
      right: largest(column(scheme.columns - 1), 'right'),
      lower: largest(row(0), 'lower'),
      upper: largest(row(scheme.rows - 1), 'upper'),
    },
    trims,
  };
}

/** Heads of the pages of a form turned by `rotation`: the axis of the spine is the same for all of them. */
export function formHead(form: SectionForm, rotation: 0 | 90 | 180 | 270): 0 | 90 | 180 | 270 {
  return addRotation(form.leaves[0]?.front.rotation ?? 0, rotation);
}

/**
 * The two ways to give the stitcher a lip: the innermost leaf of the high (or low) half stands out beyond the other
 * half. `edge` is the outer edge of the form at which that leaf's face lies, `against` the outer edges at which faces of
 * the other half lie.
 */
export interface LipPlace {
  on: 'high' | 'low';
  edge: Edge;
  against: Edge[];
}

function outerFace(form: SectionForm, leaf: FormLeaf): Edge | null {
  const { columns, rows } = form.scheme;
  const outer: Record<Edge, boolean> = {
    left: leaf.column === 0,
    right: leaf.column === columns - 1,
    lower: leaf.row === 0,
    upper: leaf.row === rows - 1,
  };
  return outer[leaf.face] ? leaf.face : null;
}

export function lipPlaces(form: SectionForm): LipPlace[] {
  const half = form.pages / 2;
  const isHigh = (leaf: FormLeaf): boolean => leaf.front.page > half;
  const innermost = { high: half + 1, low: half };
  return (['high', 'low'] as const).flatMap((on) => {
    const leaf = form.leaves.find((l) => l.front.page === innermost[on] || l.back.page === innermost[on]);
    const edge = leaf === undefined ? null : outerFace(form, leaf);
    if (edge === null) return [];
    const others = form.leaves.filter((l) => isHigh(l) !== (on === 'high'));
    const against = [...new Set(others.map((l) => outerFace(form, l)))].filter((e) => e !== null);
    return against.includes(edge) ? [] : [{ on, edge, against }];
  });
}
