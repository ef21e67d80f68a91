import type { Notice } from '../device/state.js';

/** A stop in the middle of a run. */
export interface Stop {
  readonly statusDetails: string;
  readonly durationS: number;
  /** Pieces that it spoils, as far as there are any to spare. */
  readonly waste: number;
  readonly notice: Notice;
}

/** What goes wrong, each only where a behaviour says so. */
export interface Disturbance {
  /** From this message on, counted from 1, nothing is answered or sent. */
  readonly silentFrom?: number;
  readonly refuses?: (submission: number) => { readonly code: number; readonly text: string } | null;
  /** How many times as long everything takes. */
  readonly slowness?: number;
  /** Share of the planned input that is really there. */
  readonly inputShare?: (run: number) => number;
  readonly stop?: (run: number) => Stop | null;
  /** Every signal twice, and old ones again when the receiver comes back. */
  readonly repeats?: boolean;
  /** Its queue is gone after a restart. */
  readonly forgets?: boolean;
}

/** A fault that can be asked for. */
export interface Behaviour {
  readonly name: string;
  /** For the help text; `n` is the number after @. */
  readonly does: string;
  make(n: number): Disturbance;
}
