import type { Order, Plan, PlanStep, Plant } from '#libs/craft';
import type { Instant, Problem } from '#libs/kernel';
import type { Change } from '../ports.js';
import { resourceNameOf, useItems } from '../process/index.js';
import type { Balance } from '../state/stock.js';
import type { DocumentKind, Resource, Step, Ticket, TicketFile, Use } from '../state/ticket.js';
import { type DecisionContext, FileDraft } from './draft.js';
import { routeReadySteps } from './route.js';
import { reserveUses } from './uses.js';

/** How and as what a document came in. */
export interface Arrival {
  readonly ticketId: string;
  readonly documentId: string;
  readonly documentPart: string | null;
  readonly kind: DocumentKind;
  readonly intake: string;
  readonly jobId: string;
  readonly name: string;
  readonly problems: readonly Problem[];
  readonly returnUrl: string | null;
  /** The submitter's own wishes, before those in the ticket. */
  readonly priority: number | null;
  readonly hold: boolean;
}

/** When and where a step is planned to run. */
export interface Placement {
  readonly start: Instant;
  readonly end: Instant;
}

/** A sound, possible ticket: its steps, what passes between them, what they will use, and the first ones on their way. */
export function acceptTicket(
  arrival: Arrival,
  order: Order,
  plan: Plan,
  plant: Plant,
  placements: ReadonlyMap<string, Placement>,
  balances: ReadonlyMap<string, Balance>,
  context: DecisionContext,
): Change {
  const ticket: Ticket = {
    ...rowOf(arrival, context),
    jobId: plan.jobId,
    name: plan.name,
    customer: order.customer ?? null,
    status: 'Waiting',
    statusDetails: null,
    activation: arrival.hold ? 'Held' : 'Active',
    quantity: plan.quantity,
    due: order.due === undefined ? null : Date.parse(order.due),
    priority: arrival.priority ?? order.priority ?? 50,
    plan,
  };
  const file: TicketFile = {
    ticket,
    steps: plan.steps.map((step, ordinal) => stepRow(ticket.id, step, ordinal, placements.get(step.id))),
    resources: plan.steps.map((step) => resourceRow(ticket.id, step)),
    entries: [],
    phases: [],
    uses: useItems(plan, plant).map(
      (use): Use => ({
        ticketId: ticket.id,
        stepId: use.stepId,
        deviceId: plan.steps.find((step) => step.id === use.stepId)?.device ?? null,
        item: use.item,
        unit: use.unit,
        planned: use.planned,
        reserved: 0,
        actual: 0,
        waste: 0,
        source: 'assumed',
      }),
    ),
  };
  const draft = new FileDraft(file, context, balances);
  draft.event('ticket.accepted', {
    jobId: ticket.jobId,
    name: ticket.name,
    intake: ticket.intake,
    quantity: ticket.quantity,
    steps: file.steps.length,
    warnings: arrival.problems.length,
  });
  reserveUses(draft);
  routeReadySteps(draft);
  return draft.change();
}

/** Not a sound, possible ticket: kept all the same, with its reasons and no steps. */
export function rejectTicket(arrival: Arrival, context: DecisionContext): Change {
  const draft = new FileDraft(
    { ticket: rowOf(arrival, context), steps: [], resources: [], entries: [], phases: [], uses: [] },
    context,
  );
  const first = arrival.problems.find((problem) => problem.severity === 'error') ?? arrival.problems[0];
  draft.event('ticket.rejected', {
    jobId: arrival.jobId,
    name: arrival.name,
    intake: arrival.intake,
    reason: first?.message ?? '',
    code: first?.code ?? null,
    problems: arrival.problems.length,
  });
  return draft.change();
}

function rowOf(arrival: Arrival, context: DecisionContext): Ticket {
  return {
    id: arrival.ticketId,
    jobId: arrival.jobId,
    jobPartId: null,
    name: arrival.name,
    customer: null,
    status: 'Rejected',
    statusDetails: null,
    activation: 'Active',
    quantity: 0,
    due: null,
    priority: arrival.priority ?? 50,
    kind: arrival.kind,
    documentId: arrival.documentId,
    documentPart: arrival.documentPart,
    intake: arrival.intake,
    returnUrl: arrival.returnUrl,
    plan: null,
    problems: arrival.problems,
    createdAt: context.now,
    updatedAt: context.now,
    revision: 0,
  };
}

function stepRow(ticketId: string, step: PlanStep, ordinal: number, placement: Placement | undefined): Step {
  return {
    ticketId,
    id: step.id,
    ordinal,
    types: step.types,
    deviceId: step.device,
    status: 'Waiting',
    statusDetails: null,
    activation: 'Active',
    after: step.after,
    // What a step makes has the step's own name, and a step needs all that the steps before it made.
    inputs: step.after,
    outputs: [step.id],
    setupS: step.setupS,
    runS: step.runS,
    waitAfterS: step.waitAfterS,
    inAmount: step.inAmount,
    inUnit: step.inUnit,
    outAmount: step.outAmount,
    unit: step.unit,
    plannedStart: placement?.start ?? null,
    plannedEnd: placement?.end ?? null,
    start: null,
    end: null,
    good: 0,
    waste: 0,
    samples: 0,
  };
}

function resourceRow(ticketId: string, step: PlanStep): Resource {
  return {
    ticketId,
    id: step.id,
    name: resourceNameOf(step),
    status: 'Unavailable',
    unit: step.unit,
    planned: step.outAmount,
    produced: 0,
    usableFrom: null,
  };
}
