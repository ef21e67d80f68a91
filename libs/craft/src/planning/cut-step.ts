import { planLift } from '../cutting/lifts.js';
import { type CutJob, type CutProgramme, cutProgramme, type WantedPiece } from '../cutting/programme.js';
import type { PlanSheet, PlanStep } from '../plan.js';
import { devicesOf, type GuillotineDefinition, type Plant } from '../plant.js';
import { addStep, type Draft } from './draft.js';
import type { PartJob } from './job.js';

/** The guillotine that takes a sheet with its longer side across. */
export function guillotineFor(plant: Plant, longSideMm: number): GuillotineDefinition | null {
  return devicesOf(plant, 'guillotine').find((g) => g.cutWidthMm >= longSideMm) ?? null;
}

export interface CutWork {
  guillotine: GuillotineDefinition;
  sheet: PlanSheet;
  pieces: readonly WantedPiece[];
  trimmed: boolean;
  print: PlanStep;
  outAmount: number;
  unit: 'copies' | 'blocks';
  /** Longer wait than before cutting that the next step needs. */
  waitAfterS: number;
}

/** Adds the programme, the lifts and the step of one sheet on the guillotine, or says why there is no programme. */
export function addCutting(
  draft: Draft,
  job: PartJob,
  work: CutWork,
): { step: PlanStep; programme: CutProgramme } | string {
  const { guillotine, sheet } = work;
  const cutJob: CutJob = {
    sheet: sheet.name,
    sheetWidthMm: sheet.sheetWidthMm,
    sheetHeightMm: sheet.sheetHeightMm,
    pieces: work.pieces,
    trimmed: work.trimmed,
    minGaugeMm: guillotine.minGaugeMm,
    perCutS: guillotine.perCutS,
    perTurnS: guillotine.perTurnS,
  };
  const programme = cutProgramme(cutJob);
  if (typeof programme === 'string') return `${guillotine.name}: ${programme}`;
  const sheetsIn = work.print.outAmount;
  const lift = planLift(
    guillotine,
    job.part.stock,
    sheet.name,
    sheet.sheetWidthMm,
    sheet.sheetHeightMm,
    sheetsIn,
  );
  draft.cuts.push(...programme.cuts);
  draft.lifts.push(lift);
  const id = sheet.name.replace('S', 'cut-');
  draft.overs.push({ step: id, ...guillotine.overs });
  const step = addStep(draft, {
    id,
    types: ['Cutting'],
    device: guillotine.id,
    sheet: sheet.name,
    setupS: guillotine.setupS,
    runS: Math.round(lift.count * (guillotine.perLiftS + programme.seconds)),
    waitAfterS: work.waitAfterS,
    inAmount: sheetsIn,
    inUnit: 'sheets',
    outAmount: work.outAmount,
    unit: work.unit,
    inputs: [{ from: work.print.id, amount: sheetsIn, unit: 'sheets' }],
  });
  return { step, programme };
}
