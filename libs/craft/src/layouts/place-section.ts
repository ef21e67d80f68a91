import { roundTo } from '#libs/kernel';
import type { Rotation } from '../plan.js';
import { type AxisWant, arrangeAxis, mostBlocks } from './arrange.js';
import { type Edge, oppositeRotation, type Rect, turnedEdge, turnedSize } from './geometry.js';
import { outerMargins, type Printable } from './printable.js';
import { type FormLeaf, type LipPlace, lipPlaces, type SectionForm } from './section-form.js';

/** A part of the sheet that is folded into one section. */
export interface SectionBlock extends Rect {
  column: number;
  row: number;
  /** Lower-left trimmed page corner, from the corner of the block. */
  contentXMm: number;
  contentYMm: number;
}

/** Where the sections stand on a sheet. */
export interface SectionLayout {
  form: SectionForm;
  area: Printable;
  rotation: Rotation;
  across: number;
  along: number;
  blocks: SectionBlock[];
  bleedMm: number;
  /** What the narrower half of the folded section leaves for the stitcher to open it by; 0: no lip. */
  lipMm: number;
  lipOn: 'high' | 'low' | null;
}

export interface SectionWant {
  form: SectionForm;
  area: Printable;
  bleedMm: number;
  minBleedMm: number;
  /** Lip that the stitcher needs; 0 where it opens by suckers. */
  lipMm: number;
}

const rotations: readonly Rotation[] = [0, 90, 180, 270];

function axisWant(
  want: SectionWant,
  rotation: Rotation,
  lip: LipPlace | null,
  axis: 'x' | 'y',
  count: number,
): AxisWant {
  const [laySide, farSide]: [Edge, Edge] = axis === 'x' ? ['left', 'right'] : ['lower', 'upper'];
  const { form, area } = want;
  const back = oppositeRotation(rotation);
  const trim = (edge: Edge): number => Math.max(form.outerTrimMm[turnedEdge(edge, back)], want.bleedMm);
  const outer = outerMargins(area, want.bleedMm, want.minBleedMm);
  const [width, height] = turnedSize(form.widthMm, form.heightMm, rotation);
  const lipEdge = lip === null ? null : turnedEdge(lip.edge, rotation);
  const at = lipEdge === laySide ? 'lay' : lipEdge === farSide ? 'far' : null;
  const against = lip?.against.some((e) => turnedEdge(e, rotation) === (at === 'lay' ? farSide : laySide));
  return {
    sheetMm: axis === 'x' ? area.sheetWidthMm : area.sheetHeightMm,
    contentMm: axis === 'x' ? width : height,
    count,
    layEdgeMm: Math.max(outer[laySide], trim(laySide)),
    layCutMm: trim(laySide),
    farCutMm: trim(farSide),
    farEdgeMm: Math.max(outer[farSide], trim(farSide)),
    lip:
      at === null
        ? null
        : {
            at,
            mm: want.lipMm,
            against: against === true ? 'otherMargin' : 'inside',
            insideMm: form.trims.faceMm,
          },
    spread: axis === 'x',
  };
}

/** Every way to stand one or more blocks of the section on the sheet, in each of the four rotations. */
export function sectionLayouts(want: SectionWant): SectionLayout[] {
  const { form, area } = want;
  const lips: (LipPlace | null)[] = want.lipMm > 0 ? lipPlaces(form) : [null];
  return rotations.flatMap((rotation) =>
    lips.flatMap((lip) => {
      const [width, height] = turnedSize(form.widthMm, form.heightMm, rotation);
      const found: SectionLayout[] = [];
      for (let across = 1; across <= mostBlocks(area.sheetWidthMm, width); across++) {
        for (let along = 1; along <= mostBlocks(area.sheetHeightMm, height); along++) {
          const layout = layoutOf(want, rotation, lip, across, along);
          if (layout !== null) found.push(layout);
        }
      }
      return found;
    }),
  );
}

function layoutOf(
  want: SectionWant,
  rotation: Rotation,
  lip: LipPlace | null,
  across: number,
  along: number,
): SectionLayout | null {
  const xs = arrangeAxis(axisWant(want, rotation, lip, 'x', across));
  const ys = arrangeAxis(axisWant(want, rotation, lip, 'y', along));
  if (xs === null || ys === null) return null;
  const blocks = ys.flatMap((y, row) =>
    xs.map(
      (x, column): SectionBlock => ({
        column,
        row,
        xMm: x.startMm,
        yMm: y.startMm,
        widthMm: x.sizeMm,
        heightMm: y.sizeMm,
        contentXMm: x.contentStartMm,
        contentYMm: y.contentStartMm,
      }),
    ),
  );
  const layout: SectionLayout = {
    form: want.form,
    area: want.area,
    rotation,
    across,
    along,
    blocks,
    bleedMm: want.bleedMm,
    lipMm: 0,
    lipOn: lip?.on ?? null,
  };
  if (lip === null) return layout;
  const lipMm = roundTo(lipOfLayout(layout, lip), 3);
  return lipMm < want.lipMm ? null : { ...layout, lipMm };
}

/** Paper beyond the face of a trimmed page once the section is folded: up to the block edge, or to the fold. */
function faceExtentMm(layout: SectionLayout, block: SectionBlock, leaf: FormLeaf): number {
  const { columns, rows } = layout.form.scheme;
  const outer: Record<Edge, boolean> = {
    left: leaf.column === 0,
    right: leaf.column === columns - 1,
    lower: leaf.row === 0,
    upper: leaf.row === rows - 1,
  };
  if (!outer[leaf.face]) return layout.form.trims.faceMm;
  const [width, height] = turnedSize(layout.form.widthMm, layout.form.heightMm, layout.rotation);
  const margins: Record<Edge, number> = {
    left: block.contentXMm,
    right: block.widthMm - block.contentXMm - width,
    lower: block.contentYMm,
    upper: block.heightMm - block.contentYMm - height,
  };
  return margins[turnedEdge(leaf.face, layout.rotation)];
}

function lipOfLayout(layout: SectionLayout, lip: LipPlace): number {
  const half = layout.form.pages / 2;
  const innermost = lip.on === 'high' ? half + 1 : half;
  const lips = layout.blocks.map((block) => {
    const extents = layout.form.leaves.map((leaf) => ({ leaf, mm: faceExtentMm(layout, block, leaf) }));
    const inner = extents.find((e) => e.leaf.front.page === innermost || e.leaf.back.page === innermost);
    const others = extents.filter((e) => e.leaf.front.page > half !== (lip.on === 'high'));
    return (inner?.mm ?? 0) - Math.max(...others.map((e) => e.mm));
  });
  return Math.min(...lips);
}
