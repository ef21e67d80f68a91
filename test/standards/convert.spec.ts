/**
 * Conversion between the two generations over every official sample: what comes out is valid by the official schema of
 * its side, and nothing of what went in is missing without being listed.
 */
import {
  attributeOf,
  type Converted,
  checkDocument,
  convertDocument,
  descendants,
  pathOf,
  replaceElements,
  withAttributes,
  writeXml,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { type Random, seededRandom } from '#libs/kernel';
import { parsedXml, valueIn } from '../kit/value-in.js';
import { allSamples, bytesOf, type Sample } from './samples.js';
import { schemaFaults } from './xmllint.js';

function convert(doc: XmlDocument, to: 'jdf' | 'xjdf'): Converted {
  return valueIn(convertDocument(doc, to));
}

/** Documents whose messages the other generation has not: all of them must be listed. */
const WITHOUT_COUNTERPART = [
  'jdf/samples/jmf/acknowledgeMessage.jmf', // no Acknowledge
  'jdf/samples/jmf/customQuery.jmf', // a foreign message; so are the next two
  'jdf/samples/jmf/customResponse.jmf',
  'jdf/samples/jmf/customResponseForIfraTrack.jmf',
  'jdf/samples/jmf/requestForAuthenticationCommand.jmf', // dropped; so are the next three
  'jdf/samples/jmf/requestForAuthenticationQuerySubsequently.jmf',
  'jdf/samples/jmf/requestForAuthenticationResponse.jmf',
  'jdf/samples/jmf/rqstForAuthRspnsFromSubsequentQuery.jmf',
  'jdf/samples/jmf/resourceCommandSingleResourceIsAvailable.jmf', // names neither resource nor kind
  'jdf/samples/jmf/submissionMethodsResponse.jmf', // dropped
  'jdf/samples/jmf/updateJDFCommand.jmf', // dropped
  'xjdf/samples/jmf/extendResponse.xjmf', // a foreign message
];

const side = (...roots: readonly string[]): readonly Sample[] =>
  allSamples().filter(({ root, path }) => roots.includes(root) && !WITHOUT_COUNTERPART.includes(path));

const SIDES = [
  ['JDF and JMF', 'xjdf', side('JDF', 'JMF'), 150],
  ['XJDF and XJMF', 'jdf', side('XJDF', 'XJMF'), 150],
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
  ...['CombinedProcessIndex', 'IsRoot', 'Operation', 'EndStatus'],
]);
/** What is so without being said: an intent that is there can be read, a product that is ordered is not there yet. */
const BY_ITSELF = new Set([
  'NoOp=false',
  'Activation=Active',
  'Locked=false',
  'PartUsage=Explicit',
  'Hold=true',
  'LayoutIntent/Status=Available',
  'MediaIntent/Status=Available',
  'ProductionIntent/Status=Available',
  'Component/Status=Unavailable',
]);
/** What is worked out on the other side: a box is a size and a place. The way there and back shows that it is right. */
const WORKED_OUT = new Set(['CutBlock/Box']);
/** One value in two spellings: the closed lists of the two schemas. */
const SPELLED: Readonly<Record<string, readonly string[]>> = {
  Glossy: ['Gloss'],
  Gloss: ['Glossy'],
  Running: ['Production'],
  Production: ['Running', 'InProgress'],
  Down: ['Offline'],
  Offline: ['Down'],
};

/** What goes by another name on the other side: attributes of the two schemas. */
const RENAMED: Readonly<Record<string, readonly string[]>> = {
  ActualAmount: ['Amount'],
  Amount: ['ActualAmount'],
  AssemblyIDs: ['BinderySignatureID', 'BinderySignatureIDs'],
  BackCoatings: ['BackCoating'],
  BinderySignatureID: ['BinderySignatureName', 'AssemblyIDs'],
  BinderySignatureIDs: ['AssemblyIDs'],
  BinderySignatureName: ['BinderySignatureID'],
  Coating: ['FrontCoatings'],
  ColorsUsed: ['Name'],
  DeviceID: ['SenderID'],
  ExternalID: ['ProductID'],
  FrontCoatings: ['Coating'],
  ProductID: ['ExternalID'],
  QueueEntryID: ['QueueEntryIDs'],
  SenderID: ['DeviceID'],
  ColorantOrder: ['Name'],
  ColorantParams: ['Name'],
  ContactTypes: ['ContactType'],
  SheetHeight: ['SheetHeightMin', 'SheetHeightMax'],
  SheetHeightMax: ['SheetHeight'],
  SheetHeightMin: ['SheetHeight'],
  SheetWidth: ['SheetWidthMin', 'SheetWidthMax'],
  SheetWidthMax: ['SheetWidth'],
  SheetWidthMin: ['SheetWidth'],
  StartTime: ['Start'],
  Status: ['DeviceStatus'],
  Surface: ['Side'],
  Time: ['TimeStamp'],
  TimeStamp: ['Time'],
  XJMFURL: ['JMFURL'],
  // What the newer generation has no attribute for stands in a GeneralID.
  FileTemplate: ['IDValue'],
  SheetName: ['IDValue'],
};

