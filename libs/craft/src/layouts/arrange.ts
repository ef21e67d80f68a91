/** What one direction of a sheet asks of the blocks that stand in it side by side, mm. */
export interface AxisWant {
  sheetMm: number;
  /** Trimmed pages and what lies between them, without outer margins. */
  contentMm: number;
  count: number;
  /** Margin at the side of the lay (left, gripper): at the sheet edge, and at a cut between two blocks. */
  layEdgeMm: number;
  layCutMm: number;
  farCutMm: number;
  farEdgeMm: number;
  /** One margin must exceed the other by the lip. */
  lip: { at: 'lay' | 'far'; mm: number; against: 'otherMargin' | 'inside'; insideMm: number } | null;
  /** Spread what is left over all margins, or leave it at the far edge. */
  spread: boolean;
}

export interface AxisBlock {
  startMm: number;
  sizeMm: number;
  /** Of the trimmed pages, from the start of the block. */
  contentStartMm: number;
}

/**
 * Stands `count` blocks side by side. All have the same margin at their lay side, so that one folder setting serves
 * them all. Null when they do not fit.
 */
export function arrangeAxis(want: AxisWant): AxisBlock[] | null {
  let lay = Math.max(want.layEdgeMm, want.count > 1 ? want.layCutMm : 0);
  let far = want.farCutMm;
  let farLast = Math.max(want.farEdgeMm, want.farCutMm);
  if (want.lip !== null) {
    const { at, mm, against, insideMm } = want.lip;
    if (at === 'lay') {
      const other = against === 'inside' ? insideMm : Math.max(far, farLast);
      lay = Math.max(lay, other + mm);
    } else {
      const other = against === 'inside' ? insideMm : lay;
      far = Math.max(far, other + mm);
      farLast = Math.max(farLast, far);
    }
  }
  const least = want.count * (lay + want.contentMm) + (want.count - 1) * far + farLast;
  const spare = want.sheetMm - least;
  if (spare < -1e-9) return null;
  const share = want.spread ? spare / (2 * want.count) : 0;
  const pitch = lay + want.contentMm + far + 2 * share;
  return Array.from({ length: want.count }, (_, i) => {
    const startMm = i * pitch;
    const last = i === want.count - 1;
    return { startMm, sizeMm: last ? want.sheetMm - startMm : pitch, contentStartMm: lay + share };
  });
}

/** Most blocks that could stand in a direction, by their content alone. */
export function mostBlocks(sheetMm: number, contentMm: number): number {
  return Math.max(0, Math.floor(sheetMm / contentMm));
}
