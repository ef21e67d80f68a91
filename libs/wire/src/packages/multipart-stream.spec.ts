import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import PostalMime from 'postal-mime';
import type { IdSource, Result } from '#libs/kernel';
import { valueIn } from '../../../../test/kit/value-in.js';
import { gathered } from './byte-source.js';
import { type PackageLimits, type PartToSend, packageLimits } from './package.js';
import type { PartSink } from './part-sink.js';
import { toMemory } from './part-sink.js';
import { type StreamedPart, streamMultipart } from './read-multipart.js';
import { writeMultipart } from './write-multipart.js';

const JDF = 'application/vnd.cip4-jdf+xml';
const bytesOf = (source: string): Buffer => Buffer.from(source, 'latin1');

async function* inChunks(bytes: Uint8Array, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  let at = 0;
  for (let i = 0; at < bytes.length; i++) {
    const size = sizes[i % sizes.length]!;
    // Copies, as from a socket: a reader that kept a view of what is overwritten would be found out.
    const chunk = Buffer.from(bytes.subarray(at, at + size));
    yield chunk;
    chunk.fill(0x21);
    at += size;
  }
}

/** Keeps a copy, since the chunks above are overwritten behind it. */
function copying(): PartSink<Uint8Array> {
  const sink = toMemory();
  return { ...sink, write: (bytes) => sink.write(Uint8Array.from(bytes)) };
}

type Read = Result<readonly StreamedPart<Uint8Array>[]>;
const read = (
  bytes: Uint8Array,
  sizes: readonly number[] = [65_536],
  type: string | null = 'multipart/related; boundary=b',
  limits: PackageLimits = packageLimits,
): Promise<Read> => streamMultipart(inChunks(bytes, sizes), type, copying, limits);

/** Everything that a reading says, in a form that two readings can be compared in. */
const said = (reading: Read): unknown =>
  reading.ok
    ? [
        reading.value.map(({ head, content }) => [head, Buffer.from(content).toString('latin1')]),
        reading.problems,
      ]
    : reading.problems;
const contents = (reading: Read): string[] => {
  if (!reading.ok) throw new Error(reading.problems[0]!.message);
  return reading.value.map(({ content }) => Buffer.from(content).toString('utf8'));
};

/**
 * Quoted-printable as RFC 2045 section 6.7 writes it, for tests: everything escaped that may be, in lines of 75
 * characters and a soft break.
 */
const quotedPrintable = (bytes: Uint8Array): string =>
  (
    [...bytes]
      .map((byte) => `=${byte.toString(16).toUpperCase().padStart(2, '0')}`)
      .join('')
      .match(/.{1,75}/g) ?? []
  ).join('=\r\n');

/**
 * The forms of RFC 2046 section 5.1.1 in one package: a preamble, a part without any header, one with an explicit type,
 * blanks behind a boundary, an epilogue. The texts are ours.
 */
const rfc2046 = [
  'For readers of mail that knows no multipart.',
  '--b',
  '',
  'Typed by nobody; does NOT end with a line break.',
  '--b  \t',
  'Content-type: text/plain; charset=us-ascii',
  '',
  'Typed; DOES end with a line break.',
  '',
  '--b--  ',
  'Epilogue',
].join('\r\n');

/** RFC 2387 section 5: the root named by `start`, another part in an encoding; ids and texts ours. */
const rfc2387 = [
  '--b',
  'Content-Type: image/png',
  'Content-ID: <2.box@plant.example>',
  'Content-Transfer-Encoding: BASE64',
  '',
  'iVBORw0K',
  'Ggo=',
  '--b',
  `Content-Type: ${JDF};`,
  '\tcharset=UTF-8',
  'Content-ID: <1.box@plant.example>',
  '',
  '<JDF/>',
  '--b--',
].join('\r\n');

