import { type Clock, Fault, type IdSource, type Random } from '#libs/kernel';
import { type Disturbance, readFaults } from '../behaviours/index.js';
import { type DeviceKind, profiles } from '../profiles/index.js';
import { converse } from './conversation.js';
import type { Desk } from './desk.js';
import { Machine } from './machine.js';
import { Outbox, type Send } from './outbox.js';
import { isLive } from './queue.js';
import { returnMessage } from './return-message.js';
import { Speech } from './speech.js';
import { type DeviceState, emptyState, type OutboxItem } from './state.js';
import type { FetchTicket } from './submission.js';

/** Plant seconds between two signs of life while there is nothing to do. */
const HEARTBEAT_S = 60;

export interface SimulatedDeviceOptions {
  readonly id: string;
  readonly kind: DeviceKind;
  readonly name: string;
  /** The hub's JMF address. */
  readonly hubJmf: string;
  readonly transport: Send;
  readonly clock: Clock;
  readonly random: Random;
  readonly ids: IdSource;
  /** NAME or NAME@N; see behaviours. */
  readonly faults?: readonly string[];
  /** Reads tickets by http; without it only tickets in a package are taken. */
  readonly fetchTicket?: FetchTicket;
  readonly mayReach?: (url: string) => boolean;
  /** The device's own JMF address. */
  readonly url?: string;
  readonly heartbeatS?: number;
  /** What `keep` was given last, to continue from. */
  readonly state?: DeviceState;
  /** Called with the whole state before anything that depends on it is said. */
  readonly keep?: (state: DeviceState) => void;
}

/** One simulated machine that knows only the wire. */
export interface SimulatedDevice {
  readonly id: string;
  start(): void;
  /** Answers a JMF document; an empty text where there is nothing to answer. Rejects while the device is silent. */
  receive(body: Uint8Array | string, contentType: string): Promise<string>;
  /** The plant clock jumped by so much: what was to come stays as far ahead as it was. */
  clockMoved(deltaMs: number): void;
  stop(): void;
}

/** Makes a device. Throws a Fault of code SETTING when a fault is asked for that does not exist. */
export function simulatedDevice(options: SimulatedDeviceOptions): SimulatedDevice {
  const faults = readFaults(options.faults ?? []);
  if (!faults.ok) throw new Fault('SETTING', faults.problems[0]!.message);
  return new Device(options, faults.value);
}

class Device implements SimulatedDevice {
  readonly id: string;
  readonly #state: DeviceState;
  readonly #desk: Desk;
  readonly #outbox: Outbox;
  #cancelTimer = (): void => undefined;
  #stopped = false;

  constructor(
    private readonly options: SimulatedDeviceOptions,
    private readonly disturbance: Disturbance,
  ) {
    const { id, name, ids, hubJmf, clock, random } = options;
    const profile = profiles[options.kind];
    const state = disturbance.forgets ? forgotten(options.state) : (options.state ?? emptyState());
    this.id = id;
    this.#state = state;
    this.#outbox = new Outbox({
      state,
      clock,
      send: options.transport,
      repeats: disturbance.repeats ?? false,
      isSilent: () => this.#isSilent(),
      delivered: (item) => this.#delivered(item),
      keep: () => this.#keep(),
    });
    const speech: Speech = new Speech({
      id,
      profile,
      state,
      ids,
      hubJmf,
      push: (item) => this.#outbox.push(item),
      giveBack: (entry, at) => returnMessage(entry, at, id, hubJmf, ids, (...what) => speech.write(...what)),
    });
    const heartbeatS = options.heartbeatS ?? HEARTBEAT_S;
    const machine = new Machine(state, profile, disturbance, random, heartbeatS, speech);
    this.#desk = {
      id,
      name,
      profile,
      state,
      machine,
      speech,
      disturbance,
      ids,
      url: options.url ?? null,
      fetchTicket: options.fetchTicket ?? (async () => null),
      mayReach: options.mayReach ?? (() => true),
      now: () => clock.now(),
    };
  }

  start(): void {
    this.#desk.machine.begin(this.options.clock.now());
    this.#goOn();
  }

  async receive(body: Uint8Array | string, contentType: string): Promise<string> {
    this.#state.messages += 1;
    if (this.#isSilent()) throw new Fault('DEVICE_SILENT', `${this.id} does not answer.`);
    this.#desk.machine.advance(this.options.clock.now());
    const answer = await converse(this.#desk, body, contentType);
    this.#goOn();
    return answer;
  }

  clockMoved(deltaMs: number): void {
    this.#desk.machine.shift(deltaMs);
    this.#goOn();
  }

  stop(): void {
    this.#stopped = true;
    this.#cancelTimer();
    this.#outbox.stop();
    this.#keep();
  }

  /** Keeps the state, lets letters go out and sleeps until the next thing happens. */
  #goOn(): void {
    if (this.#stopped) return;
    this.#keep();
    this.#outbox.wake();
    this.#cancelTimer();
    const due = this.#desk.machine.nextDue();
    if (due === null) return;
    const { clock } = this.options;
    this.#cancelTimer = clock.after(Math.max(0, (due - clock.now()) / 1000), () => {
      if (this.#stopped) return;
      this.#desk.machine.advance(clock.now());
      this.#goOn();
    });
  }

  #keep(): void {
    this.options.keep?.(this.#state);
  }

  #isSilent(): boolean {
    const { silentFrom } = this.disturbance;
    return silentFrom !== undefined && this.#state.messages >= silentFrom;
  }

  /** A ticket that has arrived needs not be kept, and its entry is over. */
  #delivered(item: OutboxItem): void {
    if (item.entryId === null) return;
    if (this.#state.outbox.some(({ entryId }) => entryId === item.entryId)) return;
    const entry = this.#state.entries.find(({ id }) => id === item.entryId);
    if (entry === undefined) return;
    if (entry.status === 'PendingReturn') entry.status = entry.endStatus ?? 'Completed';
    if (!isLive(entry)) entry.ticket = null;
    if (!isLive(entry)) entry.run = null;
  }
}

/** What is left of a device that lost its memory: its counter. */
function forgotten(state: DeviceState | undefined): DeviceState {
  return { ...emptyState(), counter: state?.counter ?? 0 };
}
