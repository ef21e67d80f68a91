import {
  canMakeFolds,
  devicesOf,
  type FolderDefinition,
  foldScheme,
  heaviestToFold,
  type Plant,
} from '#libs/craft';
import { attributeOf, childElements, type Findings, pagesOfFoldCode, type XmlElement } from '#libs/jdf';
import { type Demand, tellDemands } from './limits.js';
import { type Given, inMm, lengthMm, numbersOf, TOLERANCE_MM, type Work } from './work.js';

const FOLDING = 'Folding';

type FolderDemand = Demand<FolderDefinition>;

/**
 * Warns of pieces and folds of a folding node that no folder of the plant takes: format (FoldingParams FoldSheetIn, or
 * Component Dimensions), units for the folds (Fold, FoldCatalog), and weight of the paper by number of folds.
 */
export function checkFolding(plant: Plant, work: Work, findings: Findings): void {
  const params = work.taken(FOLDING, 'FoldingParams');
  const pieces = work.taken(FOLDING, 'Component');
  const folds = params.map(({ at, el }) => ({ at, ...foldsOf(el) }));
  const stated = params.filter(({ el }) => attributeOf(el, 'FoldSheetIn') !== undefined);
  const demands = [
    ...stated.flatMap((one) => pieceDemands(one, 'FoldSheetIn')),
    ...(stated.length > 0 ? [] : pieces.flatMap((one) => pieceDemands(one, 'Dimensions'))),
    ...folds.flatMap(unitDemands),
    ...pieces.flatMap((one) => weightDemands(work, one, Math.min(...folds.map(({ least }) => least)))),
  ];
  tellDemands(devicesOf(plant, 'folder'), work.node, demands, findings);
}

function pieceDemands({ at, el }: Given, name: string): FolderDemand[] {
  const [x, y] = [lengthMm(el, name), lengthMm(el, name, 1)];
  if (x === 0 || y === 0) return [];
  const can = (folder: FolderDefinition) => takes(folder, x, y) || takes(folder, y, x);
  return [{ at, what: `takes a piece of ${inMm(x, y)}`, can, limit: formatOf }];
}

const formatOf = (one: FolderDefinition): string =>
  `${inMm(one.minSheetWidthMm, one.minSheetLengthMm)} to ${inMm(one.maxSheetWidthMm, one.maxSheetLengthMm)}`;

function takes(folder: FolderDefinition, acrossMm: number, alongMm: number): boolean {
  return (
    acrossMm <= folder.maxSheetWidthMm + TOLERANCE_MM &&
    alongMm <= folder.maxSheetLengthMm + TOLERANCE_MM &&
    acrossMm >= folder.minSheetWidthMm - TOLERANCE_MM &&
    alongMm >= folder.minSheetLengthMm - TOLERANCE_MM
  );
}

interface Folds {
  /** The folds in their order; undefined where only their number can be told. */
  readonly moves: readonly { readonly axis: 'x' | 'y' }[] | undefined;
  /** How many there are at least. */
  readonly least: number;
  readonly code: string;
}

/** Folds that are written out win over the code of the catalogue. */
function foldsOf(params: XmlElement): Folds {
  const code = attributeOf(params, 'FoldCatalog')?.trim() ?? '';
  const written = childElements(params, 'Fold').map((fold) => attributeOf(fold, 'From') === 'Left');
  const known = foldScheme(code)?.folds.map(({ moves }) => moves === 'left');
  const fromLeft = written.length > 0 ? written : known;
  if (fromLeft !== undefined) {
    return { moves: fromLeft.map((left) => ({ axis: left ? 'y' : 'x' })), least: fromLeft.length, code };
  }
  // A fold doubles the leaves that lie on one another at most.
  const leaves = (pagesOfFoldCode(code) ?? 2) / 2;
  return { moves: undefined, least: Math.ceil(Math.log2(leaves)), code };
}

function unitDemands({ at, moves, least, code }: Folds & { readonly at: XmlElement }): FolderDemand[] {
  if (least === 0) return [];
  const by = code === '' ? '' : ` of ${code.slice(0, 40)}`;
  if (moves === undefined) {
    const what = `has units for the ${least} folds or more${by}`;
    const can = (folder: FolderDefinition) => least <= unitCount(folder);
    return [{ at, what, can, limit: unitsOf }];
  }
  const order = moves.map(({ axis }) => (axis === 'y' ? 'Left' : 'Front')).join(', ');
  const what = `has units for the ${least} fold${least === 1 ? '' : 's'}${by} in this order: ${order}`;
  return [{ at, what, can: (folder) => canMakeFolds(folder, moves), limit: unitsOf }];
}

const unitCount = ({ units }: FolderDefinition): number => units.reduce((sum, { count }) => sum + count, 0);

const unitsOf = ({ units }: FolderDefinition): string =>
  units.map(({ kind, count }) => `${count} × ${kind}`).join(', then ');

function weightDemands(work: Work, piece: Given, folds: number): FolderDemand[] {
  if (!Number.isFinite(folds) || folds === 0) return [];
  return work.mediaOf(piece).flatMap((media) => {
    const [gsm = 0] = numbersOf(media, 'Weight');
    const what = `folds paper of ${gsm} g/m² ${folds === 1 ? 'once' : `${folds} times`}`;
    const can = (folder: FolderDefinition) => gsm <= heaviestToFold(folder, folds);
    const limit = (folder: FolderDefinition) => `${heaviestToFold(folder, folds)} g/m²`;
    return gsm > 0 ? [{ at: piece.at, what, can, limit }] : [];
  });
}