/** A package in a package in a package, in RFC 2046's form for nesting: each with a boundary of its own. */
const nested = [
  '--b',
  `Content-Type: ${JDF}`,
  '',
  '<JDF/>',
  '--b',
  'Content-Type: multipart/mixed; boundary="b2"',
  'Content-ID: <bundle@x>',
  '',
  'inner preamble',
  '--b2',
  'Content-Type: text/plain',
  '',
  'first',
  '--b2',
  'Content-Type: multipart/related; boundary=b3',
  '',
  '--b3',
  'Content-Type: image/tiff',
  'Content-ID: <deep@x>',
  'Content-Transfer-Encoding: base64',
  '',
  'aW5uZXJtb3N0',
  '--b3--',
  '',
  '--b2--',
  'inner epilogue',
  '--b',
  'Content-Type: text/plain',
  'Content-Transfer-Encoding: quoted-printable',
  '',
  'largo =  ',
  'allegro=',
  '--b--',
  '',
].join('\r\n');

describe('a multipart that comes as a stream', () => {
  it('is read in the forms of RFC 2046, with a word on the part that has no type', async () => {
    const reading = await read(bytesOf(rfc2046));
    expect(contents(reading)).toEqual([
      'Typed by nobody; does NOT end with a line break.',
      'Typed; DOES end with a line break.\r\n',
    ]);
    expect(reading.problems).toMatchObject([{ severity: 'warning', code: 'PACKAGE_FORM', path: 'part 1' }]);
  });

  it('has the root first that RFC 2387 has named by start', async () => {
    const type = `Multipart/Related; boundary=b; start="<1.box%40plant.example>"; type="${JDF}"`;
    const reading = await read(bytesOf(rfc2387), [5], type);
    expect(contents(reading)).toEqual(['<JDF/>', Buffer.from('89504e470d0a1a0a', 'hex').toString('utf8')]);
    const absent = await read(bytesOf(rfc2387), [5], 'multipart/related; boundary=b; start=3@x');
    expect(absent).toMatchObject({ ok: false, problems: [{ code: 'PACKAGE_BROKEN' }] });
  });

  it('gives the parts of packages inside it in their place', async () => {
    const reading = await read(bytesOf(nested));
    expect(contents(reading)).toEqual(['<JDF/>', 'first', 'innermost', 'largo allegro']);
    const heads = reading.ok ? reading.value.map(({ head }) => head) : [];
    // The id of a package means its root (RFC 2387 section 3.4).
    expect(heads.map(({ label, contentId, mediaType }) => [label, contentId, mediaType])).toEqual([
      ['part 1', null, JDF],
      ['part 2.1', 'bundle@x', 'text/plain'],
      ['part 2.2.1', 'deep@x', 'image/tiff'],
      ['part 3', null, 'text/plain'],
    ]);
    const flat = { ...packageLimits, maxDepth: 2 };
    expect(await read(bytesOf(nested), [99], 'multipart/related; boundary=b', flat)).toMatchObject({
      problems: [{ code: 'PACKAGE_LIMIT', path: 'part 2.2' }],
    });
    const few = { ...packageLimits, maxParts: 4 };
    expect((await read(bytesOf(nested), [99], 'multipart/related; boundary=b', few)).ok).toBe(false);
  });

  it.each<[string, string, string]>([
    ['ends where the outer one goes on', nested.replace('--b2--', '--b2'), 'part 2.3'],
    ['lacks its boundary', nested.replaceAll('--b3', '--c3'), 'part 2.2'],
    ['names none', nested.replace('; boundary="b2"', ''), 'part 2'],
    [
      'is encoded as a whole',
      nested.replace('Content-ID: <bundle@x>', 'Content-Transfer-Encoding: base64'),
      'part 2',
    ],
    ['repeats the id of another part', nested.replace('<deep@x>', '<BUNDLE%40x>'), 'BUNDLE%40x'],
  ])('is broken when a package inside it %s', async (_what, source, path) => {
    const reading = await read(bytesOf(source), [7]);
    expect(reading).toMatchObject({ ok: false, problems: [{ code: 'PACKAGE_BROKEN', path }] });
  });

  it('says the same wherever the chunks are cut', async () => {
    const sources = [rfc2046, rfc2387, nested, nested.replaceAll('\r\n', '\n'), nested.slice(0, 700)];
    for (const source of sources) {
      const bytes = bytesOf(source);
      const whole = said(await read(bytes));
      for (const sizes of [[1], [2], [3], [7], [1, 64]]) {
        expect([sizes, said(await read(bytes, sizes))]).toEqual([sizes, whole]);
      }
      await fc.assert(
        fc.asyncProperty(
          fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 40 }),
          async (sizes) => expect(said(await read(bytes, sizes))).toEqual(whole),
        ),
        { seed: 7420, numRuns: 40 },
      );
    }
  });

  it('is refused with a place or a reason when it is cut short at any byte', async () => {
    for (const source of [rfc2387, nested]) {
      const end = source.lastIndexOf('--b--') + '--b--'.length;
      for (let length = 0; length < end; length++) {
        const reading = await read(bytesOf(source.slice(0, length)), [length % 13 || 13]);
        expect([length, reading.ok]).toEqual([length, false]);
        expect(reading.problems[0]!.message).toMatch(/breaks off|boundary|claim/);
      }
      expect((await read(bytesOf(source.slice(0, end)))).ok).toBe(true);
    }
  });

  it('reads back what was written, whatever the parts, encodings and chunks', async () => {
    let n = 0;
    const ids: IdSource = { next: () => `${n++}` };
    const tricky = fc
      .array(
        fc.constantFrom(
          '--sidelay-0',
          '\r\n',
          '\n',
          '\r',
          '--sidelay-1--',
          ' ',
          '=',
          '--',
          'a',
          '\t\r\n--sidelay-0 ',
        ),
        { maxLength: 12 },
      )
      .map((words) => Uint8Array.from(Buffer.from(words.join(''), 'latin1')));
    const content = fc.oneof(fc.uint8Array({ maxLength: 400 }), tricky);
    const part = fc.record({ content, name: fc.string(), asStream: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(
        fc.array(part, { minLength: 1, maxLength: 5 }),
        fc.constantFrom('base64', '8bit', 'binary' as const),
        fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 5 }),
        async (parts, encoding, sizes) => {
          n = 0;
          const sent = parts.map(
            ({ content: bytes, name, asStream }, i): PartToSend => ({
              name: `x${name.replace(/[/\\]/g, '')}x`,
              contentId: i % 2 === 0 ? null : `p${i}@x`,
              mediaType: 'application/pdf',
              // Of a stream nobody can know beforehand that a boundary is in it, so only base64 is proof against any.
              content: asStream && encoding === 'base64' ? inChunks(bytes, sizes) : bytes,
            }),
          );
          const written = writeMultipart({ parts: sent, encoding: encoding as 'base64' }, ids);
          const back = valueIn(await read(await gathered(written.body), sizes, written.contentType));
          expect(back.map((one) => Buffer.from(one.content).toString('hex'))).toEqual(
            parts.map((one) => Buffer.from(one.content).toString('hex')),
          );
          expect(back.map(({ head }) => head.contentId)).toEqual(sent.map((one) => one.contentId));
        },
      ),
      { seed: 7420, numRuns: 200 },
    );
  });

  it('reads quoted-printable back to the bytes it was made from', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 300 }),
        fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 5 }),
        async (bytes, sizes) => {
          const source = `--b\r\nContent-Transfer-Encoding: quoted-printable\r\nContent-Type: x/y\r\n\r\n${quotedPrintable(bytes)}\r\n--b--`;
          const back = await read(bytesOf(source), sizes);
          expect(back.ok && Buffer.from(back.value[0]!.content).equals(bytes)).toBe(true);
        },
      ),
      { seed: 7420, numRuns: 100 },
    );
  });

  it.each<[string, string, string, string | null]>([
    ['base64', 'QUJD\r\n RA==\r\n', 'ABCD', null],
    ['base64', 'QUJDRA=\r\n=', 'ABCD', null],
    ['BASE64', '', '', null],
    ['base64', 'QUJDRA', '', 'not the "base64"'],
    ['base64', 'QUJDRA==QUJD', '', 'not the "base64"'],
    ['base64', 'QU-D', '', 'not the "base64"'],
    ['quoted-printable', 'a=3D=3d b  \r\nc \t', 'a== b\r\nc', null],
    ['quoted-printable', 'soft = \t\r\nbreak=\nand last=', 'soft breakand last', null],
    ['quoted-printable', 'a=3', '', 'not the "quoted-printable"'],
    ['quoted-printable', 'a=  b', '', 'not the "quoted-printable"'],
    ['binary', 'a\0\r\r\n\n', 'a\0\r\r\n\n', null],
    ['8bit', 'gr\xf6\xdfe', 'gr\xf6\xdfe', null],
    ['x-uuencode', 'M', '', 'no known encoding'],
  ])('in %s reads %j as it should be (RFC 2045 section 6)', async (encoding, body, wanted, refusal) => {
    const source = `--b\r\nContent-Type: x/y\r\nContent-Transfer-Encoding: ${encoding}\r\n\r\n${body}\r\n--b--`;
    for (const sizes of [[1], [2], [3], [999]]) {
      const reading = await read(bytesOf(source), sizes);
      if (refusal !== null) expect(reading.problems[0]?.message).toContain(refusal);
      else expect(reading.ok && Buffer.from(reading.value[0]!.content).toString('latin1')).toBe(wanted);
    }
  });

  it('warns of a part that claims 7bit and is not, and takes it', async () => {
    const reading = await read(
      bytesOf('--b\nContent-Type: x/y\nContent-Transfer-Encoding: 7bit\n\ngr\xf6\xdfe\n--b--'),
    );
    expect(reading).toMatchObject({
      ok: true,
      problems: [{ severity: 'warning', code: 'PACKAGE_FORM', path: 'part 1' }],
    });
  });

  it('goes to disk or into a digest as its sinks like, and leaves nothing of a package that breaks off', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'sidelay-parts-'));
    let opened = 0;
    const discarded: string[] = [];
    const toDisk = (name: string): PartSink<string> => {
      const path = join(folder, name);
      const file = createWriteStream(path);
      return {
        write: (bytes) =>
          new Promise((settle, fail) => {
            file.write(Uint8Array.from(bytes), (cause) => (cause ? fail(cause) : settle()));
          }),
        close: () => new Promise((settle) => file.end(() => settle(path))),
        discard: async () => {
          await new Promise<void>((settle) => file.end(() => settle()));
          await rm(path);
          discarded.push(name);
        },
      };
    };
    const toDigest = (): PartSink<string> => {
      const hash = createHash('sha256');
      return {
        write: (bytes) => void hash.update(bytes),
        close: () => hash.digest('hex'),
        discard: () => undefined,
      };
    };
    const open = (): PartSink<string> => (opened++ % 2 === 0 ? toDisk(`${opened}`) : toDigest());
    const reading = await streamMultipart(
      inChunks(bytesOf(nested), [11]),
      'multipart/related; boundary=b',
      open,
    );
    const [first, second] = reading.ok ? reading.value.map(({ content }) => content) : [];
    expect(await readFile(first!, 'utf8')).toBe('<JDF/>');
    expect(second).toBe(createHash('sha256').update('first').digest('hex'));
    opened = 0;
    const before = await readdir(folder);
    const half = bytesOf(nested.slice(0, nested.indexOf('<JDF/>') + 3));
    const cut = await streamMultipart(inChunks(half, [5]), 'multipart/related; boundary=b', () =>
      toDisk(`cut-${++opened}`),
    );
    expect([cut.ok, discarded, await readdir(folder)]).toEqual([false, ['cut-1'], before]);
    await rm(folder, { recursive: true });
  });

  it('passes on what a source or a sink throws, after it has discarded', async () => {
    async function* failing(): AsyncGenerator<Uint8Array> {
      yield bytesOf('--b\nContent-Type: x/y\n\nsome');
      throw new Error('the line is cut');
    }
    let discards = 0;
    const sink: PartSink<null> = {
      write: () => undefined,
      close: () => null,
      discard: () => void discards++,
    };
    const type = 'multipart/related; boundary=b';
    await expect(streamMultipart(failing(), type, () => sink)).rejects.toThrow('the line is cut');
    const full = { ...sink, write: () => Promise.reject(new Error('the disk is full')) };
    await expect(streamMultipart(inChunks(bytesOf(nested), [99]), type, () => full)).rejects.toThrow('full');
    expect(discards).toBe(2);
  });

  it('of a thousand million bytes passes through without being held, and is refused at its limit', async () => {
    const size = 1_000_000_000;
    const head = bytesOf(
      `--b\r\nContent-Type: ${JDF}\r\n\r\n<JDF/>\r\n--b\r\nContent-Type: image/tiff\r\n\r\n`,
    );
    // With what might begin a boundary all along, also across the blocks.
    const block = Buffer.alloc(1_000_000, `\r\n--b${'.'.repeat(994)}\r\n`);
    let given = 0;
    let taken = 0;
    let furthestBehind = 0;
    async function* huge(): AsyncGenerator<Uint8Array> {
      yield head;
      for (; given < size; given += block.length) yield block;
      yield bytesOf('x\r\n--b--\r\n');
    }
    const counting: PartSink<number> = {
      write(bytes) {
        taken += bytes.length;
        furthestBehind = Math.max(furthestBehind, given - taken);
      },
      close: () => taken,
      discard: () => undefined,
    };
    const type = 'multipart/related; boundary=b';
    const open = { ...packageLimits, maxBytes: size * 2, maxPartBytes: size * 2 };
    const reading = await streamMultipart(huge(), type, () => counting, open);
    expect(reading.ok && reading.value.length).toBe(2);
    expect(taken).toBeGreaterThanOrEqual(size);
    expect(furthestBehind).toBeLessThanOrEqual(2 * block.length);
    given = 0;
    taken = 0;
    const refused = await streamMultipart(huge(), type, () => counting);
    expect(refused).toMatchObject({ ok: false, problems: [{ code: 'PACKAGE_LIMIT' }] });
    expect(given).toBeLessThanOrEqual(packageLimits.maxPartBytes + 2 * block.length);
  });
});

