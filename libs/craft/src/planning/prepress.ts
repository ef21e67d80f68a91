import { devicesOf } from '../plant.js';
import { addStep, type Draft } from './draft.js';
import type { Job } from './job.js';

/** Adds the first step: pages are imposed and turned into separations. Amounts are set when all plates are known. */
export function addPrepress(draft: Draft, job: Job): void {
  const station = devicesOf(job.plant, 'prepress')[0];
  addStep(draft, {
    id: 'prepress',
    types: ['Stripping', 'Imposition', 'Interpreting', 'Rendering', 'Screening'],
    device: station?.id ?? 'prepress',
    setupS: station?.setupS ?? 0,
    runS: 0,
    inAmount: 0,
    inUnit: 'plates',
    outAmount: 0,
    unit: 'plates',
    inputs: [],
  });
}

/** Sets the amounts and the time of prepress once every sheet is there. */
export function settlePrepress(draft: Draft, job: Job): void {
  const station = devicesOf(job.plant, 'prepress')[0];
  const step = draft.steps.find((s) => s.id === 'prepress');
  if (step === undefined || station === undefined) return;
  const plates = draft.plateList.length;
  step.inAmount = plates;
  step.outAmount = plates;
  step.runS = (job.body.pages + (job.cover?.pages ?? 0)) * station.perPageS + plates * station.perPlateS;
}
