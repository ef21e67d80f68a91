import type { Plan } from '#libs/craft';
import type { NodeStatus, Phase, QueueEntry, Step, StoredDocument, TicketFile, Use } from '#libs/flow';

/** Monday 2 March 2026, 07:00 UTC: plant times of the files made here count from it. */
export const MONDAY = Date.UTC(2026, 2, 2, 7);
const MINUTE = 60_000;

export type FileState = 'planned' | 'running' | 'completed' | 'aborted';

/** A document as it came, from text. */
export function storedDocument(text: string, mediaType = 'application/vnd.cip4-jdf+xml'): StoredDocument {
  return {
    id: '0195e0a0-0000-7000-8000-000000000002',
    sha256: '0'.repeat(64),
    mediaType,
    name: null,
    bytes: new TextEncoder().encode(text),
    receivedAt: MONDAY,
  };
}

/**
 * The rows of a ticket with this plan in a state: nothing begun; all done but the last step, which has stopped once and
 * runs; all done; the second step aborted and the rest with it.
 */
export function ticketFile(plan: Plan, state: FileState, kind: 'order' | 'jdf' = 'order'): TicketFile {
  const last = plan.steps.length - 1;
  const statusOf = (at: number): NodeStatus => {
    if (state === 'planned') return 'Waiting';
    if (state === 'completed') return 'Completed';
    if (state === 'running') return at === last ? 'InProgress' : 'Completed';
    return at === 0 ? 'Completed' : 'Aborted';
  };
  const steps = plan.steps.map((step, ordinal): Step => {
    const status = statusOf(ordinal);
    const done = status === 'Completed';
    const begun = done || status === 'InProgress' || (status === 'Aborted' && ordinal === 1);
    const start = MONDAY + ordinal * 60 * MINUTE;
    return {
      ticketId: 'T-1',
      id: step.id,
      ordinal,
      types: step.types,
      deviceId: step.device,
      status,
      statusDetails: status === 'InProgress' ? 'Good' : null,
      activation: 'Active',
      after: step.after,
      inputs: step.after,
      outputs: [step.id],
      setupS: step.setupS,
      runS: step.runS,
      waitAfterS: step.waitAfterS,
      inAmount: step.inAmount,
      inUnit: step.inUnit,
      outAmount: step.outAmount,
      unit: step.unit,
      plannedStart: start,
      plannedEnd: start + (step.setupS + step.runS) * 1000,
      start: begun ? start : null,
      end: status === 'InProgress' || !(begun || status === 'Aborted') ? null : start + 40 * MINUTE,
      good: done ? step.outAmount - 1 : begun ? 2 : 0,
      waste: begun ? 3 : 0,
      samples: 0,
    };
  });
  const status = {
    planned: 'Waiting',
    running: 'InProgress',
    completed: 'Completed',
    aborted: 'Aborted',
  } as const;
  return {
    ticket: {
      id: 'T-1',
      jobId: plan.jobId,
      jobPartId: null,
      name: plan.name,
      customer: 'Harbour players',
      status: status[state],
      statusDetails: null,
      activation: 'Active',
      quantity: plan.quantity,
      due: MONDAY + 3 * 24 * 60 * MINUTE,
      priority: 60,
      kind,
      documentId: '0195e0a0-0000-7000-8000-000000000002',
      documentPart: null,
      intake: 'http',
      returnUrl: null,
      plan,
      problems: [],
      createdAt: MONDAY - 60 * MINUTE,
      updatedAt: MONDAY,
      revision: 7,
    },
    steps,
    resources: plan.steps.map((step, at) => ({
      ticketId: 'T-1',
      id: step.id,
      name: resourceName(step.types),
      status: steps[at]!.status === 'Completed' ? 'Available' : 'Unavailable',
      unit: step.unit,
      planned: step.outAmount,
      produced: steps[at]!.status === 'Completed' ? steps[at]!.good : 0,
      usableFrom: null,
    })),
    entries: steps.flatMap(entriesOf),
    phases: steps.flatMap(phasesOf),
    uses: usesOf(plan, steps),
  };
}

function resourceName(types: readonly string[]): string {
  if (types.includes('ImageSetting')) return 'ExposedMedia';
  return types.includes('Stripping') ? 'RunList' : 'Component';
}

/** A begun step was given to its device five minutes before, and came back with its end. */
function entriesOf(step: Step): readonly QueueEntry[] {
  if (step.start === null) return [];
  const ended = step.end === null ? null : step.status === 'Aborted' ? 'Aborted' : 'Completed';
  return [
    {
      id: `0195e0a0-0000-7000-8000-0000000001${String(step.ordinal).padStart(2, '0')}`,
      ticketId: step.ticketId,
      stepId: step.id,
      deviceId: step.deviceId!,
      status: ended ?? 'Running',
      delivery: 'delivered',
      deviceEntryId: `Q-${step.id}`,
      attempt: 1,
      notBefore: null,
      lastError: null,
      returned: ended !== null,
      wanted: null,
      priority: 60,
      submitted: step.start - 5 * MINUTE,
      start: step.start,
      end: step.end,
    },
  ];
}

/** Ten minutes of set-up, ten of running, five of stop, and the rest of running. */
function phasesOf(step: Step): readonly Phase[] {
  if (step.start === null) return [];
  const at = (minutes: number): number => step.start! + minutes * MINUTE;
  const phase = (
    from: number,
    to: number | null,
    status: NodeStatus,
    good: number,
    waste: number,
  ): Phase => ({
    ticketId: step.ticketId,
    stepId: step.id,
    deviceId: step.deviceId!,
    start: at(from),
    end: to === null ? null : at(to),
    status,
    statusDetails: status === 'Stopped' ? 'PaperJam' : null,
    good,
    waste,
    source: 'machine',
  });
  return [
    phase(0, 10, 'Setup', 0, step.waste - 1),
    phase(10, 20, 'InProgress', 1, 1),
    phase(20, 25, 'Stopped', 0, 0),
    phase(25, step.end === null ? null : 40, 'InProgress', step.good - 1, 0),
  ];
}

function usesOf(plan: Plan, steps: readonly Step[]): readonly Use[] {
  const use = (stepId: string, item: string, unit: Use['unit'], planned: number): Use => {
    const begun = steps.find((step) => step.id === stepId)?.start !== null;
    return {
      ticketId: 'T-1',
      stepId,
      deviceId: null,
      item,
      unit,
      planned,
      reserved: 0,
      actual: begun ? planned * 1.25 : 0,
      waste: begun ? planned * 0.25 : 0,
      source: 'machine',
    };
  };
  const print = plan.steps.find((step) => step.types.includes('ConventionalPrinting'))!;
  const plates = plan.steps.find((step) => step.types.includes('ImageSetting'))!;
  const [sheet] = plan.sheets;
  return [
    use(plates.id, 'plate-full', 'plates', sheet!.plates),
    use(print.id, sheet!.stock, 'sheets', sheet!.sheetsToPress),
    ...sheet!.units
      .map(({ ink }) => ink)
      .filter((ink, at, all) => all.indexOf(ink) === at)
      .map((ink) => use(print.id, `process/${ink}`, 'kg', (plan.totals.inkG[ink] ?? 0) / 1000)),
  ];
}
