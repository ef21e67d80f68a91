import type { Device, Parcel } from '#libs/flow';
import { realClock, seededRandom, uuidV7Source } from '#libs/kernel';
import { makeAddressGuard } from '../address-guard/address-guard.js';
import type { DriverKind, DriverPorts } from './device-driver.js';
import { makeDeviceLink } from './device-link.js';

const clock = realClock();
const ports: DriverPorts = {
  guard: makeAddressGuard({ fileRoots: [], allowedHosts: [], registeredDevices: () => [] }),
  clock,
  ids: uuidV7Source(clock, seededRandom(1)),
  senderId: 'sidelay',
};
const kind = (name: string, calls = name): DriverKind => ({
  name,
  make: () => ({
    name: calls,
    abilities: { hold: false, abort: false, queueStatus: false },
    submit: async () => ({ outcome: 'taken', deviceEntryId: `${name}-1` }),
    instruct: async () => ({ outcome: 'taken', deviceEntryId: `${name}-1` }),
    queueStatus: async () => ({ kind: 'unknown' }),
  }),
});
const device = { id: 'lab', driver: 'carrier' } as Device;
const parcel = {} as Parcel;

describe('the link to devices', () => {
  it('takes drivers of outside packages beside its own', async () => {
    const link = makeDeviceLink(ports, [kind('carrier')]);
    link.require(['jmf', 'hotFolder', 'bench', 'carrier']);
    expect(await link.submit(device, parcel)).toEqual({ outcome: 'taken', deviceEntryId: 'carrier-1' });
  });

  it('does not start with two drivers of one name, or one that calls itself otherwise', () => {
    expect(() => makeDeviceLink(ports, [kind('bench')])).toThrow('Two device drivers are called "bench"');
    expect(() => makeDeviceLink(ports, [kind('a', 'b')])).toThrow('calls itself "b"');
  });

  it('names the drivers that a plant asks for and that are not there', () => {
    expect(() => makeDeviceLink(ports).require(['jmf', 'carrier', 'pigeon'])).toThrow(
      'No device driver is called carrier, pigeon; there are automatic, bench, hotFolder, jmf.',
    );
  });

  it('lets the work of a device wait whose driver is not installed', async () => {
    const link = makeDeviceLink(ports);
    expect(await link.submit(device, parcel)).toMatchObject({ outcome: 'later', silent: false });
    expect(await link.instruct(device, 'x', 'Held')).toMatchObject({ outcome: 'later' });
    expect(await link.queueStatus(device)).toEqual({ kind: 'unknown' });
  });
});
