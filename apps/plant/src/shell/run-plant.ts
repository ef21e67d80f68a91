import { join } from 'node:path';
import {
  type ClockSetting,
  Fault,
  realClock,
  seededRandom,
  seedFrom,
  systemRandom,
  uuidV7Source,
} from '#libs/kernel';
import { readFaults } from '../behaviours/index.js';
import { type SimulatedDevice, simulatedDevice } from '../device/simulated-device.js';
import { type DeviceKind, kinds } from '../profiles/index.js';
import { type Listening, listen } from './http-server.js';
import { HubClock, sameSetting } from './hub-clock.js';
import { HubLink, type Registration } from './hub-link.js';
import { readState, writeState } from './state-file.js';

export interface PlantDevice {
  readonly id: string;
  readonly kind: DeviceKind;
  readonly name: string;
  /** 0 or left out: any free one. */
  readonly port?: number;
  readonly faults?: readonly string[];
}

export interface PlantOptions {
  /** Base address of the hub. */
  readonly hub: string;
  readonly devices: readonly PlantDevice[];
  /** Folder for what the devices must remember; without it they forget. */
  readonly stateDir?: string;
  /** The same seed gives the same crews; left out: chance. */
  readonly seed?: number;
  readonly token?: string;
  /** Plant seconds in a real second where the hub names no plant clock; 1 where left out. */
  readonly speed?: number;
}

export interface RunningPlant {
  /** JMF address of each device, by DeviceID. */
  readonly urls: Readonly<Record<string, string>>;
  stop(): Promise<void>;
}

/** Real seconds between two looks at the hub: first while it is not there, then while it is. */
const LOOK_AGAIN_S = 0.5;
const LOOK_AFTER_S = 10;

interface Station {
  readonly about: PlantDevice;
  readonly server: Listening;
  greeted: boolean;
  device: SimulatedDevice | null;
}

/**
 * Runs simulated devices in this process, each with its own address. Resolves when all listen; they begin when the hub
 * answers, for it has the plant clock. Throws a Fault of code SETTING for a wrong device or a port that is taken.
 */
export async function runPlant(options: PlantOptions): Promise<RunningPlant> {
  checkDevices(options.devices);
  const plant = new Plant(options);
  try {
    await plant.open();
  } catch (cause) {
    // Those that listen already would keep their ports, and the process alive.
    await plant.stop();
    throw cause;
  }
  return plant;
}

export function checkDevices(devices: readonly PlantDevice[]): void {
  const seen = new Set<string>();
  for (const { id, kind, faults = [] } of devices) {
    if (typeof id !== 'string' || id === '') throw new Fault('SETTING', 'A device has no id.');
    if (seen.has(id)) throw new Fault('SETTING', `Two devices are called "${id}".`);
    seen.add(id);
    if (!kinds.includes(kind)) {
      throw new Fault('SETTING', `"${id}" is of the kind "${kind}"; possible are ${kinds.join(', ')}.`);
    }
    const read = readFaults(faults);
    if (!read.ok) throw new Fault('SETTING', `${read.problems[0]!.message} ${read.problems[0]!.hint ?? ''}`);
  }
}

class Plant implements RunningPlant {
  readonly #link: HubLink;
  readonly #stations: Station[] = [];
  readonly #wall = realClock();
  #clock: HubClock | null = null;
  #stopped = false;
  #cancelLook = (): void => undefined;

  constructor(private readonly options: PlantOptions) {
    this.#link = new HubLink(options.hub, options.token ?? null);
  }

