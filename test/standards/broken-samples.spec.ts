import { encodeXml, parseXml } from '#libs/jdf';
import { allSamples, bytesOf } from './samples.js';

const COUNT = 20;

/** The smallest of the standard's samples: cutting each at every byte is quadratic in its length. */
const smallest = allSamples()
  .map((sample) => ({ path: sample.path, bytes: bytesOf(sample) }))
  .toSorted((a, b) => a.bytes.length - b.bytes.length)
  .slice(0, COUNT);

function judged(path: string, bytes: Uint8Array): string[] {
  const read = parseXml(bytes);
  if (read.ok)
    return Buffer.from(encodeXml(read.value)).equals(Buffer.from(bytes)) ? [] : [`${path} changed`];
  const { problems } = read;
  const told = problems.length === 1 && problems.every(({ line, hint }) => (line ?? 0) > 0 && hint !== null);
  return told ? [] : [`${path}: ${JSON.stringify(problems)}`];
}

describe('a sample of the standard that was damaged on its way', () => {
  it('cut off at any byte is refused with its line and how to mend it, or whole but for what may follow the root', () => {
    let sound = 0;
    for (const { path, bytes: whole } of smallest) {
      const lines = Buffer.from(whole).toString('latin1').split('\n').length;
      for (let length = 0; length < whole.length; length++) {
        const cut = whole.subarray(0, length);
        expect(judged(path, cut)).toEqual([]);
        const read = parseXml(cut);
        if (read.ok) sound += 1;
        else expect(read.problems[0]!.line).toBeLessThanOrEqual(lines);
      }
    }
    expect(smallest).toHaveLength(COUNT);
    // What may be missing is a line end or a comment after the root.
    expect(sound).toBeLessThan(COUNT * 200);
  });

  it('with any one bit of a byte turned is refused with its line and how to mend it, or read as it is', () => {
    for (const { path, bytes: whole } of smallest) {
      for (let at = 0; at < whole.length; at += 7) {
        const bytes = Uint8Array.from(whole);
        bytes[at]! ^= 1 << (at % 8);
        expect(judged(path, bytes)).toEqual([]);
      }
    }
  });
});
