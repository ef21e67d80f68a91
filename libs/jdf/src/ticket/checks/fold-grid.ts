import { type Findings, parseNumber, type XYPair, xyPair } from '../../codec/index.js';
import {
  effectivePart,
  type Partition,
  partitionLeaves,
  partsOf,
  subElements,
} from '../../partition/index.js';
import { pagesOfFoldCode } from '../../standard/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { SLACK_POINTS } from './look-up/boxes.js';
import { placesOf } from './look-up/places.js';
import { paperOf } from './look-up/sizes.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * The cells of a signature (BinderySignature NumberUp, FoldCatalog; StripCellParams TrimSize and the strips that are
 * trimmed off) need no more room than there is where it lies (StrippingParams Position, Media Dimension).
 */
export const foldGrid: TicketCheck = {
  number: 18,
  name: 'cells on the sheet',
  run({ doc, nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) {
        if (resource.local !== 'StrippingParams') continue;
        for (const leaf of partitionLeaves(resource)) checkLeaf(doc, leaf, findings);
      }
    }
  },
};

/** Cells that lie side by side: how many of what size, in points. */
interface Cells {
  readonly size: XYPair;
  readonly count: number;
  /** Columns and rows; undefined where only their number is known. */
  readonly grid: XYPair | undefined;
}

function checkLeaf(doc: XmlDocument, leaf: Partition, findings: Findings): void {
  // Parts of one cell each, of which every one may have a size of its own.
  if (leaf.keys.CellIndex !== undefined) return;
  const part = effectivePart(leaf);
  const cells = cellsOf(doc, part);
  const paper = paperOf(doc, leaf.chain);
  if (cells === undefined || paper === undefined || paper.x <= 0 || paper.y <= 0) return;
  for (const { position, share } of placesOf(part, paper) ?? []) {
    const room = { x: (share.urx - share.llx) * paper.x, y: (share.ury - share.lly) * paper.y };
    if (fits(cells, room)) continue;
    const { size, count, grid } = cells;
    const what = grid === undefined ? `${count} cells` : `${grid.x} × ${grid.y} cells`;
    findings.warning(
      'JDF_GEOMETRY',
      position ?? leaf.chain.at(-1)!,
      `${what} of ${inWords(size)} points do not go into ${inWords(room)}.`,
      'Correct TrimSize and what is trimmed off in StripCellParams, NumberUp, or the place.',
    );
  }
}

function cellsOf(doc: XmlDocument, part: XmlElement): Cells | undefined {
  const [signature, ...others] = subElements(doc, part, 'BinderySignature');
  const [cell] = childElements(part, 'StripCellParams');
  if (signature === undefined || cell === undefined || others.length > 0) return undefined;
  // A signature of several webs: each has its own cells.
  if (partsOf(signature).length > 0) return undefined;
  const trim = xyPair.read(attributeOf(cell, 'TrimSize') ?? '');
  const pages = pagesOfFoldCode(attributeOf(signature, 'FoldCatalog') ?? '');
  const stated = xyPair.read(attributeOf(signature, 'NumberUp') ?? '');
  const grid = stated && (pages ?? 2 * stated.x * stated.y) === 2 * stated.x * stated.y ? stated : undefined;
  const count = grid === undefined ? (pages ?? 0) / 2 : grid.x * grid.y;
  if (trim === undefined || count === 0) return undefined;
  const off = (...names: string[]) =>
    names.reduce((sum, name) => sum + (parseNumber(attributeOf(cell, name) ?? '') ?? 0), 0);
  const [width, height] = [trim.x + off('TrimFace', 'Spine'), trim.y + off('TrimHead', 'TrimFoot')];
  const size = isTurned(signature) ? { x: height, y: width } : { x: width, y: height };
  return { size, count, grid };
}

/** Cells whose heads point to a side of the sheet take their height across it. */
function isTurned(signature: XmlElement): boolean {
  return childElements(signature, 'SignatureCell').some((cell) =>
    ['Left', 'Right'].includes(attributeOf(cell, 'Orientation')?.trim() ?? ''),
  );
}

/** Either way round: how a signature is turned on its sheet is said in several places, or nowhere. */
function fits({ size, count, grid }: Cells, room: XYPair): boolean {
  if (grid === undefined) return size.x * size.y * count <= room.x * room.y * 1.001;
  const [across, along] = [grid.x * size.x - SLACK_POINTS, grid.y * size.y - SLACK_POINTS];
  return (across <= room.x && along <= room.y) || (across <= room.y && along <= room.x);
}

const inWords = ({ x, y }: XYPair): string => [x, y].map((side) => Math.round(side * 10) / 10).join(' × ');
