import { crc32, deflateRawSync } from 'node:zlib';
import { valueIn } from '../../../../test/kit/value-in.js';
import { packageLimits } from './package.js';
import { packageKind } from './read-package.js';
import { readZip } from './read-zip.js';

/** Written by another implementation (Info-ZIP 3.0): sub/, sub/a.pdf, job.jdf, job.jmf. */
const byAnother = Buffer.from(
  'UEsDBAoAAAAAALFMeV0AAAAAAAAAAAAAAAAEAAAAc3ViL1BLAwQUAAAACACxTHldULKE+g0AAAAYAAAACQAAAHN1Yi9hLnBkZkvOzytJzStRSEaluQBQSwMECgAA' +
    'AAAAsUx5XaNc9m4YAAAAGAAAAAcAAABqb2IuamRmPEpERiB4bWxucz0ieCIgSUQ9ImEiLz4KUEsDBAoAAAAAALFMeV31UXHQBwAAAAcAAAAHAAAAam9iLmptZjxKTUYv' +
    'PgpQSwECHgMKAAAAAACxTHldAAAAAAAAAAAAAAAABAAAAAAAAAAAABAA7UEAAAAAc3ViL1BLAQIeAxQAAAAIALFMeV1QsoT6DQAAABgAAAAJAAAAAAAAAAEAAACkgSIA' +
    'AABzdWIvYS5wZGZQSwECHgMKAAAAAACxTHldo1z2bhgAAAAYAAAABwAAAAAAAAABAAAApIFWAAAAam9iLmpkZlBLAQIeAwoAAAAAALFMeV31UXHQBwAAAAcAAAAHAAAA' +
    'AAAAAAEAAACkgZMAAABqb2Iuam1mUEsFBgAAAAAEAAQA0wAAAL8AAAAAAA==',
  'base64',
);

interface Entry {
  readonly name: string;
  readonly data: string | Buffer;
  readonly method?: number;
  readonly flags?: number;
  readonly mode?: number;
  /** Says another size or sum than is true. */
  readonly size?: number;
  readonly sum?: number;
  /** Shares the bytes of the entry before. */
  readonly overlap?: boolean;
}

/** A ZIP after APPNOTE 6.3 (local header, central directory, end record), with the faults that a test asks for. */
function zipOf(entries: readonly Entry[]): Buffer {
  const local: Buffer[] = [];
  const central: Buffer[] = [];
  let at = 0;
  let last = 0;
  for (const entry of entries) {
    const data = Buffer.from(entry.data as string);
    const method = entry.method ?? 8;
    const packed = method === 8 ? deflateRawSync(data) : data;
    const name = Buffer.from(entry.name);
    const fixed = Buffer.alloc(26);
    fixed.writeUInt16LE(20, 0);
    fixed.writeUInt16LE(entry.flags ?? 0x800, 2);
    fixed.writeUInt16LE(method, 4);
    fixed.writeUInt32LE(entry.sum ?? crc32(data), 10);
    fixed.writeUInt32LE(packed.length, 14);
    fixed.writeUInt32LE(entry.size ?? data.length, 18);
    fixed.writeUInt16LE(name.length, 22);
    const offset = entry.overlap ? last : at;
    if (!entry.overlap) {
      const whole = Buffer.concat([Buffer.from('PK\x03\x04'), fixed, name, packed]);
      local.push(whole);
      last = at;
      at += whole.length;
    }
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(((entry.mode ?? 0o100644) << 16) >>> 0, 6);
    tail.writeUInt32LE(offset, 10);
    central.push(Buffer.concat([Buffer.from('PK\x01\x02'), Buffer.from([20, 3]), fixed, tail, name]));
  }
  const end = Buffer.alloc(18);
  end.writeUInt16LE(entries.length, 4);
  end.writeUInt16LE(entries.length, 6);
  const directory = Buffer.concat(central);
  end.writeUInt32LE(directory.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...local, directory, Buffer.from('PK\x05\x06'), end]);
}

const job = { name: 'job.jdf', data: '<JDF/>' };

