import { piecesToFeed, roundTo } from '#libs/kernel';

/** A step seen from its output: how many pieces it makes of one fed, what it spends on set-up and loses running. */
export interface OversStep {
  step: string;
  setupSheets: number;
  runningPct: number;
  /** Pieces that come out of one fed (n-up cutting); 1 where left out. */
  outPerIn?: number;
}

export interface OversAmount {
  step: string;
  out: number;
  in: number;
}

/**
 * Carries a wanted amount back from finishing to the press. Convention onInput: in = ceil(out ÷ (1 − running share)) +
 * set-up, rounded up after every step; a step that makes n pieces of one divides and rounds up first. `steps` stand in
 * the order finishing → press. Source: trade handbook, spoilage chain (t03).
 */
export function oversChain(wanted: number, steps: readonly OversStep[]): OversAmount[] {
  let out = wanted;
  return steps.map((step) => {
    const fed = Math.ceil(roundTo(out / (step.outPerIn ?? 1), 9));
    const amount = { step: step.step, out, in: piecesToFeed(fed, step.runningPct, step.setupSheets) };
    out = amount.in;
    return amount;
  });
}
