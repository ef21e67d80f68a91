import ipaddr from 'ipaddr.js';

/**
 * What an IP address is to the guard: `public` (anybody's), `inside` (this machine or the plant's own network: only for
 * hosts that were named), `never` (nothing that a job ticket has business with, whoever names it).
 */
export type AddressClass = 'public' | 'inside' | 'never';

/** Ranges by their names in ipaddr.js, which follow the IANA special-purpose registries (RFC 6890). */
const INSIDE: ReadonlySet<string> = new Set([
  'loopback',
  'private',
  'linkLocal',
  'carrierGradeNat',
  'uniqueLocal',
]);

/**
 * Addresses at which cloud hosts answer with credentials. 169.254.169.254 and fd00:ec2::254 are the widely documented
 * ones; the others are from memory. They lie in ranges that a plant may use, so they are named one by one.
 */
const METADATA: ReadonlySet<string> = new Set([
  '169.254.169.254',
  '169.254.170.2',
  '100.100.100.200',
  '168.63.129.16',
  'fd00:ec2::254',
]);

/** IPv6 addresses given out to the world so far (RFC 4291 section 2.4; IANA allocates only from 2000::/3). */
const GLOBAL_UNICAST = ipaddr.IPv6.parseCIDR('2000::/3');

/**
 * The canonical text of an IP literal (IPv4-mapped IPv6 becomes IPv4, a zone is dropped), or null if `text` is a name.
 * Other spellings (decimal, octal, hexadecimal, short) are unified earlier, by the URL parser.
 */
export function canonicalAddress(text: string): string | null {
  const bare = text.startsWith('[') && text.endsWith(']') ? text.slice(1, -1) : text;
  if (ipaddr.IPv4.isValidFourPartDecimal(bare)) return ipaddr.IPv4.parse(bare).toString();
  if (!bare.includes(':') || !ipaddr.IPv6.isValid(bare)) return null;
  const v6 = ipaddr.IPv6.parse(bare);
  v6.zoneId = undefined;
  return isMapped(v6) ? v6.toIPv4Address().toString() : v6.toString();
}

/** Class of an address; text that is no IP address at all is `never`. */
export function classifyAddress(text: string): AddressClass {
  const canonical = canonicalAddress(text);
  if (canonical === null || METADATA.has(canonical)) return 'never';
  const address = ipaddr.parse(canonical);
  const range: string = address.range();
  if (INSIDE.has(range)) return 'inside';
  if (range !== 'unicast') return 'never';
  if (address.kind() === 'ipv4') return 'public';
  return (address as ipaddr.IPv6).match(GLOBAL_UNICAST) ? 'public' : 'never';
}

// ipaddr.js reads the mapped form from its text; ::ffff:0:0/96 by the bits keeps ::/96 (deprecated) out of it.
function isMapped(address: ipaddr.IPv6): boolean {
  const { parts } = address;
  return parts.slice(0, 5).every((part) => part === 0) && parts[5] === 0xffff;
}
