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
  /** Spread what is left over all margins, or leave it at the far edge; a lip against the other margin is kept. */
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
  const [layShare, farShare] = shares(want, spare, lay, farLast);
  lay += layShare;
  far += farShare;
  const pitch = lay + want.contentMm + far;
  return Array.from({ length: want.count }, (_, i) => {
    const startMm = i * pitch;
    const last = i === want.count - 1;
    return { startMm, sizeMm: last ? want.sheetMm - startMm : pitch, contentStartMm: lay };
  });
}

/**
 * What each block's two margins get of the room that is left. One block is centred where it may be; where one margin
 * must keep its lip over the other, both get the same, or the lip would be lost.
 */
function shares(want: AxisWant, spare: number, lay: number, farLast: number): [number, number] {
  const even = spare / (2 * want.count);
  if (want.lip?.against === 'otherMargin') return [even, even];
  if (!want.spread) return [0, 0];
  if (want.count > 1) return [even, even];
  const layShare = Math.min(spare, Math.max(0, (farLast + spare - lay) / 2));
  return [layShare, spare - layShare];
}

/** Most blocks that could stand in a direction, by their content alone. */
export function mostBlocks(sheetMm: number, contentMm: number): number {
  return Math.max(0, Math.floor(sheetMm / contentMm));
}
