import type { Clock, Instant } from './clock.js';

interface Appointment {
  readonly due: Instant;
  readonly order: number;
  readonly task: () => void | Promise<void>;
  off: boolean;
}

/**
 * Time that moves only when told: a week passes as fast as its work can be done, and always in the same order.
 * Appointments run one after another, each awaited, earliest first and in the order made; so a run that takes its ids
 * and chances from seeded ports repeats exactly.
 */
export class VirtualClock implements Clock {
  readonly factor = Number.POSITIVE_INFINITY;
  #now: Instant;
  #order = 0;
  #appointments: Appointment[] = [];
  readonly #settle: () => Promise<void>;

  /** `settle` waits until all work that an appointment set off is done (queues empty, writes committed). */
  constructor(start: Instant, settle: () => Promise<void> = async () => undefined) {
    this.#now = start;
    this.#settle = settle;
  }

  now(): Instant {
    return this.#now;
  }

  after(plantSeconds: number, task: () => void | Promise<void>): () => void {
    const appointment: Appointment = {
      due: this.#now + Math.max(0, Math.round(plantSeconds * 1000)),
      order: this.#order++,
      task,
      off: false,
    };
    // Kept sorted by (due, order); new appointments mostly lie near the end.
    let at = this.#appointments.length;
    while (at > 0 && this.#appointments[at - 1]!.due > appointment.due) at--;
    this.#appointments.splice(at, 0, appointment);
    return () => {
      appointment.off = true;
    };
  }

  /** Runs every appointment up to and including `until`, then stands at `until`. */
  async runUntil(until: Instant): Promise<void> {
    await this.#settle();
    for (;;) {
      const next = this.#appointments[0];
      if (next === undefined || next.due > until) break;
      this.#appointments.shift();
      if (next.off) continue;
      this.#now = Math.max(this.#now, next.due);
      await next.task();
      await this.#settle();
    }
    this.#now = Math.max(this.#now, until);
  }

  /** Runs until `condition` holds (checked after each appointment) or the deadline passes; says whether it held. */
  async runUntilTrue(condition: () => boolean | Promise<boolean>, deadline: Instant): Promise<boolean> {
    await this.#settle();
    for (;;) {
      if (await condition()) return true;
      const next = this.#appointments[0];
      if (next === undefined || next.due > deadline) return false;
      await this.runUntil(next.due);
    }
  }
}
