import type { DecisionContext } from '../../libs/flow/src/decide/draft.js';
import { FileDraft } from '../../libs/flow/src/decide/draft.js';
import type { Balance } from '../../libs/flow/src/state/stock.js';
import type { Resource, Step, Ticket, TicketFile, Use } from '../../libs/flow/src/state/ticket.js';

/** Ids t-1, t-2 … so that a test can name them. */
export function countedIds(): { next(): string } {
  let n = 0;
  return { next: () => `t-${++n}` };
}

export function aTicket(change: Partial<Ticket> = {}): Ticket {
  return {
    id: 'ticket-1',
    jobId: 'J1',
    jobPartId: null,
    name: 'Programme: The Paper Boat',
    customer: null,
    status: 'Waiting',
    statusDetails: null,
    activation: 'Active',
    quantity: 300,
    due: null,
    priority: 50,
    kind: 'order',
    documentId: 'document-1',
    documentPart: null,
    intake: 'http',
    returnUrl: null,
    plan: null,
    problems: [],
    createdAt: 0,
    updatedAt: 0,
    revision: 1,
    ...change,
  };
}

export function aStep(id: string, after: readonly string[] = [], change: Partial<Step> = {}): Step {
  return {
    ticketId: 'ticket-1',
    id,
    ordinal: 0,
    types: ['ConventionalPrinting'],
    deviceId: `${id}-machine`,
    status: 'Waiting',
    statusDetails: null,
    activation: 'Active',
    after,
    inputs: after,
    outputs: [id],
    setupS: 240,
    runS: 120,
    waitAfterS: 0,
    inAmount: 436,
    inUnit: 'sheets',
    outAmount: 311,
    unit: 'sheets',
    plannedStart: null,
    plannedEnd: null,
    start: null,
    end: null,
    good: 0,
    waste: 0,
    samples: 0,
    ...change,
  };
}

export function aUse(stepId: string, item: string, change: Partial<Use> = {}): Use {
  return {
    ticketId: 'ticket-1',
    stepId,
    deviceId: null,
    item,
    unit: 'sheets',
    planned: 436,
    reserved: 0,
    actual: 0,
    waste: 0,
    source: 'assumed',
    ...change,
  };
}

function outputOf(step: Step): Resource {
  return {
    ticketId: step.ticketId,
    id: step.id,
    name: 'Component',
    status: 'Unavailable',
    unit: step.unit,
    planned: step.outAmount,
    produced: 0,
    usableFrom: null,
  };
}

/** Print, then fold: two steps, the second of which needs what the first makes. */
export function aFile(change: Partial<TicketFile> = {}): TicketFile {
  const steps = change.steps ?? [
    aStep('print'),
    aStep('fold', ['print'], { inAmount: 311, outAmount: 305, ordinal: 1 }),
  ];
  return {
    ticket: aTicket(),
    steps,
    resources: steps.map(outputOf),
    entries: [],
    phases: [],
    uses: [],
    ...change,
  };
}

/** Runs a decision on a file at an instant; gives back the file as it is then and all that follows. */
export function decideOn(
  file: TicketFile,
  now: number,
  decide: (draft: FileDraft) => void,
  options: { balances?: ReadonlyMap<string, Balance>; context?: Partial<DecisionContext> } = {},
): { file: TicketFile; change: ReturnType<FileDraft['change']> } {
  const draft = new FileDraft(file, { now, ids: countedIds(), ...options.context }, options.balances);
  decide(draft);
  const change = draft.change();
  return { file: change.tickets![0]!, change };
}