/** The names under which a value may stand on the other side; that of a span is the name of its element there. */
function namesFor({ local }: XmlElement, name: string): string[] {
  const plain = name.slice(name.indexOf(':') + 1);
  const span = plain === 'Actual' || plain === 'Preferred' || plain === 'Range' ? [local] : [];
  return [
    plain,
    ...(RENAMED[plain] ?? []),
    ...(RENAMED[local] ?? []),
    ...span,
    ...(local.endsWith('Intent') ? ['Actual'] : []),
    ...(/Refs?$/.test(plain) ? ['rRef'] : []),
  ];
}

/** Values of the source that are neither in the result nor under a path that is listed as lost. */
function dropped(doc: XmlDocument, { doc: result, lost }: Converted): string[] {
  const there = new Set<string>();
  const texts = new Set<string>();
  for (const el of descendants(result.root)) {
    for (const { local, value } of el.attributes)
      for (const one of [value.trim(), ...value.split(/\s+/)]) there.add(`${local} ${one}`);
    texts.add(textIn(el));
  }
  const paths = new Set(lost.map(({ path }) => path));
  const covered = (path: string): boolean => isBelow(path, paths);
  const found: string[] = [];
  for (const el of descendants(doc.root)) {
    const path = pathOf(doc, el);
    for (const { name, uri, value } of el.attributes) {
      if (
        uri.startsWith('http://www.w3.org/') ||
        STRUCTURE.has(name) ||
        WORKED_OUT.has(`${el.local}/${name}`) ||
        BY_ITSELF.has(`${name}=${value}`) ||
        BY_ITSELF.has(`${el.local}/${name}=${value}`)
      )
        continue;
      const names = namesFor(el, name);
      const stands = (one: string): boolean =>
        [one, ...(SPELLED[one] ?? [])].some((word) => names.some((under) => there.has(`${under} ${word}`)));
      const words = value.split(/\s+/).filter((word) => word !== '~');
      if (stands(value.trim()) || words.every(stands)) continue;
      if (!covered(`${path}/@${name}`)) found.push(`${path}/@${name}="${value}"`);
    }
    if (textIn(el) !== '' && !texts.has(textIn(el)) && !covered(path)) found.push(`${path} ${textIn(el)}`);
  }
  return found;
}

function textIn({ children }: XmlDocument['root']): string {
  return children
    .flatMap((node) => (node.kind === 'text' || node.kind === 'cdata' ? [node.value] : []))
    .join('')
    .trim();
}

