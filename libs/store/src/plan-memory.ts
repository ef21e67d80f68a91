import type { Ticket } from '#libs/flow';

type Plan = NonNullable<Ticket['plan']>;

interface Remembered {
  readonly revision: number;
  readonly plan: Plan;
}

/**
 * Plans that were read or written lately, each under the revision that wrote it. A plan is by far the largest part of
 * a ticket's file and never changes under its revision, so what another server does is seen at once: its new revision
 * is simply not known here. Holds `limit` plans, those used last.
 */
export class PlanMemory {
  readonly #plans = new Map<string, Remembered>();

  constructor(private readonly limit = 200) {}

  recall(ticketId: string, revision: number): Plan | undefined {
    const found = this.#plans.get(ticketId);
    if (found?.revision !== revision) return undefined;
    this.keep(ticketId, revision, found.plan);
    return found.plan;
  }

  keep(ticketId: string, revision: number, plan: Plan): void {
    this.#plans.delete(ticketId);
    this.#plans.set(ticketId, { revision, plan });
    if (this.#plans.size <= this.limit) return;
    const [oldest] = this.#plans.keys();
    if (oldest !== undefined) this.#plans.delete(oldest);
  }
}
