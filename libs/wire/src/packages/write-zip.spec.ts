import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { unzipSync, zipSync } from 'fflate';
import { valueIn } from '../../../../test/kit/value-in.js';
import { gathered } from './byte-source.js';
import type { PartToSend } from './package.js';
import { readZip } from './read-zip.js';
import { writeZip } from './write-zip.js';

const NOW = Date.parse('2026-03-02T08:00:00Z');
const job: PartToSend = {
  name: 'job.xjmf',
  contentId: null,
  mediaType: 'application/vnd.cip4-xjmf+xml',
  content: Buffer.from('<XJMF/>'),
};
const part = (name: string, content: PartToSend['content']): PartToSend => ({
  name,
  contentId: null,
  mediaType: 'application/pdf',
  content,
});

async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield Buffer.from(bytes.subarray(at, at + size));
}

/** Path steps as people give them: letters of many scripts, blanks, dots inside. */
const step = fc.stringMatching(/^[\p{L}\p{N}_-][\p{L}\p{N} ._-]{0,11}$/u);

describe('a ZIP that is written', () => {
  it('reads back as it was written, from memory and from streams, the message first', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(
          fc.tuple(fc.array(step, { minLength: 1, maxLength: 3 }), fc.uint8Array({ maxLength: 3000 })),
          {
            selector: ([steps]) => steps.join('/').toLowerCase(),
            maxLength: 6,
          },
        ),
        fc.integer({ min: 1, max: 900 }),
        fc.boolean(),
        async (files, size, asStream) => {
          const parts = files.map(([steps, bytes]) => {
            const name = `art/${steps.join('/')}`;
            return { name, bytes, sent: part(name, asStream ? pieces(bytes, size) : bytes) };
          });
          const zip = await gathered(writeZip([job, ...parts.map(({ sent }) => sent)], NOW));
          const back = valueIn(await readZip(zip));
          const [first, ...others] = back.parts;
          expect(first!.name).toBe('job.xjmf');
          const found = new Map(others.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('hex')]));
          expect(found).toEqual(
            new Map(parts.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('hex')])),
          );
          // Another reader judges (fflate).
          const judged = unzipSync(zip);
          for (const { name, bytes } of parts) expect(Buffer.from(judged[name]!).equals(bytes)).toBe(true);
        },
      ),
      { seed: 7420, numRuns: 60 },
    );
  });

  it('has the first part as its first entry', async () => {
    const zip = await gathered(writeZip([job, part('a.pdf', Buffer.from('%PDF'))], NOW));
    // APPNOTE 6.3, section 4.3.7: the name begins 30 bytes into the local header.
    expect(Buffer.from(zip).toString('latin1', 30, 38)).toBe('job.xjmf');
  });

  it.each(['/etc/passwd', '../a.pdf', 'a/../../b.pdf', 'C:/a.pdf', 'job.XJMF'])(
    'never holds an entry %j',
    (name) => {
      expect(() => writeZip([job, part(name, Buffer.from('x'))], NOW)).toThrow(/name/);
    },
  );

  it('ends with the failure of a stream that fails', async () => {
    async function* failing(): AsyncGenerator<Uint8Array> {
      yield Buffer.from('some');
      throw new Error('the line is cut');
    }
    await expect(gathered(writeZip([job, part('a.pdf', failing())], NOW))).rejects.toThrow('the line is cut');
  });

  it('never holds a stream whole', async () => {
    const block = Buffer.alloc(100_000, 'press ready ');
    let given = 0;
    async function* long(): AsyncGenerator<Uint8Array> {
      for (; given < 300; given++) yield block;
    }
    let seenAt = 0;
    let size = 0;
    let sum = 0;
    for await (const chunk of writeZip([job, part('long.tif', long())], NOW)) {
      size += chunk.length;
      sum = crc32(chunk, sum);
      if (seenAt === 0 && size > 20_000) seenAt = given;
    }
    // The first bytes came out long before the last ones went in.
    expect(seenAt).toBeGreaterThan(0);
    expect(seenAt).toBeLessThan(250);
    expect(sum).not.toBe(0);
  });

  it('is refused wherever it is cut short', async () => {
    const zip = await gathered(writeZip([job, part('a.pdf', Buffer.from('%PDF one two'))], NOW));
    for (let length = 0; length < zip.length; length++) {
      expect([length, (await readZip(zip.subarray(0, length))).ok]).toEqual([length, false]);
    }
  });
});

describe('a ZIP of another writer (fflate)', () => {
  it('is read with its folders, packed or stored', async () => {
    const files = {
      'art/': new Uint8Array(),
      'art/größe.pdf': Buffer.from('%PDF'),
      'job.xjdf': Buffer.from('<XJDF/>'),
    };
    for (const level of [0, 6] as const) {
      const pack = await readZip(zipSync(files, { level }));
      expect(pack.ok && pack.value.parts.map(({ name }) => name)).toEqual(['job.xjdf', 'art/größe.pdf']);
    }
  });
});