describe.each(SIDES)('converting every %s sample', (_root, to, samples, least) => {
  const made = samples.map((sample) => {
    const doc = parsedXml(bytesOf(sample));
    return { sample, doc, converted: convert(doc, to) };
  });

  it('there are as many as the collection has', () => {
    expect(made.length).toBeGreaterThanOrEqual(least);
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
    expect(made.some(({ converted }) => converted.lost.length > 0)).toBe(true);
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

it('refuses documents none of whose messages exist in the other generation, each with that reason', () => {
  const samples = allSamples().filter(({ path }) => WITHOUT_COUNTERPART.includes(path));
  expect(samples).toHaveLength(WITHOUT_COUNTERPART.length);
  const codes = samples.map((sample) => {
    const to = sample.path.startsWith('jdf/') ? 'xjdf' : 'jdf';
    const converted = convertDocument(parsedXml(bytesOf(sample)), to);
    return converted.ok ? 'converted' : converted.problems[0]!.code;
  });
  expect([...new Set(codes)]).toEqual(['JMF_TYPE']);
});

/** Attributes that come back in other words: spans as what was agreed, keys and processes of nodes that were joined. */
const IN_OTHER_WORDS = new Set([
  'Preferred',
  'PartIDKeys',
  'Type',
  'Types',
  'CombinedProcessIndex',
  'ID',
  'rRef',
]);
/** The ends of a range may change places. */
const RANGES = new Set(['SheetHeight', 'SheetWidth']);

describe.each([
  ['JDF', 'xjdf', 'jdf'],
  ['XJDF', 'jdf', 'xjdf'],
] as const)('%s to the other generation and back', (root, there, back) => {
  it.each(side(root).map((sample) => [sample.path, sample] as const))(
    '%s says all again that both can say',
    (_path, sample) => {
      const doc = parsedXml(bytesOf(sample));
      const first = convert(doc, there);
      const middle = parsedXml(writeXml(first.doc));
      const second = convert(middle, back);
      const said = new Set([...descendants(second.doc.root)].flatMap((el) => el.attributes.map(spelledOut)));
      const lost = new Set([...first.lost.map(({ path }) => path)]);
      const lostOnReturn = valuesUnder(middle, new Set(second.lost.map(({ path }) => path)));
      const missing = [...descendants(doc.root)].flatMap((el) => {
        const path = pathOf(doc, el);
        return el.attributes.flatMap((attribute) => {
          const { name, uri, value } = attribute;
          if (uri.startsWith('http://www.w3.org/') || IN_OTHER_WORDS.has(name) || RANGES.has(name)) return [];
          if (isBelow(`${path}/@${name}`, lost) || said.has(spelledOut(attribute))) return [];
          if (BY_ITSELF.has(`${name}=${value}`) || lostOnReturn.has(value) || /^(Max)?Version$/.test(name))
            return [];
          return [`${path}/@${name}="${value}"`];
        });
      });
      expect(missing).toEqual([]);
    },
  );
});

const spelledOut = ({ name, value }: { name: string; value: string }): string =>
  `${name}=${value.trim().replaceAll(/\s+/g, ' ')}`;

function isBelow(path: string, paths: ReadonlySet<string>): boolean {
  return path.split('/').some((_, i, steps) => paths.has(steps.slice(0, i + 1).join('/')));
}

/** All values at or below some places. */
function valuesUnder(doc: XmlDocument, paths: ReadonlySet<string>): Set<string> {
  const found = [...descendants(doc.root)].flatMap((el) => {
    const path = pathOf(doc, el);
    return el.attributes.flatMap(({ name, value }) => (isBelow(`${path}/@${name}`, paths) ? [value] : []));
  });
  return new Set(found);
}

describe.each(SIDES)('converting damaged %s samples', (_root, to, samples) => {
  it('gives valid documents or refuses, whatever was taken out or written in', () => {
    const random = seededRandom(2026);
    const documents: Record<string, string> = {};
    for (const sample of samples) {
      const damagedText = writeXml(damaged(parsedXml(bytesOf(sample)), random));
      const converted = convertDocument(parsedXml(damagedText), to);
      if (converted.ok) documents[nameOf(sample)] = writeXml(converted.value.doc);
    }
    expect(Object.keys(documents).length).toBeGreaterThan(100);
    expect(schemaFaults(documents, to)).toEqual({});
  });
});

describe('XJDF samples from which something was taken that others refer to', () => {
  it('become tickets without a reference that leads nowhere, and each is listed', () => {
    let taken = 0;
    for (const sample of side('XJDF')) {
      const doc = parsedXml(bytesOf(sample));
      const refers = new Set([...descendants(doc.root)].flatMap(referencesOf));
      for (const el of descendants(doc.root)) {
        const id = attributeOf(el, 'ID');
        if (el === doc.root || id === undefined || !refers.has(id)) continue;
        taken++;
        const { doc: made, lost } = convert(replaceElements(doc, new Map([[el, null]])), 'jdf');
        const { problems } = checkDocument(parsedXml(writeXml(made)));
        expect([sample.path, id, problems.filter(({ code }) => code === 'JDF_DANGLING')]).toEqual([
          sample.path,
          id,
          [],
        ]);
        expect([sample.path, id, lost.length > 0]).toEqual([sample.path, id, true]);
      }
    }
    expect(taken).toBeGreaterThan(20);
  });
});

const referencesOf = (el: XmlElement): string[] =>
  el.attributes.flatMap(({ name, value }) => (/Refs?$/.test(name) ? value.split(/\s+/) : []));

const WRONG = [
  'a b c',
  '',
  '-1',
  '12.5',
  'true',
  'Front',
  'x'.repeat(70),
  'Ümlaut 1',
  '0 ~ 3',
  '2026-01-05',
  'Waste',
];

/** The document with three elements or attributes taken out or given a value of another kind. */
function damaged(doc: XmlDocument, random: Random): XmlDocument {
  let at = doc;
  for (let i = 0; i < 3; i++) {
    const elements = [...descendants(at.root)].slice(1);
    const el = elements[Math.floor(random.next() * elements.length)];
    const named = el?.attributes.filter(({ uri }) => uri === '') ?? [];
    const attribute = named[Math.floor(random.next() * named.length)];
    if (el === undefined) continue;
    const value = random.next() < 0.5 ? undefined : WRONG[Math.floor(random.next() * WRONG.length)];
    const out = attribute === undefined || random.next() < 0.3;
    at = replaceElements(at, new Map([[el, out ? null : withAttributes(el, { [attribute.name]: value })]]));
  }
  return at;
}
