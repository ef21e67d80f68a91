import {
  checkDocument,
  convertDocument,
  greatestDepth,
  parseXml,
  replaceElements,
  writeXml,
  type XmlDocument,
} from '#libs/jdf';
import { countedTree } from '../../../test/kit/counted-tree.js';
import { valueIn } from '../../../test/kit/value-in.js';

const times = (count: number, one: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => one(i)).join('');

const jdf = (resources: string, links: string, audits = ''): string =>
  `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" Type="Cutting" JobID="J" JobPartID="P" Status="Waiting" Version="1.7">${audits}<ResourcePool>${resources}</ResourcePool><ResourceLinkPool>${links}</ResourceLinkPool></JDF>`;
const xjdf = (content: string): string =>
  `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" JobPartID="P" Types="Cutting" Version="2.1">${content}</XJDF>`;
const sheets = (count: number): string =>
  `<Component ID="c" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName">${times(count, (i) => `<Component SheetName="S${i}" Amount="1"/>`)}</Component>`;
const part = (i: number): string => `<Part SheetName="S${i}"/>`;
const time = '2026-01-01T00:00:00Z';

/** Tickets that have very many of one thing. */
const crowds: Readonly<Record<string, (count: number) => string>> = {
  'leaves of a resource': (n) => jdf(sheets(n), '<ComponentLink rRef="c" Usage="Output" Amount="1"/>'),
  'parts and amounts of a link': (n) =>
    jdf(
      sheets(n),
      `<ComponentLink rRef="c" Usage="Output">${times(n, part)}<AmountPool>${times(n, (i) => `<PartAmount Amount="1">${part(i)}</PartAmount>`)}</AmountPool></ComponentLink>`,
    ),
  'links to a resource': (n) =>
    jdf(
      sheets(n),
      times(n, (i) => `<ComponentLink rRef="c" Usage="Input">${part(i)}</ComponentLink>`),
    ),
  'links that lead nowhere': (n) =>
    jdf(
      '',
      times(n, (i) => `<MediaLink rRef="x${i}" Usage="Input"/>`),
    ),
  'unknown elements': (n) =>
    jdf(
      times(n, (i) => `<Unknown${i} ID="u${i}"/>`),
      '',
    ),
  'parts by ranges': (n) =>
    jdf(
      `<RunList ID="r" Class="Parameter" Status="Available" PartIDKeys="RunIndex">${times(n, (i) => `<RunList RunIndex="${2 * i}~${2 * i + 1}"/>`)}</RunList>`,
      `<RunListLink rRef="r" Usage="Input">${times(n, (i) => `<Part RunIndex="${2 * i}~${2 * i + 1}"/>`)}</RunListLink>`,
    ),
  'sheets of stripping': (n) =>
    jdf(
      `<StrippingParams ID="s" Class="Parameter" Status="Available" PartIDKeys="SheetName">${times(n, (i) => `<StrippingParams SheetName="S${i}"><Position RelativeBox="0 0 1 1"/></StrippingParams>`)}</StrippingParams>`,
      '<StrippingParamsLink rRef="s" Usage="Input"/>',
    ),
  'records of use': (n) =>
    jdf(
      sheets(n),
      '<ComponentLink rRef="c" Usage="Output"/>',
      `<AuditPool>${times(n, (i) => `<ResourceAudit TimeStamp="${time}"><ComponentLink rRef="c" Usage="Output" ActualAmount="1">${part(i)}</ComponentLink></ResourceAudit>`)}</AuditPool>`,
    ),
  phases: (n) =>
    jdf(
      sheets(n),
      '<ComponentLink rRef="c" Usage="Output"/>',
      `<AuditPool>${times(n, (i) => `<PhaseTime TimeStamp="${time}" Start="${time}" End="${time}" Status="InProgress">${part(i)}</PhaseTime>`)}</AuditPool>`,
    ),
  'sets of XJDF': (n) =>
    xjdf(
      times(
        n,
        (i) =>
          `<ResourceSet Name="Media" Usage="Input" ID="s${i}"><Resource ID="r${i}"><Media MediaType="Paper"/></Resource></ResourceSet>`,
      ),
    ),
  'resources of a set of XJDF': (n) =>
    xjdf(
      `<ResourceSet Name="Component" Usage="Input" ID="s">${times(n, (i) => `<Resource ID="r${i}">${part(i)}<Component/></Resource>`)}</ResourceSet>`,
    ),
};

const parsed = (text: string): XmlDocument => valueIn(parseXml(text, { depth: greatestDepth }));

const looksOf = (text: string, work: (doc: XmlDocument) => unknown): number => {
  const { doc, looks } = countedTree(parsed(text));
  work(doc);
  return looks();
};

const works: Readonly<Record<string, (doc: XmlDocument) => unknown>> = {
  'a check': (doc) => checkDocument(doc),
  'a conversion': (doc) => convertDocument(doc, doc.root.local === 'JDF' ? 'xjdf' : 'jdf'),
};

describe('the work that a document costs', () => {
  it.each(Object.keys(works).flatMap((work) => Object.keys(crowds).map((crowd) => [work, crowd] as const)))(
    'grows in proportion to it: %s of very many %s',
    (work, crowd) => {
      const [few, many] = [200, 800].map((count) => looksOf(crowds[crowd]!(count), works[work]!));
      expect(many! / few!).toBeLessThan(4.4);
    },
  );

  it('is seen where it grows faster: each part looks at the whole', () => {
    const eachAtAll = ({ root }: XmlDocument): number[] =>
      root.children.map((child) => root.children.filter((other) => other !== child).length);
    const rows = (count: number): string => `<r>${'<a/>'.repeat(count)}</r>`;
    expect(looksOf(rows(800), eachAtAll) / looksOf(rows(200), eachAtAll)).toBeGreaterThan(12);
  });
});

describe('a document as deep as any may be', () => {
  const deepNodes = `${'<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="a" Type="Product" Status="Waiting">'.repeat(greatestDepth)}${'</JDF>'.repeat(greatestDepth)}`;
  const foreign = greatestDepth - 1;
  const deepForeign = xjdf(`${'<f:a xmlns:f="urn:f">'.repeat(foreign)}${'</f:a>'.repeat(foreign)}`);

  it.each([
    ['nodes', deepNodes],
    ['foreign elements', deepForeign],
  ])('is written, changed, checked and converted: %s', (_what, text) => {
    const doc = parsed(text);
    expect(writeXml(replaceElements(doc, new Map()))).toBe(text);
    expect(checkDocument(doc).kind).not.toBe('unknown');
    expect(works['a conversion']!(doc)).toMatchObject({ ok: true });
  });
});
