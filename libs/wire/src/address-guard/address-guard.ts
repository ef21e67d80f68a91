import { lookup } from 'node:dns/promises';
import { done, type Result, refuse } from '#libs/kernel';
import { canonicalAddress, classifyAddress } from './addresses.js';
import { insideRoots, readFileUrl, urlRefused, urlUnreadable } from './file-address.js';
import { defaultPort, grantFor } from './hosts.js';

/** An address that may be used, with what was checked: the one real path, or the very IP addresses to connect to. */
export type CheckedAddress =
  | { readonly kind: 'file'; readonly url: string; readonly path: string }
  | {
      readonly kind: 'web';
      readonly url: URL;
      /** Without brackets: for TLS names and sockets. */
      readonly host: string;
      readonly port: number;
      readonly addresses: readonly string[];
    };

/** The one place that decides whether an address from a ticket, a message or a device may be read or reached. */
export interface AddressGuard {
  check(url: string): Promise<Result<CheckedAddress>>;
}

export interface AddressGuardSettings {
  /** SIDELAY_FILE_ROOTS: folders below which `file:` addresses may lie. */
  readonly fileRoots: readonly string[];
  /** SIDELAY_ALLOWED_HOSTS: `host`, `host:port`, `*.domain`, `*`. A wildcard opens public addresses only. */
  readonly allowedHosts: readonly string[];
  /** `host:port` (or URL) of each registered device, asked at every check. */
  readonly registeredDevices: () => readonly string[];
  /** All IP addresses of a name; throws when there are none. Default: the system's resolver. */
  readonly resolve?: (host: string) => Promise<readonly string[]>;
}

/**
 * Refusals carry URL_REFUSED; a name that cannot be resolved is URL_UNREADABLE, since nobody forbade it.
 * Rules: OWASP ASVS 5.0 V1.3.6 (server-side request forgery) and V5.3.2 (paths).
 */
export function makeAddressGuard(settings: AddressGuardSettings): AddressGuard {
  const resolve = settings.resolve ?? resolveBySystem;
  return {
    async check(url) {
      const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(url)?.[1]?.toLowerCase();
      if (scheme === 'file') {
        const path = readFileUrl(url);
        if (!path.ok) return path;
        const real = await insideRoots(url, path.value, settings.fileRoots);
        return real.ok ? done({ kind: 'file', url, path: real.value }) : real;
      }
      if (scheme === 'http' || scheme === 'https') return checkWeb(url, settings, resolve);
      return refuse(urlRefused(url, 'only file, http and https addresses are followed'));
    },
  };
}

async function checkWeb(
  text: string,
  settings: AddressGuardSettings,
  resolve: (host: string) => Promise<readonly string[]>,
): Promise<Result<CheckedAddress>> {
  if (!URL.canParse(text)) return refuse(urlRefused(text, 'it is not a well-formed address'));
  const url = new URL(text);
  if (url.username !== '' || url.password !== '') {
    return refuse(urlRefused(text, 'it carries a name or a password'));
  }
  const port = url.port === '' ? defaultPort(url.protocol) : Number(url.port);
  const grant = grantFor(url.hostname, port, settings.allowedHosts, settings.registeredDevices());
  if (grant === 'none') {
    return refuse(urlRefused(text, 'its host is neither allowed nor a registered device'));
  }
  const literal = canonicalAddress(url.hostname);
  let addresses: readonly string[];
  try {
    addresses = literal === null ? await resolve(url.hostname) : [literal];
  } catch {
    addresses = [];
  }
  if (addresses.length === 0) return refuse(urlUnreadable(text, 'its host name has no address'));
  for (const address of addresses) {
    const kind = classifyAddress(address);
    if (kind === 'never' || (kind === 'inside' && grant !== 'named')) {
      return refuse(urlRefused(text, 'its host lies at an address that is not open to tickets'));
    }
  }
  const host = literal ?? url.hostname;
  const unified = addresses.map((address) => canonicalAddress(address) ?? address);
  return done({ kind: 'web', url, host, port, addresses: [...new Set(unified)] });
}

async function resolveBySystem(host: string): Promise<readonly string[]> {
  return (await lookup(host, { all: true, verbatim: true })).map(({ address }) => address);
}
