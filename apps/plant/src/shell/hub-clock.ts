import { type Clock, type ClockSetting, type Instant, plantClock } from '#libs/kernel';

interface Appointment {
  readonly due: Instant;
  readonly task: () => void | Promise<void>;
  cancel: () => void;
}

/**
 * The plant clock as the hub has set it. When the hub sets it anew, whatever was to happen stays as far ahead in plant
 * time as it was.
 */
export class HubClock implements Clock {
  #inner: Clock;
  #setting: ClockSetting;
  readonly #appointments = new Set<Appointment>();

  constructor(
    setting: ClockSetting,
    private readonly make: (setting: ClockSetting) => Clock = plantClock,
  ) {
    this.#setting = setting;
    this.#inner = make(setting);
  }

  get setting(): ClockSetting {
    return this.#setting;
  }

  get factor(): number {
    return this.#inner.factor;
  }

  now(): Instant {
    return this.#inner.now();
  }

  after(plantSeconds: number, task: () => void | Promise<void>): () => void {
    const appointment = { due: this.now() + plantSeconds * 1000, task, cancel: () => undefined };
    this.#appointments.add(appointment);
    this.#arm(appointment, plantSeconds);
    return () => {
      this.#appointments.delete(appointment);
      appointment.cancel();
    };
  }

  /** Answers by how many milliseconds the time jumped; 0 when nothing changed. */
  set(setting: ClockSetting): number {
    if (sameSetting(setting, this.#setting)) return 0;
    const before = this.now();
    this.#setting = setting;
    this.#inner = this.make(setting);
    for (const appointment of this.#appointments) {
      appointment.cancel();
      this.#arm(appointment, Math.max(0, (appointment.due - before) / 1000));
    }
    return this.now() - before;
  }

  #arm(appointment: Appointment, plantSeconds: number): void {
    appointment.cancel = this.#inner.after(plantSeconds, () => {
      this.#appointments.delete(appointment);
      return appointment.task();
    });
  }
}

export function sameSetting(a: ClockSetting, b: ClockSetting): boolean {
  return a.plantStart === b.plantStart && a.realStart === b.realStart && a.factor === b.factor;
}