describe('a ZIP package', () => {
  it('is read as another implementation wrote it, the message first', async () => {
    expect(packageKind(byAnother, null)).toBe('zip');
    const pack = valueIn(await readZip(byAnother));
    expect(pack.parts.map(({ name, mediaType }) => [name, mediaType])).toEqual([
      ['job.jmf', 'application/vnd.cip4-jmf+xml'],
      ['job.jdf', 'application/vnd.cip4-jdf+xml'],
      ['sub/a.pdf', 'application/pdf'],
    ]);
    expect(Buffer.from(pack.parts[2]!.bytes).toString()).toBe('content content content\n');
  });

  it('takes the ticket in the root folder before those in other folders', async () => {
    const pack = await readZip(
      zipOf([
        { name: 'a/b.xjdf', data: '<XJDF/>' },
        { name: 'z.xml', data: '<XJDF/>' },
      ]),
    );
    expect(pack.ok && pack.value.parts.map(({ name }) => name)).toEqual(['z.xml', 'a/b.xjdf']);
  });

  it.each<[string, Entry[]]>([
    ['a name that climbs', [job, { name: '../../etc/cron.d/x', data: 'x' }]],
    ['an absolute name', [job, { name: '/etc/passwd', data: 'x' }]],
    ['a drive letter', [job, { name: 'C:/x', data: 'x' }]],
    ['a backslash in a name', [job, { name: '..\\..\\x', data: 'x' }]],
    ['a control character in a name', [job, { name: 'a\u0000.pdf', data: 'x' }]],
    ['one name twice', [job, { name: 'JOB.jdf', data: 'x' }]],
    ['a link', [job, { name: 'a', data: '/etc/passwd', mode: 0o120777, method: 0 }]],
    ['a device', [job, { name: 'a', data: '', mode: 0o020644, method: 0 }]],
    ['an encrypted entry', [job, { name: 'a', data: 'x', flags: 0x801 }]],
    ['an unknown method', [job, { name: 'a', data: 'x', method: 99 }]],
    ['entries that share bytes', [job, { ...job, name: 'job2.jdf', overlap: true }]],
    ['a size that is too small', [job, { name: 'a.pdf', data: 'x'.repeat(5000), size: 10 }]],
    ['a size that is too large', [job, { name: 'a.pdf', data: 'x', size: 5000 }]],
    ['a wrong sum', [job, { name: 'a.pdf', data: 'x', sum: 1 }]],
    ['no ticket', [{ name: 'a.pdf', data: '%PDF' }]],
    ['no entry', []],
  ])('is refused as broken with %s', async (_what, entries) => {
    expect(await readZip(zipOf(entries))).toMatchObject({
      ok: false,
      problems: [{ code: 'PACKAGE_BROKEN' }],
    });
  });

  it('is refused beyond twenty times its own size, before anything is unpacked', async () => {
    const bomb = zipOf([job, { name: 'a.pdf', data: Buffer.alloc(5_000_000) }]);
    expect(bomb.length).toBeLessThan(10_000);
    expect(await readZip(bomb)).toMatchObject({
      ok: false,
      problems: [{ code: 'PACKAGE_LIMIT', path: 'a.pdf' }],
    });
    const spread = zipOf([
      job,
      ...Array.from({ length: 40 }, (_, i) => ({ name: `${i}.pdf`, data: Buffer.alloc(90_000) })),
    ]);
    expect(await readZip(spread)).toMatchObject({ ok: false, problems: [{ code: 'PACKAGE_LIMIT' }] });
  });

  it('lets a small ticket compress as well as it can', async () => {
    const ticket = `<JDF>${'<Comment/>'.repeat(20_000)}</JDF>`;
    const zip = zipOf([{ name: 'a.jdf', data: ticket }]);
    expect(ticket.length / zip.length).toBeGreaterThan(20);
    expect((await readZip(zip)).ok).toBe(true);
  });

  it('is refused beyond the limits of entries and bytes', async () => {
    const over = { ok: false, problems: [{ code: 'PACKAGE_LIMIT' }] };
    const three = zipOf([job, { name: 'a', data: 'aaaa' }, { name: 'b', data: 'bbbb' }]);
    expect(await readZip(three, { ...packageLimits, maxParts: 2 })).toMatchObject(over);
    expect(await readZip(three, { ...packageLimits, maxBytes: 13 })).toMatchObject(over);
    expect((await readZip(three, { ...packageLimits, maxBytes: 14, maxParts: 3 })).ok).toBe(true);
  });

  it('is refused when it is cut short anywhere', async () => {
    for (let length = 0; length < byAnother.length; length += 7) {
      const cut = await readZip(byAnother.subarray(0, length));
      expect([length, cut.ok]).toEqual([length, false]);
    }
  });
});
