/** A resource that the work uses up or hangs in the machine, as the ticket plans it. Amounts in the resource's unit. */
export interface WorkInput {
  readonly resourceId: string;
  readonly name: string;
  readonly processUsage: string | null;
  readonly amount: number | null;
  readonly unit: string | null;
  /** Fed piece by piece; else it is there as a whole from the beginning, as plates are. */
  readonly fed: boolean;
  /** Pieces that come out of one piece of it. */
  readonly piecesPerUnit: number;
  /** Attributes of the resource, so that a message can show it. */
  readonly attributes: Readonly<Record<string, string>>;
}

export interface WorkOutput {
  readonly resourceId: string;
  readonly name: string;
}

/** What a ticket asks of a device, in the device's own terms: pieces are what comes out. */
export interface Work {
  readonly nodeId: string;
  readonly jobId: string;
  readonly jobPartId: string;
  readonly types: readonly string[];
  readonly setupS: number | null;
  readonly runS: number | null;
  readonly cleanupS: number | null;
  readonly speedPerHour: number | null;
  readonly inputs: readonly WorkInput[];
  readonly outputs: readonly WorkOutput[];
  /** Planned pieces; null where the work is not counted. */
  readonly outAmount: number | null;
  readonly outUnit: string | null;
  /** Pieces that the inputs suffice for, set-up and waste included; null where the ticket does not say. */
  readonly feedPieces: number | null;
}

/** How much of an input is used when so many pieces have come out, good and waste. */
export function usedOf(
  input: WorkInput,
  pieces: { readonly good: number; readonly waste: number },
): {
  readonly actual: number;
  readonly waste: number;
} {
  if (!input.fed) return { actual: input.amount ?? 0, waste: 0 };
  const actual = Math.ceil((pieces.good + pieces.waste) / input.piecesPerUnit);
  const good = Math.ceil(pieces.good / input.piecesPerUnit);
  return { actual, waste: Math.max(0, actual - good) };
}
