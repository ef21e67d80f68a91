import { constants } from 'node:fs';
import { lstat, open, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Device, DispatchOutcome, Parcel } from '#libs/flow';
import { type DriverKind, type DriverPorts, later, refused, taken } from '../device-driver.js';

/**
 * A device that reads tickets from a folder (JDF specification, "Hot folder": the writer avoids half-written files and
 * clashing names). The ticket is written under a hidden temporary name, brought to the disk, then renamed. The entry is
 * named after the file, which is named after the queue entry, so a repeated delivery finds its own file and adds none.
 */
export const hotFolder: DriverKind = {
  name: 'hotFolder',
  make: (ports) => ({
    name: 'hotFolder',
    abilities: { hold: false, abort: true, queueStatus: false },
    submit: (device, parcel) => submit(ports, device, parcel),
    instruct: (device, entry, wanted) => instruct(ports, device, entry, wanted),
    queueStatus: async () => ({ kind: 'unknown' }),
  }),
};

type Place = { readonly folder: string } | { readonly trouble: DispatchOutcome };

/** The device's folder, if the guard lets us write there and it is one. */
async function placeOf(ports: DriverPorts, device: Device): Promise<Place> {
  const checked = await ports.guard.check(device.url ?? '');
  if (!checked.ok) return { trouble: later(checked.problems[0]!.message, true) };
  if (checked.value.kind !== 'file') return { trouble: later(`${device.url} is no folder`, true) };
  const folder = checked.value.path;
  const stat = await lstat(folder).catch(() => null);
  return stat?.isDirectory() === true ? { folder } : { trouble: later(`${device.url} is no folder`, true) };
}

const { O_WRONLY, O_CREAT, O_TRUNC, O_NOFOLLOW } = constants;
/** Whoever can write in the folder could have laid a link under our temporary name. */
const NEW_FILE = O_WRONLY | O_CREAT | O_TRUNC | O_NOFOLLOW;

async function submit(ports: DriverPorts, device: Device, parcel: Parcel): Promise<DispatchOutcome> {
  const place = await placeOf(ports, device);
  if ('trouble' in place) return place.trouble;
  const name = fileNameOf(parcel);
  const target = join(place.folder, name);
  if (await isThere(target)) return taken(name);
  const temporary = join(place.folder, `.${name}.tmp`);
  try {
    const file = await open(temporary, NEW_FILE);
    try {
      await file.writeFile(parcel.document, 'utf8');
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(temporary, target);
    return taken(name);
  } catch (cause) {
    await rm(temporary, { force: true }).catch(() => undefined);
    return later(
      `its folder cannot be written (${(cause as NodeJS.ErrnoException).code ?? 'unknown cause'})`,
      true,
    );
  }
}

async function instruct(
  ports: DriverPorts,
  device: Device,
  entry: string,
  wanted: 'Held' | 'Waiting' | 'Aborted',
): Promise<DispatchOutcome> {
  if (wanted === 'Waiting') return taken(entry);
  if (wanted === 'Held')
    return refused('a device with a hot folder cannot be told to hold; hold it at the machine');
  const place = await placeOf(ports, device);
  if ('trouble' in place) return place.trouble;
  // Entry ids come back from the database; a name that is not of our making is never a path.
  if (!SAFE_NAME.test(entry)) return refused('there is no such ticket in its folder');
  try {
    await rm(join(place.folder, entry));
    return taken(entry);
  } catch {
    return refused('the device has fetched the ticket already; stop it at the machine');
  }
}

const SAFE_NAME = /^[A-Za-z0-9_][A-Za-z0-9._-]*\.jdf$/;

/** Readable at the machine (job and step), unique by the queue entry; no other characters than every file system takes. */
function fileNameOf(parcel: Parcel): string {
  const plain = (text: string): string => text.replace(/[^A-Za-z0-9_-]+/g, '_').slice(0, 60);
  return `${[`j${plain(parcel.jobId)}`, plain(parcel.jobPartId), plain(parcel.entryId)].join('.')}.jdf`;
}

async function isThere(path: string): Promise<boolean> {
  return (await lstat(path).catch(() => null))?.isFile() === true;
}
