import type { PlanStep } from '#libs/craft';
import type { Resource, Step } from '../../state/ticket.js';
import { isDivided } from '../build/components.js';
import type { ExchangeName, LinkAmount, StepScope } from '../process-type.js';

interface Exchanged {
  readonly scope: StepScope;
  readonly step: Step;
  readonly from: PlanStep;
  readonly row: Resource;
  readonly name: ExchangeName;
  /** State what is really there, once it is, instead of what was planned. */
  readonly real: boolean;
}

/** Amounts of an input that an earlier step made. Data has none. */
export function exchangedInput({ scope, step, from, row, name, real }: Exchanged): readonly LinkAmount[] {
  if (name === 'RunList') return [];
  const there = real && row.status !== 'Unavailable' ? row.produced : undefined;
  const planned = there ?? scope.step.inputs.find((input) => input.from === from.id)?.amount ?? row.planned;
  const fed = step.good + step.waste + step.samples;
  // Counts are in pieces that come out: only where one goes in for each do they say what was fed.
  const countable = name === 'Component' && fed > 0 && !isDivided(scope.plan, scope.step);
  return [countable ? { planned, good: fed - step.waste, waste: step.waste } : { planned }];
}

/** Amounts of what a step makes: planned, and good and waste once it counted. */
export function madeAmounts(step: Step, row: Resource, name: ExchangeName): readonly LinkAmount[] {
  if (name === 'RunList') return [];
  const counted = step.good + step.waste > 0 || step.status === 'Completed' || step.status === 'Aborted';
  return [counted ? { planned: row.planned, good: step.good, waste: step.waste } : { planned: row.planned }];
}
