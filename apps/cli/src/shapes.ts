import type { Problem } from '#libs/kernel';

/** As the server gives them. */
export interface StepJson {
  readonly id: string;
  readonly types: readonly string[];
  readonly status: string;
  readonly statusDetails: string | null;
  readonly activation: string;
  readonly device: string | null;
  readonly good: number;
  readonly waste: number;
  readonly planned: number;
  readonly unit: string;
  readonly plannedStart: string | null;
  readonly start: string | null;
  readonly end: string | null;
  readonly waitsFor: string | null;
}

export interface TicketJson {
  readonly id: string;
  readonly jobId: string;
  readonly name: string;
  readonly status: string;
  readonly statusDetails: string | null;
  readonly activation: string;
  readonly quantity: number;
  readonly progressPct: number;
  readonly steps: readonly StepJson[];
  readonly problems: readonly Problem[];
}

/** A bar of so many places, for a share in percent. */
export function bar(pct: number, places = 20): string {
  const full = Math.round((Math.min(100, Math.max(0, pct)) / 100) * places);
  return `${'█'.repeat(full)}${'·'.repeat(places - full)}`;
}

export const stepPct = (step: StepJson): number =>
  step.status === 'Completed' ? 100 : step.planned > 0 ? Math.min(100, (100 * step.good) / step.planned) : 0;
