import type { Fetched, Store } from '#libs/flow';
import { done, error, type Result, refuse } from '#libs/kernel';
import { type AddressGuard, fetchGuarded, makeAddressGuard, type Package, resolveCid } from '#libs/wire';
import { besideOf, sha256, unpack } from './unpack.js';

const FETCH_TIMEOUT_MS = 10_000;

/** The package that a message came in. */
export interface MessagePackage {
  readonly pack: Package;
  readonly bytes: Uint8Array;
  readonly contentType: string;
}

/** The guard with what the truth knows of devices now, so that a device registered a second ago on another server counts. */
export interface DocumentDoor {
  readonly guard: AddressGuard;
  /** Reads what a URL in a message names: a part of the same package, a file below a root, or an allowed host. */
  read(url: string, around: MessagePackage | null): Promise<Result<Fetched>>;
}

/**
 * What may be read for a message or ticket, through one guard: below `fileRoots`, from `allowedHosts` and registered
 * devices, at most `maxBytes`.
 */
export function documentDoor(
  store: Pick<Store, 'devices'>,
  settings: {
    readonly fileRoots: readonly string[];
    readonly allowedHosts: readonly string[];
    readonly maxBytes: number;
  },
): DocumentDoor {
  let devices: readonly string[] = [];
  const guard = makeAddressGuard({ ...settings, registeredDevices: () => devices });
  const fresh: AddressGuard = {
    async check(url) {
      devices = (await store.devices()).flatMap((device) => (device.url === null ? [] : [device.url]));
      return guard.check(url);
    },
  };
  return {
    guard: fresh,
    async read(url, around) {
      if (/^cid:/i.test(url)) return around === null ? refuse(noPackage(url)) : partOf(around, url);
      const limits = { maxBytes: settings.maxBytes, timeoutMs: FETCH_TIMEOUT_MS };
      const fetched = await fetchGuarded(url, fresh, limits);
      if (!fetched.ok) return fetched;
      const { bytes, contentType } = fetched.value;
      const mediaType = contentType || 'application/octet-stream';
      return done({
        bytes,
        sha256: sha256(bytes),
        mediaType,
        name: null,
        ...(await unpack(bytes, contentType || null)),
      });
    },
  };
}

const noPackage = (url: string) =>
  error(
    'PACKAGE_PART_MISSING',
    `"${url.slice(0, 200)}" names a part, but the message came without a package.`,
  );

/** A part as the ticket, with the package around it as the document that is kept: what it refers to lies there. */
function partOf({ pack, bytes, contentType }: MessagePackage, url: string): Result<Fetched> {
  const part = resolveCid(pack, url);
  if (!part.ok) return part;
  return done({
    bytes,
    sha256: sha256(bytes),
    mediaType: contentType,
    name: null,
    ticket: { bytes: part.value.bytes, part: part.value.name, beside: besideOf(pack) },
    problems: [],
  });
}
