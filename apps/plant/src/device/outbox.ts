import type { Clock } from '#libs/kernel';
import { Fault } from '#libs/kernel';
import type { DeviceState, OutboxItem } from './state.js';

export interface Answered {
  readonly status: number;
  readonly body: string;
}

/** Sends one message. A connection that fails may throw or answer with status 0. */
export type Send = (url: string, body: string, contentType: string) => Promise<Answered>;

/** How many delivered signals a device that repeats itself remembers. */
const REMEMBERED = 20;
/** Wait after a failed try, doubled each time: plant seconds, but never a shorter real time than this. */
const FIRST_WAIT_S = 2;
const LONGEST_WAIT_S = 60;
const LEAST_REAL_S = 0.2;

export interface OutboxOptions {
  readonly state: DeviceState;
  readonly clock: Clock;
  readonly send: Send;
  readonly repeats: boolean;
  /** Whether the device says nothing at all just now. */
  readonly isSilent: () => boolean;
  /** Called when a message has arrived, and when the state is worth keeping. */
  readonly delivered: (item: OutboxItem) => void;
  readonly keep: () => void;
}

/**
 * Messages in the order in which they were said, each repeated until its receiver answers 2xx. A message is taken out
 * only after that, so none is lost; one may arrive twice.
 */
export class Outbox {
  #sending = false;
  #failures = 0;
  #stopped = false;
  #cancel = (): void => undefined;

  constructor(private readonly options: OutboxOptions) {}

  /** Adds a message; an unsent one with the same key is dropped, for this one says more. */
  push(item: OutboxItem): void {
    const { outbox } = this.options.state;
    if (item.key !== null) {
      const at = outbox.findIndex(({ key }, index) => key === item.key && !(this.#sending && index === 0));
      if (at >= 0) outbox.splice(at, 1);
    }
    outbox.push(item);
  }

  /** Sends on its own appointment, so that nobody who speaks to the device waits for its letters. */
  wake(): void {
    if (this.#sending || this.#failures > 0 || this.#stopped || this.options.state.outbox.length === 0)
      return;
    this.#cancel();
    this.#cancel = this.options.clock.after(0, () => this.#sendAll());
  }

  stop(): void {
    this.#stopped = true;
    this.#cancel();
  }

  async #sendAll(): Promise<void> {
    if (this.#sending || this.#stopped) return;
    this.#sending = true;
    try {
      for (let item = this.#first(); item !== undefined; item = this.#first()) {
        if (!(await this.#arrives(item))) {
          this.#retryLater();
          return;
        }
        if (this.#failures > 0) await this.#repeatOld();
        this.#failures = 0;
        this.#done(item);
        if (this.options.repeats && item.kind === 'signal') await this.#arrives(item);
      }
    } finally {
      this.#sending = false;
    }
  }

  #first(): OutboxItem | undefined {
    return this.#stopped || this.options.isSilent() ? undefined : this.options.state.outbox[0];
  }

  async #arrives({ url, body, contentType }: OutboxItem): Promise<boolean> {
    try {
      const { status } = await this.options.send(url, body, contentType);
      return status >= 200 && status < 300;
    } catch (cause) {
      // A connection that fails is the weather; a fault of the program is not.
      if (cause instanceof Fault && cause.code === 'BROKEN') throw cause;
      return false;
    }
  }

  #done(item: OutboxItem): void {
    const { state, repeats } = this.options;
    state.outbox.shift();
    if (repeats && item.kind === 'signal') state.delivered = [...state.delivered, item].slice(-REMEMBERED);
    this.options.delivered(item);
    this.options.keep();
  }

  async #repeatOld(): Promise<void> {
    if (!this.options.repeats) return;
    for (const old of this.options.state.delivered) await this.#arrives(old);
  }

  #retryLater(): void {
    const { clock } = this.options;
    const waitS = Math.min(LONGEST_WAIT_S, FIRST_WAIT_S * 2 ** Math.min(this.#failures, 10));
    this.#failures += 1;
    const floorS = Number.isFinite(clock.factor) ? LEAST_REAL_S * clock.factor : 0;
    this.#cancel = clock.after(Math.max(waitS, floorS), () => this.#sendAll());
  }
}
