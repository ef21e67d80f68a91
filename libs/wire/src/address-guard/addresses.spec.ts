import fc from 'fast-check';
import { makeAddressGuard } from './address-guard.js';
import { classifyAddress } from './addresses.js';

/**
 * Ranges and one address in each: IANA IPv4 and IPv6 Special-Purpose Address Registries (RFC 6890, RFC 1918, RFC 3927,
 * RFC 6598, RFC 4193, RFC 5737, RFC 3849, RFC 6052, RFC 3056, RFC 4380), values from memory.
 */
const inside = [
  ...['127.0.0.1', '127.255.255.254', '10.0.0.1', '172.16.0.1', '172.31.255.254', '192.168.1.20'],
  ...[
    '169.254.7.7',
    '100.64.0.1',
    '100.127.255.254',
    '::1',
    'fe80::1',
    'fc00::1',
    'fdff::1',
    '::ffff:10.1.2.3',
  ],
];
const never = [
  ...[
    '0.0.0.0',
    '0.1.2.3',
    '224.0.0.1',
    '255.255.255.255',
    '240.0.0.1',
    '192.0.2.1',
    '198.51.100.9',
    '203.0.113.5',
  ],
  ...[
    '::',
    'ff02::1',
    '2001:db8::1',
    '64:ff9b::7f00:1',
    '2002:7f00:1::1',
    '2001:0:1::1',
    'fec0::1',
    '4000::1',
  ],
  ...[
    '169.254.169.254',
    '100.100.100.200',
    'fd00:ec2::254',
    '::ffff:169.254.169.254',
    '::7f00:1',
    'not an address',
  ],
];
const open = [
  '8.8.8.8',
  '172.32.0.1',
  '100.128.0.1',
  '193.0.0.1',
  '2606:4700::1111',
  '2a00:1450::1',
  '::ffff:8.8.8.8',
];

describe('an IP address before the guard', () => {
  it.each(inside)('is inside when it is of this machine or the plant: %s', (text) => {
    expect(classifyAddress(text)).toBe('inside');
  });
  it.each(never)(
    'is never reached when it is reserved, a metadata service or a translated form: %s',
    (text) => {
      expect(classifyAddress(text)).toBe('never');
    },
  );
  it.each(open)('is public when the registries do not set it apart: %s', (text) => {
    expect(classifyAddress(text)).toBe('public');
  });
});

/** Spellings of one IPv4 address that the WHATWG URL standard ("ends-in-a-number", IPv4 parser) reads alike. */
function spellings(octets: readonly number[]): string[] {
  const [a, b, c, d] = octets as [number, number, number, number];
  const whole = ((a * 256 + b) * 256 + c) * 256 + d;
  const hex = (n: number): string => `0x${n.toString(16)}`;
  const oct = (n: number): string => `0${n.toString(8)}`;
  const pair = (x: number, y: number): string => (x * 256 + y).toString(16);
  return [
    octets.join('.'),
    String(whole),
    hex(whole),
    oct(whole),
    octets.map(hex).join('.'),
    octets.map(oct).join('.'),
    `${a}.${b}.${c * 256 + d}`,
    `${a}.${(b * 256 + c) * 256 + d}`,
    `${octets.join('.')}.`,
    `[::ffff:${octets.join('.')}]`,
    `[::ffff:${pair(a, b)}:${pair(c, d)}]`,
    `[::${pair(a, b)}:${pair(c, d)}]`,
    `[64:ff9b::${pair(a, b)}:${pair(c, d)}]`,
    `[2002:${pair(a, b)}:${pair(c, d)}::1]`,
    octets.join('。'),
    octets
      .map((n) => [...String(n)].map((digit) => String.fromCodePoint(0xff10 + Number(digit))).join(''))
      .join('.'),
  ];
}

describe('an address spelled otherwise', () => {
  const guard = makeAddressGuard({ fileRoots: [], allowedHosts: ['*'], registeredDevices: () => [] });
  const octet = fc.integer({ min: 0, max: 255 });
  const notPublic = fc.oneof(
    fc.tuple(fc.constant(127), octet, octet, octet),
    fc.tuple(fc.constant(10), octet, octet, octet),
    fc.tuple(fc.constant(192), fc.constant(168), octet, octet),
    fc.tuple(fc.constant(169), fc.constant(254), octet, octet),
    fc.tuple(fc.constant(172), fc.integer({ min: 16, max: 31 }), octet, octet),
    fc.tuple(fc.constant(100), fc.integer({ min: 64, max: 127 }), octet, octet),
    fc.tuple(fc.constant(0), octet, octet, octet),
  );

  it('is refused in every spelling when it is not public, even where every host is allowed', async () => {
    await fc.assert(
      fc.asyncProperty(notPublic, async (octets) => {
        for (const host of spellings(octets)) {
          const answer = await guard.check(`http://${host}/x`);
          expect([host, answer.ok]).toEqual([host, false]);
        }
      }),
      { seed: 20240725, numRuns: 200 },
    );
  });

  it('is the same address when it is public, and is what the connection goes to', async () => {
    for (const host of spellings([93, 184, 216, 34]).slice(0, 11)) {
      const answer = await guard.check(`http://${host}/x`);
      expect(answer).toMatchObject({ ok: true, value: { addresses: ['93.184.216.34'] } });
    }
  });
});
