/** What the server answers, as the console reads it. */
import type { Plan } from '#libs/craft';
import type { Problem } from '#libs/kernel';

/** Who said so: a machine by message, a person by hand, or nobody (taken from the plan). */
export type Source = 'machine' | 'person' | 'assumed';

export interface StepEntry {
  readonly id: string;
  readonly status: string;
  readonly delivery: string;
  readonly attempt: number;
  readonly lastError: string | null;
}

export interface Step {
  readonly id: string;
  readonly types: readonly string[];
  readonly status: string;
  readonly statusDetails: string | null;
  readonly activation: string;
  readonly device: string | null;
  readonly after: readonly string[];
  readonly plannedStart: string | null;
  readonly plannedEnd: string | null;
  readonly start: string | null;
  readonly end: string | null;
  readonly good: number;
  readonly waste: number;
  readonly samples: number;
  readonly planned: number;
  readonly unit: string;
  readonly setupS: number;
  readonly runS: number;
  readonly since: string | null;
  readonly source: Source | null;
  readonly waitsFor: string | null;
  readonly entry: StepEntry | null;
}

export interface Ticket {
  readonly id: string;
  readonly jobId: string;
  readonly name: string;
  readonly customer: string | null;
  readonly status: string;
  readonly statusDetails: string | null;
  readonly activation: string;
  readonly quantity: number;
  readonly due: string | null;
  readonly priority: number;
  readonly progressPct: number;
  readonly intake: string;
  readonly created: string;
  readonly updated: string;
  readonly revision: number;
  readonly steps: readonly Step[];
  readonly problems: readonly Problem[];
}

export interface Device {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly driver: string;
  readonly status: string;
  readonly statusDetails: string | null;
  readonly job: string | null;
  readonly ticket: string | null;
  readonly step: string | null;
  /** Pieces an hour. */
  readonly speed: number | null;
  readonly since: string;
  readonly source: Source;
  readonly lastSeen: string | null;
  /** Why the device counts as silent, else null. */
  readonly silent: string | null;
}

export interface Sentence {
  readonly id: string;
  readonly time: string;
  readonly type: string;
  readonly step: string | null;
  readonly device: string | null;
  readonly sentence: string;
}

export interface Consumption {
  readonly resource: string;
  readonly unit: string;
  readonly planned: number;
  readonly actual: number;
  readonly waste: number;
  readonly device: string | null;
  readonly step: string;
  readonly source: Source;
}

export interface Health {
  readonly status: string;
  readonly because: readonly string[];
  readonly version: string;
  readonly demo: boolean;
  readonly plantTime: string;
  readonly clock: { readonly factor: number };
}

export interface StockItem {
  readonly item: string;
  readonly name: string;
  readonly unit: string;
  readonly onHand: number;
}

export interface Listing<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

/** An answer that says no, in the form of RFC 9457 with our own additions. */
export interface ProblemAnswer {
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly code: string;
  readonly remedy?: string;
  readonly problems?: readonly Problem[];
}

export type { Plan, Problem };
