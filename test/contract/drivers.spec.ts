import { mkdir, mkdtemp, readdir, readFile, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { realClock, seededRandom, uuidV7Source } from '#libs/kernel';
import {
  closeConnections,
  type DriverPorts,
  driverKinds,
  makeAddressGuard,
  makeDeviceLink,
} from '#libs/wire';
import { aDevice, type DriverWorld, exerciseDriver } from './driver.contract.js';
import { SmallJmfDevice } from './small-jmf-device.js';

const clock = realClock();

function driverFor(name: string, fileRoots: readonly string[], devices: readonly string[]) {
  const ports: DriverPorts = {
    guard: makeAddressGuard({ fileRoots, allowedHosts: [], registeredDevices: () => devices }),
    clock,
    ids: uuidV7Source(clock, seededRandom(7420)),
    senderId: 'sidelay',
    timeoutMs: 2000,
  };
  const driver = makeDeviceLink(ports).driver(name);
  if (driver === undefined) throw new Error(`no driver ${name}`);
  return driver;
}

/** Benches and our own workstation are sent nothing. */
const nothingSent = (name: 'bench' | 'automatic') => async (): Promise<DriverWorld> => {
  return {
    driver: driverFor(name, [], []),
    device: aDevice(name === 'bench' ? 'bench' : 'prepress', name, null),
    tickets: () => null,
    loseAnswer: null,
    away: null,
    close: async () => undefined,
  };
};

async function hotFolderWorld(): Promise<DriverWorld> {
  const base = await mkdtemp(join(tmpdir(), 'sidelay-driver-'));
  const folder = join(base, 'in');
  await mkdir(folder);
  return {
    driver: driverFor('hotFolder', [base], []),
    device: aDevice('folder', 'hotFolder', pathToFileURL(folder).href),
    async tickets() {
      const names = await readdir(folder);
      const texts = await Promise.all(names.map((name) => readFile(join(folder, name), 'utf8')));
      return new Map(names.map((name, i) => [name, texts[i]!]));
    },
    loseAnswer: null,
    away: (gone) => (gone ? rename(folder, `${folder}-away`) : rename(`${folder}-away`, folder)),
    close: () => rm(base, { recursive: true }),
  };
}

async function jmfWorld(): Promise<DriverWorld> {
  const small = new SmallJmfDevice();
  const url = await small.open();
  return {
    driver: driverFor('jmf', [], [url]),
    device: aDevice('press', 'jmf', url),
    tickets: async () =>
      new Map(
        small.entries.filter(({ status }) => status !== 'Aborted').map(({ id, ticket }) => [id, ticket]),
      ),
    loseAnswer: () => {
      small.loseNext = true;
    },
    async away(gone) {
      if (gone) await small.close();
      else await small.open();
    },
    async close() {
      closeConnections();
      await small.close();
    },
  };
}

const worlds: Readonly<Record<string, () => Promise<DriverWorld>>> = {
  automatic: nothingSent('automatic'),
  bench: nothingSent('bench'),
  hotFolder: hotFolderWorld,
  jmf: jmfWorld,
};

for (const [name, make] of Object.entries(worlds)) exerciseDriver(name, make);

describe('the shared driver suite', () => {
  it('is run over every driver there is', () => {
    expect(Object.keys(worlds).sort()).toEqual(driverKinds.map(({ name }) => name).sort());
  });
});
