import type { Device, DeviceLink, DispatchOutcome } from '#libs/flow';
import { Fault } from '#libs/kernel';
import type { DeviceDriver, DriverKind, DriverPorts, QueueAnswer } from './device-driver.js';
import { later } from './device-driver.js';
import { driverKinds } from './index.js';

/** The one door through which the engine speaks to any device. */
export interface DriverLink extends DeviceLink {
  queueStatus(device: Device): Promise<QueueAnswer>;
  /** Undefined when no driver of that name is registered. */
  driver(name: string): DeviceDriver | undefined;
  /** Throws a Fault naming the drivers that are asked for and not there; called at start with those of the plant. */
  require(names: Iterable<string>): void;
}

/**
 * Makes the drivers of this library and of outside packages (`more`). A name that occurs twice is a Fault (SETTING), so
 * that the server does not start with one driver silently in the place of another.
 */
export function makeDeviceLink(ports: DriverPorts, more: readonly DriverKind[] = []): DriverLink {
  const drivers = new Map<string, DeviceDriver>();
  for (const kind of [...driverKinds, ...more]) {
    const driver = kind.make(ports);
    if (driver.name !== kind.name) {
      throw new Fault('SETTING', `The device driver "${kind.name}" calls itself "${driver.name}".`);
    }
    if (drivers.has(kind.name)) throw new Fault('SETTING', `Two device drivers are called "${kind.name}".`);
    drivers.set(kind.name, driver);
  }
  const absent = ({ id, driver }: Device): string =>
    `${id} wants the driver "${driver}", which is not installed`;
  return {
    async submit(device, parcel): Promise<DispatchOutcome> {
      return drivers.get(device.driver)?.submit(device, parcel) ?? later(absent(device), false);
    },
    async instruct(device, deviceEntryId, wanted): Promise<DispatchOutcome> {
      const driver = drivers.get(device.driver);
      return driver?.instruct(device, deviceEntryId, wanted) ?? later(absent(device), false);
    },
    async queueStatus(device) {
      return drivers.get(device.driver)?.queueStatus(device) ?? { kind: 'unknown' };
    },
    async knownEntries(device) {
      const answer = await drivers.get(device.driver)?.queueStatus(device);
      return answer?.kind === 'entries' ? answer.entries.map((entry) => entry.queueEntryId) : null;
    },
    driver: (name) => drivers.get(name),
    require(names) {
      const missing = [...new Set(names)].filter((name) => !drivers.has(name));
      if (missing.length > 0) {
        const known = [...drivers.keys()].join(', ');
        throw new Fault('SETTING', `No device driver is called ${missing.join(', ')}; there are ${known}.`);
      }
    },
  };
}
