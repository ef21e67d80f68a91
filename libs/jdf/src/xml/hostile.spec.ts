/** Documents made to cost much or to be broken. Work is counted in bytes taken in before the refusal, never in time. */
import fc from 'fast-check';
import { generatedXml } from '../../../../test/kit/generated-xml.js';
import {
  defaultXmlLimits,
  encodeXml,
  greatestDepth,
  parseXml,
  type XmlLimits,
  XmlReader,
  xmlLimitSettings,
} from './index.js';

const encoder = new TextEncoder();
const PIECE = 64 * 1024;

/** Feeds `before`, then `again` without end; answers the refusal and how many bytes the reader took. */
function flooded(before: string, again: string, limits: Partial<XmlLimits> = {}) {
  const reader = new XmlReader(limits);
  const flood = encoder.encode(again.repeat(Math.ceil(PIECE / again.length)));
  let taken = 0;
  const push = (bytes: Uint8Array): void => {
    reader.push(bytes);
    taken += bytes.length;
  };
  push(encoder.encode(before));
  while (!reader.stopped) push(flood);
  const result = reader.end();
  return { problem: result.ok ? null : result.problems[0]!, taken };
}

describe('a flood', () => {
  const { elements, nodes, depth, attributesPerElement, references, textLength, bytes } = defaultXmlLimits;
  // The most that may be taken in: what is allowed, the piece it ends in, and the piece being gathered.
  it.each<[string, string, string, keyof XmlLimits, number]>([
    ['siblings', '<r>', '<a/>', 'elements', elements * 4],
    ['comments', '<r>', '<!---->', 'nodes', nodes * 7],
    ['nesting', '', '<a>', 'depth', depth * 3],
    ['nesting with namespaces', '<j:r xmlns:j="urn:x">', '<j:a>', 'depth', depth * 5],
    ['attributes', '<r ', 'a="" ', 'attributesPerElement', attributesPerElement * 5],
    ['references', '<r>', '&#65;', 'references', references * 5],
    ['references in an attribute', '<r a="', '&amp;', 'references', references * 5],
    ['one text', '<r>', 'x', 'textLength', textLength],
    ['one comment', '<r><!--', 'x', 'textLength', textLength],
    ['one CDATA section', '<r><![CDATA[', ']]', 'textLength', textLength],
    ['one instruction', '<r><?p ', '?', 'textLength', textLength],
    ['one attribute', '<r a="', 'x', 'bytes', bytes],
    ['one name', '<', 'x', 'bytes', bytes],
    ['blanks before the root', '', ' ', 'textLength', textLength],
  ])(
    'of %s is refused as soon as its limit is reached, and the refusal says how to raise it',
    (what, ...rest) => {
      const [before, again, limit, most] = rest;
      const { problem, taken } = flooded(before, again);
      const names = [`XML_LIMIT`, expect.stringContaining(xmlLimitSettings[limit])];
      // The same attribute twice is no document anyway; it is the count that stops first.
      expect([what, problem?.code, problem?.hint]).toEqual([what, ...names]);
      expect(taken).toBeLessThanOrEqual(before.length + most + 3 * PIECE);
    },
  );

  it('within raised limits is read: deep, wide, long', () => {
    const deep = `${'<j:a>'.repeat(500)}${'</j:a>'.repeat(500)}`;
    const wide = Array.from({ length: 5000 }, (_, i) => `a${i}="${i}"`).join(' ');
    const text = `<j:r xmlns:j="urn:x" ${wide}>${deep}<b c="${'x'.repeat(3_000_000)}"/>${'&#65;'.repeat(200_000)}</j:r>`;
    const input = encoder.encode(text);
    const raised = {
      depth: greatestDepth,
      attributesPerElement: 6000,
      attributeLength: 4_000_000,
      references: 300_000,
    };
    const read = parseXml(input, raised);
    expect(read.ok && Buffer.from(encodeXml(read.value)).equals(Buffer.from(input))).toBe(true);
  });

  it('deeper than any tree may be is refused, whatever the limit for depth is', () => {
    const deep = '<a>'.repeat(50_000);
    const [problem] = parseXml(deep, { depth: 1_000_000 }).problems ?? [];
    expect(problem).toMatchObject({
      code: 'XML_LIMIT',
      hint: expect.stringContaining(`${greatestDepth} elements`),
    });
  });

  it('of namespace declarations is held to the limit of attributes', () => {
    const declarations = (count: number): string =>
      Array.from({ length: count }, (_, i) => `xmlns:p${i}="urn:${i}"`).join(' ');
    expect(parseXml(`<r ${declarations(257)}/>`)).toMatchObject({ problems: [{ code: 'XML_LIMIT' }] });
    const nested = `<p1:r ${declarations(200)}>`.repeat(50) + '</p1:r>'.repeat(50);
    expect(parseXml(nested).ok).toBe(true);
  });

  it.each([
    ['an element', `<${'n'.repeat(1025)}/>`],
    ['an attribute', `<a ${'n'.repeat(1025)}=""/>`],
  ])('of letters in the name of %s is refused', (_what, text) => {
    expect(parseXml(text)).toMatchObject({
      problems: [{ code: 'XML_LIMIT', hint: expect.stringContaining('NAME') }],
    });
  });
});

describe('a broken document', () => {
  const twenty = fc.sample(generatedXml, { seed: 11, numRuns: 20 }).map(({ text }) => encoder.encode(text));
  const codes = /^(NOT_TEXT|XML_NOT_WELL_FORMED|XML_DOCTYPE)$/;

  it('cut off at any byte is refused, or is whole but for what may follow the root', () => {
    let cuts = 0;
    for (const bytes of twenty) {
      for (let length = 0; length < bytes.length; length++, cuts++) {
        const cut = bytes.subarray(0, length);
        const result = parseXml(cut);
        if (result.ok) expect(Buffer.from(encodeXml(result.value)).equals(Buffer.from(cut))).toBe(true);
        else
          expect([result.problems.length, result.problems[0]!.code]).toEqual([
            1,
            expect.stringMatching(codes),
          ]);
      }
    }
    expect(cuts).toBeGreaterThan(2000);
  });

  it('with bytes changed by chance is refused with its place, or read and written as it is', () => {
    const change = fc.tuple(fc.nat(), fc.nat(255));
    fc.assert(
      fc.property(fc.nat(19), fc.array(change, { minLength: 1, maxLength: 3 }), (which, changes) => {
        const bytes = Uint8Array.from(twenty[which]!);
        for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
        const result = parseXml(bytes);
        if (result.ok) expect(Buffer.from(encodeXml(result.value)).equals(Buffer.from(bytes))).toBe(true);
        else {
          expect(result.problems).toHaveLength(1);
          expect(result.problems[0]!.line).toBeGreaterThan(0);
        }
      }),
      { seed: 4, numRuns: 600 },
    );
  });
});