describe('a multipart that is written', () => {
  it('is read by another reader as the same parts (postal-mime)', async () => {
    let n = 0;
    const written = writeMultipart(
      {
        encoding: 'base64',
        parts: [
          { name: 'job.jdf', contentId: 'job@x', mediaType: JDF, content: bytesOf('<JDF/>') },
          {
            name: 'größe 1.pdf',
            contentId: 'art@x',
            mediaType: 'application/pdf',
            content: Buffer.alloc(1000, '\0\x01\xff\r\n'),
          },
          { name: 'empty.txt', contentId: null, mediaType: 'application/octet-stream', content: bytesOf('') },
        ],
      },
      { next: () => `${n++}` },
    );
    const mail = Buffer.concat([
      bytesOf(`MIME-Version: 1.0\r\nContent-Type: ${written.contentType}\r\n\r\n`),
      await gathered(written.body),
    ]);
    const { attachments } = await new PostalMime().parse(mail);
    expect(
      attachments.map(({ filename, contentId, mimeType, content }) => [
        filename,
        contentId ?? null,
        mimeType,
        Buffer.from(content as ArrayBuffer).toString('latin1'),
      ]),
    ).toEqual([
      ['job.jdf', '<job@x>', JDF, '<JDF/>'],
      ['größe 1.pdf', '<art@x>', 'application/pdf', Buffer.alloc(1000, '\0\x01\xff\r\n').toString('latin1')],
      ['empty.txt', null, 'application/octet-stream', ''],
    ]);
  });
});
