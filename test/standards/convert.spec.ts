/**
 * Conversion between the two generations over every official sample: what comes out is valid by the official schema of
 * its side, and nothing of what went in is missing without being listed.
 */
import {
  type Converted,
  convertDocument,
  descendants,
  parseXml,
  pathOf,
  writeXml,
  type XmlDocument,
} from '#libs/jdf';
import { allSamples, bytesOf, type Sample } from './samples.js';
import { schemaFaults } from './xmllint.js';

function read(bytes: Uint8Array | string): XmlDocument {
  const parsed = parseXml(bytes);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value;
}

function convert(doc: XmlDocument, to: 'jdf' | 'xjdf'): Converted {
  const converted = convertDocument(doc, to);
  if (!converted.ok) throw new Error(JSON.stringify(converted.problems));
  return converted.value;
}

const SIDES = [
  ['JDF', 'xjdf', allSamples().filter(({ root }) => root === 'JDF')],
  ['XJDF', 'jdf', allSamples().filter(({ root }) => root === 'XJDF')],
] as const;

const nameOf = ({ path }: Sample): string => `${path.replaceAll('/', '_')}.xml`;

/** Attributes that say how a document is put together; the other side says it by its own structure. */
const STRUCTURE = new Set([
  ...[
    'ID',
    'rRef',
    'Class',
    'PartIDKeys',
    'DataType',
    'Version',
    'MaxVersion',
    'Type',
    'Types',
    'Name',
    'Usage',
  ],
  ...['CombinedProcessIndex', 'IsRoot'],
]);
/** What is so without being said. */
const BY_ITSELF = new Set(['NoOp=false', 'Activation=Active', 'Locked=false', 'PartUsage=Explicit']);
/** One value in two spellings (standard reference, section 7.2). */
const SPELLED: Readonly<Record<string, string>> = { Glossy: 'Gloss', Gloss: 'Glossy' };

/** Values of the source that are neither in the result nor under a path that is listed as lost. */
function dropped(doc: XmlDocument, { doc: result, lost }: Converted): string[] {
  const there = new Set<string>();
  for (const el of descendants(result.root)) {
    for (const { value } of el.attributes)
      for (const one of [value.trim(), ...value.split(/\s+/)]) there.add(one);
    there.add(textIn(el));
  }
  const paths = new Set(lost.map(({ path }) => path));
  const covered = (path: string): boolean =>
    path.split('/').some((_, i, steps) => paths.has(steps.slice(0, i + 1).join('/')));
  const found: string[] = [];
  for (const el of descendants(doc.root)) {
    const path = pathOf(doc, el);
    for (const { name, uri, value } of el.attributes) {
      if (uri.startsWith('http://www.w3.org/') || STRUCTURE.has(name) || BY_ITSELF.has(`${name}=${value}`))
        continue;
      const words = value.split(/\s+/).filter((word) => word !== '~');
      if (there.has(value.trim()) || words.every((word) => there.has(word) || there.has(SPELLED[word] ?? '')))
        continue;
      if (!covered(`${path}/@${name}`)) found.push(`${path}/@${name}="${value}"`);
    }
    if (textIn(el) !== '' && !there.has(textIn(el)) && !covered(path)) found.push(`${path} ${textIn(el)}`);
  }
  return found;
}

function textIn({ children }: XmlDocument['root']): string {
  return children
    .flatMap((node) => (node.kind === 'text' || node.kind === 'cdata' ? [node.value] : []))
    .join('')
    .trim();
}

describe.each(SIDES)('converting every %s sample', (_root, to, samples) => {
  const made = samples.map((sample) => {
    const doc = read(bytesOf(sample));
    return { sample, doc, converted: convert(doc, to) };
  });

  it('there are as many as the collection has', () => {
    expect(made.length).toBeGreaterThanOrEqual(to === 'jdf' ? 95 : 128);
  });

  it('gives documents that the official schema of the other generation finds valid', () => {
    const documents = Object.fromEntries(
      made.map(({ sample, converted }) => [nameOf(sample), writeXml(converted.doc)]),
    );
    expect(schemaFaults(documents, to)).toEqual({});
  });

  it('drops nothing that it does not list', () => {
    const missing = made.flatMap(({ sample, doc, converted }) =>
      dropped(doc, converted).map((what) => `${sample.path} ${what}`),
    );
    expect(missing).toEqual([]);
  });

  it('lists only places that are in the document converted, each with what it was', () => {
    for (const { doc, converted } of made) {
      const places = new Set<string>();
      for (const el of descendants(doc.root)) {
        const path = pathOf(doc, el);
        places.add(path);
        for (const { name } of el.attributes) places.add(`${path}/@${name}`);
      }
      for (const { path, what } of converted.lost) {
        expect(places).toContain(path);
        expect(what).not.toBe('');
      }
    }
  });
});
