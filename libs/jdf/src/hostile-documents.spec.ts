/** Documents that are well-formed and far too much of one thing, through all that reads a document. */
import { valueIn } from '../../../test/kit/value-in.js';
import {
  checkDocument,
  convertDocument,
  JDF_NAMESPACE,
  noXmlLimits,
  parseXml,
  readProcessNode,
  readProduct,
  writeXml,
  XJDF_NAMESPACE,
} from './index.js';

// More than can be handed to one call as arguments (about 120,000 with Node's usual stack).
const MANY = 130_000;
const foreign = '<x:a/>'.repeat(MANY);
const many = (made: (i: number) => string, count = MANY): string =>
  Array.from({ length: count }, (_, i) => made(i)).join('');

const jdf = (pool: string, links: string, rest = '', type = 'Cutting'): string =>
  `<JDF xmlns="${JDF_NAMESPACE}" xmlns:x="urn:x" ID="n" Type="${type}" JobID="J" JobPartID="P" Status="Waiting" Version="1.6"><ResourcePool>${pool}</ResourcePool><ResourceLinkPool>${links}</ResourceLinkPool>${rest}</JDF>`;
const media = (inside: string, keys = ''): string =>
  `<Media ID="m" Class="Consumable" Status="Available" MediaType="Paper" ${keys}>${inside}</Media>`;
const link = '<MediaLink rRef="m" Usage="Input"/>';
const xjdf = (inside: string): string =>
  `<XJDF xmlns="${XJDF_NAMESPACE}" xmlns:x="urn:x" JobID="J" Types="Cutting" Version="2.1">${inside}</XJDF>`;
const set = (inside: string): string =>
  `<ResourceSet Name="Media" Usage="Input"><Resource ID="r"><Media MediaType="Paper"/>${inside}</Resource></ResourceSet>`;

/** What becomes of a document on each way that reading one can take. */
function readWhole(text: string) {
  const doc = valueIn(parseXml(text, noXmlLimits));
  const { kind, problems } = checkDocument(doc);
  const isNewer = kind.startsWith('x');
  const read = kind === 'jdf' ? [readProduct(doc).ok, readProcessNode(doc).ok] : [];
  const converted = convertDocument(doc, isNewer ? 'jdf' : 'xjdf');
  const written = converted.ok ? writeXml(converted.value.doc) : '';
  return { kind, told: problems.length, read, converted: converted.ok, written };
}

describe('a well-formed document of far too much', () => {
  it.each<[string, string, string]>([
    ['foreign elements in a node', 'jdf', jdf(media(''), link, foreign)],
    [
      'foreign elements in an audit',
      'jdf',
      jdf(
        media(''),
        link,
        `<AuditPool><Created AgentName="a" TimeStamp="2026-01-01T00:00:00Z">${foreign}</Created></AuditPool>`,
      ),
    ],
    ['foreign elements in an XJDF', 'xjdf', xjdf(set('') + foreign)],
    ['foreign elements in a Resource', 'xjdf', xjdf(set(foreign))],
    [
      'references to nothing',
      'jdf',
      jdf(
        media(''),
        many((i) => `<MediaLink rRef="z${i}" Usage="Input"/>`, 10_000),
      ),
    ],
    ['unknown elements', 'jdf', jdf('<Nothing/>'.repeat(10_000), link)],
    ['doubled IDs', 'jdf', jdf(media('').repeat(5_000), link)],
    ['processes', 'jdf', jdf(media(''), link, '', `Combined" Types="${'Cutting '.repeat(MANY).trim()}`)],
    ['one attribute', 'jdf', jdf(media('', `DescriptiveName="${'x'.repeat(10_000_000)}"`), link)],
    ['numbers in one attribute', 'jdf', jdf(media('', `Dimension="${'1 '.repeat(1_000_000)}"`), link)],
    [
      'attributes',
      'jdf',
      jdf(
        media(
          '',
          many((i) => `x:a${i}=""`.concat(' '), 50_000),
        ),
        link,
      ),
    ],
  ])('(%s) ends in a value on every way, never in a fault', (_what, kind, text) => {
    const { kind: found, told, converted, written } = readWhole(text);
    expect(found).toBe(kind);
    // A hundred errors and a hundred warnings a check are enough for anybody.
    expect(told).toBeLessThan(2_000);
    expect(written.length > 0).toBe(converted);
  });
});
