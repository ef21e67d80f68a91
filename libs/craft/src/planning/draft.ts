import type { Plan, PlanInput, PlanStep } from '../plan.js';
import type { PressState, PressStates } from '../plant.js';

/** A plan in the making: what sheets and finishing add to, one after the other. */
export interface Draft
  extends Pick<
    Plan,
    | 'signatures'
    | 'sheets'
    | 'steps'
    | 'plateList'
    | 'changeovers'
    | 'blocks'
    | 'cuts'
    | 'lifts'
    | 'folding'
    | 'cautions'
  > {
  overs: Plan['overs']['lines'];
  /** What each press holds after the sheets so far. */
  pressStates: Map<string, PressState>;
  /** Some spine lies across the grain. */
  acrossGrain: boolean;
}

export function newDraft(held: PressStates): Draft {
  return {
    signatures: [],
    sheets: [],
    steps: [],
    plateList: [],
    changeovers: [],
    blocks: [],
    cuts: [],
    lifts: [],
    folding: [],
    cautions: [],
    overs: [],
    pressStates: new Map(held),
    acrossGrain: false,
  };
}

export function caution(draft: Draft, text: string): void {
  if (!draft.cautions.includes(text)) draft.cautions.push(text);
}

/** A step whose predecessors are the steps that its inputs come from. */
export function addStep(
  draft: Draft,
  step: Omit<PlanStep, 'after' | 'inputs' | 'waitAfterS'> & { inputs: PlanInput[]; waitAfterS?: number },
): PlanStep {
  const full: PlanStep = {
    ...step,
    waitAfterS: step.waitAfterS ?? 0,
    after: [...new Set(step.inputs.map((i) => i.from))],
  };
  draft.steps.push(full);
  return full;
}
