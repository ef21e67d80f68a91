/**
 * Attack documents against our reader only. Source: PayloadsAllTheThings (MIT), folder "XXE Injection", as kept in the
 * check data: two lists, one document a line, and six whole documents.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultXmlLimits, parseXml, writeXml } from './index.js';

const data = process.env.SIDELAY_CHECKDATA_DIR;
if (!data) throw new Error('SIDELAY_CHECKDATA_DIR is not set: this lane needs the check data.');
const folder = join(data, 'attacks', 'xxe');

const files = readdirSync(folder).filter((name) => name !== 'LICENSE');
const whole = files
  .filter((name) => !name.endsWith('.txt'))
  .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(folder, name))) }));
const lines = files
  .filter((name) => name.endsWith('.txt'))
  .flatMap((name) =>
    readFileSync(join(folder, name), 'utf8')
      .split('\n')
      .map((line, i) => ({ name: `${name} line ${i + 1}`, bytes: new TextEncoder().encode(line) })),
  )
  .filter(({ bytes }) => bytes.length > 0);
const attacks = [...whole, ...lines];
const textIn = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

describe('attack documents', () => {
  it('are there in the number that the collection has', () => {
    expect([whole.length, lines.length >= 115]).toEqual([6, true]);
  });

  it('are never read when they declare a document type', () => {
    const declaring = attacks.filter(({ bytes }) => /<!DOCTYPE/i.test(textIn(bytes)));
    expect(declaring.length).toBeGreaterThan(22);
    expect(declaring.filter(({ bytes }) => parseXml(bytes).ok).map(({ name }) => name)).toEqual([]);
    // The same with the encoding that they claim put right, so that nothing but the declaration stands in the way.
    const asText = declaring.map(({ name, bytes }) => ({ name, result: parseXml(textIn(bytes)) }));
    expect(asText.filter(({ result }) => result.ok).map(({ name }) => name)).toEqual([]);
  });

  it('bring nothing into the document that was not written in it', () => {
    for (const { bytes } of attacks) {
      const text = textIn(bytes);
      const result = parseXml(text);
      if (result.ok) expect(writeXml(result.value)).toBe(text);
      else expect(result.problems).toHaveLength(1);
    }
  });

  it('are refused before any node is made of them', () => {
    const bomb = whole.find(({ name }) => name.includes('Billion'))!;
    // Not one element is allowed: the refusal is still for the declaration.
    expect(parseXml(textIn(bomb.bytes), { elements: 0, nodes: 0 })).toMatchObject({
      problems: [{ code: 'XML_DOCTYPE' }],
    });
  });
});

describe('documents that only cost time', () => {
  // Each is broken at its end: where the limit is told instead, the parser was cut off before it came there.
  const { depth, elements, attributesPerElement, references } = defaultXmlLimits;
  it.each([
    ['nesting', `${'<a>'.repeat(50_000)}<`, `${'/a'.repeat(depth)}`],
    ['elements', `<r>${'<a/>'.repeat(elements + 1)}<`, '/r'],
    ['attributes', `<r><a ${Array.from({ length: 50_000 }, (_, i) => `a${i}=""`).join(' ')}<`, '/r'],
    ['references', `<r><a b="${'&#65;'.repeat(references / 2)}"/>${'&#65;'.repeat(references)}<a/><`, '/r'],
    ['one long attribute', `<r><a b="${'x'.repeat(1_000_000)}"/><`, '/r'],
  ])('of many or long %s are cut off at the limit', (_what, text, path) => {
    expect(parseXml(text)).toMatchObject({ ok: false, problems: [{ code: 'XML_LIMIT', path }] });
    expect(attributesPerElement).toBeLessThan(50_000);
  });
});