  get urls(): Readonly<Record<string, string>> {
    return Object.fromEntries(this.#stations.map(({ about, server }) => [about.id, server.url]));
  }

  async open(): Promise<void> {
    for (const about of this.options.devices) {
      const server = await listen(
        // Before the hub has given the time there is no device yet.
        async (body, contentType) => (await station.device?.receive(body, contentType)) ?? null,
        about.port ?? 0,
      );
      const station: Station = { about, server, greeted: false, device: null };
      this.#stations.push(station);
    }
    void this.#look();
  }

  async stop(): Promise<void> {
    this.#stopped = true;
    this.#cancelLook();
    for (const { device } of this.#stations) device?.stop();
    await Promise.all(this.#stations.map(({ server }) => server.close()));
  }

  async #look(): Promise<void> {
    const there = await this.#readHub();
    if (there) for (const station of this.#stations) await this.#greet(station);
    if (this.#stopped) return;
    this.#cancelLook = this.#wall.after(there ? LOOK_AFTER_S : LOOK_AGAIN_S, () => this.#look());
  }

  /** Reads the plant clock; a hub that started anew may have set it anew. */
  async #readHub(): Promise<boolean> {
    const health = await this.#link.health();
    if (this.#stopped) return false;
    if (!health.there) {
      this.#lost();
      return false;
    }
    if (this.#clock === null) {
      this.#clock = new HubClock(health.clock ?? this.#ownClock());
    } else if (health.clock !== null) {
      const deltaMs = this.#clock.set(health.clock);
      if (deltaMs !== 0) for (const { device } of this.#stations) device?.clockMoved(deltaMs);
    }
    return true;
  }

  #ownClock(): ClockSetting {
    const now = this.#wall.now();
    return { plantStart: now, realStart: now, factor: this.options.speed ?? 1 };
  }

  /** Registers a device with the hub and switches it on when that is the first time. */
  async #greet(station: Station): Promise<boolean> {
    if (station.greeted) return true;
    const { id, kind, name } = station.about;
    const about: Registration = { id, kind, name, url: station.server.url };
    station.greeted = await this.#link.register(about);
    if (station.greeted && station.device === null && !this.#stopped) this.#switchOn(station, this.#clock!);
    return station.greeted;
  }

  #lost(): void {
    for (const station of this.#stations) station.greeted = false;
  }

  #switchOn(station: Station, clock: HubClock): void {
    const { about, server } = station;
    const { stateDir, seed } = this.options;
    const file = stateDir === undefined ? null : join(stateDir, `${encodeURIComponent(about.id)}.json`);
    const kept = file === null ? null : readState(file);
    const starts = (kept?.starts ?? 0) + 1;
    // Every switching-on has its own chance, or a second one would give identifiers of the first again.
    const random =
      seed === undefined ? systemRandom : seededRandom(seedFrom(`${seed}/${about.id}/${starts}`));
    const device = simulatedDevice({
      id: about.id,
      kind: about.kind,
      name: about.name,
      faults: about.faults,
      hubJmf: this.#link.jmf,
      url: server.url,
      transport: (url, body, contentType) => this.#send(station, url, body, contentType),
      fetchTicket: (url) => this.#link.fetchTicket(url),
      mayReach: (url) => this.#link.mayReach(url),
      clock,
      random,
      ids: uuidV7Source(clock, random),
      state: kept?.device,
      keep: (state) => {
        if (file !== null) writeState(file, { device: state, clock: clock.setting, at: clock.now(), starts });
      },
    });
    station.device = device;
    if (kept !== null && !sameSetting(kept.clock, clock.setting)) device.clockMoved(clock.now() - kept.at);
    device.start();
  }

  async #send(station: Station, url: string, body: string, contentType: string) {
    const toHub = this.#link.isHub(url);
    // After a silence the hub may be another process, with another clock and without memory of this device.
    if (toHub && !station.greeted && !((await this.#readHub()) && (await this.#greet(station))))
      return NOBODY;
    const answer = await this.#link.post(url, body, contentType);
    if (toHub && (answer.status === 0 || answer.status >= 500)) this.#lost();
    if (toHub && isForgotten(answer.body)) {
      station.greeted = false;
      return NOBODY;
    }
    return answer;
  }
}

const NOBODY = { status: 0, body: '' };

/** ReturnCode 121: the receiver knows no device of this name (JDF 1.4 specification, appendix D). */
function isForgotten(body: string): boolean {
  return /\sReturnCode="121"/.test(body);
}
