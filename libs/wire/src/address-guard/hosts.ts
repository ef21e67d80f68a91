import { canonicalAddress } from './addresses.js';

/** How a host came to be reachable: named as such, or only through a `*` entry, which opens public addresses alone. */
export type HostGrant = 'named' | 'wildcard' | 'none';

/** One form for every spelling of a host: lower case, no trailing dot, IP literals canonical and without brackets. */
export function canonicalHost(host: string): string {
  const lower = host.toLowerCase().replace(/\.$/, '');
  return canonicalAddress(lower) ?? lower;
}

interface HostEntry {
  readonly host: string;
  readonly port: number | null;
}

/** `host`, `host:port`, `[v6]:port`, a bare IPv6 address, or a `http(s)://…` URL of which only the origin counts. */
function readEntry(entry: string): HostEntry | null {
  const text = entry.trim();
  const bareV6 = canonicalAddress(text);
  if (bareV6 !== null) return { host: bareV6, port: null };
  const hasScheme = /^https?:\/\//i.test(text);
  const origin = hasScheme ? text.replace(/^(https?:\/\/[^/?#]*).*$/i, '$1') : text;
  // Read from the text, because the URL parser drops a default port that somebody wrote on purpose.
  const port = /:(\d{1,5})$/.exec(origin)?.[1];
  try {
    const url = new URL(hasScheme ? origin : `http://${text}`);
    const implied = hasScheme ? defaultPort(url.protocol) : null;
    return { host: canonicalHost(url.hostname), port: port === undefined ? implied : Number(port) };
  } catch {
    return null;
  }
}

/** The port that an address without one means: 443 for https, else 80. */
export function defaultPort(protocol: string): number {
  return protocol === 'https:' ? 443 : 80;
}

/**
 * Whether `host`:`port` may be approached. `entries` are SIDELAY_ALLOWED_HOSTS: `host` (any port), `host:port`,
 * `*.domain` or `*`; `devices` are origins of registered devices, which match with their port only.
 */
export function grantFor(
  host: string,
  port: number,
  entries: readonly string[],
  devices: readonly string[],
): HostGrant {
  const wanted = canonicalHost(host);
  const names = (entry: string, portIfLeftOut: number): boolean => {
    const read = readEntry(entry);
    return read !== null && read.host === wanted && (read.port ?? portIfLeftOut) === port;
  };
  if (entries.some((entry) => !entry.includes('*') && names(entry, port))) return 'named';
  if (devices.some((device) => names(device, defaultPort('http:')))) return 'named';
  const byWildcard = entries.some((entry) => {
    const pattern = entry.trim().toLowerCase();
    return pattern === '*' || (pattern.startsWith('*.') && wanted.endsWith(pattern.slice(1)));
  });
  return byWildcard ? 'wildcard' : 'none';
}
