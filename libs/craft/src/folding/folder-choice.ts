import type { PlanFold } from '../plan.js';
import type { FolderDefinition } from '../plant.js';
import type { FoldMove } from './instructions.js';

/** A folder set for a section: which unit makes which fold, and how long it takes. */
export interface FolderSetting {
  folder: FolderDefinition;
  folds: PlanFold[];
  setupS: number;
  sheetsPerHour: number;
  /** Too heavy to be folded as it is: the folder creases it first. */
  creased: boolean;
}

/** The direction of a fold, all that decides which units can make it. */
type Axis = Pick<FoldMove, 'axis'>;

/** Units for the folds in their order: each change of direction goes on to the next group of units. */
function unitsFor(folder: FolderDefinition, moves: readonly Axis[]): string[] | null {
  const names: string[] = [];
  const used: Record<string, number> = {};
  let group = -1;
  let inGroup = 0;
  let axis: string | null = null;
  for (const move of moves) {
    if (move.axis !== axis) {
      group += 1;
      inGroup = 0;
      axis = move.axis;
    }
    const units = folder.units[group];
    if (units === undefined || inGroup >= units.count) return null;
    inGroup += 1;
    used[units.kind] = (used[units.kind] ?? 0) + 1;
    names.push(`${units.kind} ${used[units.kind]}`);
  }
  return names;
}

/** Set-up time row of a scheme: `parallelN` when all folds are parallel, else `rightAngleN`. */
function setupRow(moves: readonly Axis[]): string {
  const parallel = moves.every((m) => m.axis === moves[0]?.axis);
  return `${parallel ? 'parallel' : 'rightAngle'}${moves.length}`;
}

/** Whether a folder has a unit for each of some folds in their order, and a row of set-up time for them. */
export function canMakeFolds(folder: FolderDefinition, moves: readonly Axis[]): boolean {
  return unitsFor(folder, moves) !== null && folder.setupS[setupRow(moves)] !== undefined;
}

/** Heaviest paper, g/m², that a folder folds so many times. */
export function heaviestToFold(folder: FolderDefinition, folds: number): number {
  return folder.maxGsmByFolds[Math.min(folds, folder.maxGsmByFolds.length) - 1] ?? 0;
}

/**
 * Sets a folder for the folds of a section, or says why it cannot. The piece is fed so that its first crease lies across
 * the feed; limits are those of the plant definition (grammage by number of folds is a setting of each folder).
 */
export function setFolder(
  folder: FolderDefinition,
  moves: readonly FoldMove[],
  gsm: number,
): FolderSetting | string {
  const first = moves[0];
  if (first === undefined) return `${folder.name} has nothing to fold`;
  const { pieceAcrossMm: across, pieceAlongMm: along } = first;
  if (across > folder.maxSheetWidthMm || along > folder.maxSheetLengthMm) {
    return `${folder.name} takes ${folder.maxSheetWidthMm} × ${folder.maxSheetLengthMm} mm at most, the piece is ${across} × ${along} mm`;
  }
  if (across < folder.minSheetWidthMm || along < folder.minSheetLengthMm) {
    return `${folder.name} takes ${folder.minSheetWidthMm} × ${folder.minSheetLengthMm} mm at least, the piece is ${across} × ${along} mm`;
  }
  const limit = heaviestToFold(folder, moves.length);
  // Paper that must be creased is folded once: more folds break it (common practice, no source).
  const creased = gsm > limit && folder.scoring === true && moves.length === 1;
  if (gsm > limit && !creased) {
    return `${folder.name} folds paper up to ${limit} g/m² ${moves.length} times, the stock has ${gsm} g/m²`;
  }
  const units = unitsFor(folder, moves);
  const setupS = folder.setupS[setupRow(moves)];
  if (units === null || setupS === undefined) {
    return `${folder.name} has no units for this order of ${moves.length} folds`;
  }
  if (first.travelMm > folder.plateStopMaxMm) {
    return `${folder.name} can stop a sheet ${folder.plateStopMaxMm} mm inside its first plate at most, the fold needs ${first.travelMm} mm`;
  }
  const folds = moves.map(
    (move, i): PlanFold => ({
      order: i + 1,
      axis: move.axis,
      positionMm: move.positionMm,
      moves: move.moves,
      direction: move.direction,
      fold: {
        from: move.axis === 'y' ? 'Left' : 'Front',
        to: move.direction === 'over' ? 'Up' : 'Down',
        travelMm: move.travelMm,
      },
      stopMm: move.travelMm,
      unit: units[i] ?? '',
    }),
  );
  const mPerHour = folder.infeedMPerMin * 60 * folder.speedFactor;
  return { folder, folds, setupS, creased, sheetsPerHour: (mPerHour * 1000) / (along + folder.gapMm) };
}
