/** The kinds of machine that a plant of this simulation can have. */
export const kinds = [
  'press',
  'platesetter',
  'guillotine',
  'folder',
  'stitcher',
  'binder',
  'prepress',
] as const;
export type DeviceKind = (typeof kinds)[number];

export interface SetupPart {
  /** StatusDetails of the standard's open list. */
  readonly statusDetails: string | null;
  /** Share of the set-up time. */
  readonly share: number;
  /** Whether sheets run, all of them waste. */
  readonly sheets: boolean;
}

/**
 * How a kind of machine and its crew behave. All figures are from memory of common practice, no source; the ticket's own
 * durations and amounts come first.
 */
export interface Profile {
  readonly kind: DeviceKind;
  /** Processes of the standard that it can execute. */
  readonly processes: readonly string[];
  /** Name of the resource that its pieces are, where the ticket gives no unit. */
  readonly counterUnit: string;
  /** A message never sets this machine in motion: somebody presses a button at it. */
  readonly needsOperatorStart: boolean;
  /** From a job being there to the button, least and most. */
  readonly reactionS: readonly [number, number];
  readonly reportEveryS: number;
  readonly setup: readonly SetupPart[];
  readonly setupS: number;
  readonly perHour: number;
  readonly cleanup: { readonly statusDetails: string | null; readonly durationS: number } | null;
  /** Waste where the ticket plans none: pieces of setting up, and a share of the run. */
  readonly waste: { readonly setupPieces: number; readonly runningPct: number };
  /** How much of all waste is made while setting up. */
  readonly setupWasteShare: number;
  /** How much of the running waste comes in one go, as after a register fault. */
  readonly burstShare: number;
  /** What the machine really says of itself (many say less). */
  readonly reports: { readonly waste: boolean; readonly phaseCounts: boolean; readonly speed: boolean };
}
