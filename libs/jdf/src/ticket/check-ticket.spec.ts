import { parsedXml } from '../../../../test/kit/value-in.js';
import { checkTicket, kindOf } from './index.js';

function doc(text: string) {
  return parsedXml(text);
}

const check = (text: string) =>
  checkTicket(doc(text)).map(({ code, line, path }) => `${code} ${line} ${path}`);

/** A ticket whose lines 3 and 4 are a resource pool and a link pool. */
const ticket = (resources: string, links = '', attributes = 'Type="ProcessGroup"') =>
  `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:f="urn:example:foreign"
 ID="n" Status="Waiting" Version="1.9" ${attributes}>
<ResourcePool>${resources}</ResourcePool>
<ResourceLinkPool>${links}</ResourceLinkPool>
</JDF>`;

const MEDIA = '<Media ID="m" Class="Consumable" Status="Available"/>';

describe('what kind of document it is', () => {
  // Roots and namespaces: the official schema sets, JDF 1.9 and XJDF 2.3.
  it.each([
    ['<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1"/>', 'jdf'],
    ['<x:JMF xmlns:x="http://www.CIP4.org/JDFSchema_1_1"/>', 'jmf'],
    ['<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0"/>', 'xjdf'],
    ['<XJMF xmlns="http://www.CIP4.org/JDFSchema_2_0"/>', 'xjmf'],
  ])('%s is %s', (text, kind) => {
    expect(kindOf(doc(text))).toMatchObject({ ok: true, value: kind });
  });

  it('says where a root is in a wrong namespace or unknown', () => {
    expect(kindOf(doc('\n<JDF/>'))).toMatchObject({
      problems: [{ code: 'XML_NAMESPACE', line: 2, path: '/JDF' }],
    });
    expect(kindOf(doc('<XJDF xmlns="http://www.CIP4.org/JDFSchema_1_1"/>'))).toMatchObject({
      problems: [{ code: 'XML_NAMESPACE' }],
    });
    expect(kindOf(doc('<constructor/>'))).toMatchObject({ problems: [{ code: 'KIND_UNKNOWN' }] });
    expect(checkTicket(doc('<JDF/>'))).toMatchObject([{ code: 'XML_NAMESPACE' }]);
  });
});

describe('checking a ticket', () => {
  it('finds nothing in a sound one', () => {
    expect(check(ticket(MEDIA, '<MediaLink rRef="m" Usage="Input"/>'))).toEqual([]);
  });

  it.each([
    ['a template', ticket('', '', 'Type="ProcessGroup" Template="true"'), 'JDF_TEMPLATE 1 /JDF'],
    [
      'a dangling link',
      ticket('', '<MediaLink rRef="m" Usage="Input"/>'),
      'JDF_DANGLING 4 /JDF/ResourceLinkPool/MediaLink',
    ],
    [
      'a dangling reference',
      ticket('<Component ID="c" Class="Quantity" Status="Available"><MediaRef rRef="m"/></Component>'),
      'JDF_DANGLING 3 /JDF/ResourcePool/Component/MediaRef',
    ],
    [
      'a link that goes by another name than its resource',
      ticket(MEDIA, '<InkLink rRef="m" Usage="Input"/>'),
      'JDF_LINK 4 /JDF/ResourceLinkPool/InkLink',
    ],
    ['a Combined node without Types', ticket('', '', 'Type="Combined"'), 'JDF_STRUCTURE 1 /JDF'],
    [
      'an index beyond the last process',
      ticket(
        MEDIA,
        '<MediaLink rRef="m" Usage="Input" CombinedProcessIndex="0 2"/>',
        'Type="ProcessGroup" Types="Cutting Folding"',
      ),
      'JDF_LINK 4 /JDF/ResourceLinkPool/MediaLink',
    ],
  ])('finds %s', (_what, text, expected) => {
    expect(check(text)).toEqual([expected]);
  });

  it('finds a node inside one that names its processes, and a resource of a node beside', () => {
    const inner = (id: string, pool: string, links: string) =>
      `<JDF ID="${id}" Type="ProcessGroup" Status="Waiting"><ResourcePool>${pool}</ResourcePool><ResourceLinkPool>${links}</ResourceLinkPool></JDF>`;
    const link = '<MediaLink rRef="m" Usage="Input"/>';
    const beside = inner('a', MEDIA, link) + inner('b', '', link);
    const root = (types: string) =>
      `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" Status="Waiting" Version="1.9" Type="ProcessGroup"${types}>${beside}</JDF>`;
    expect(check(root(''))).toEqual(['JDF_DANGLING 1 /JDF/JDF[2]/ResourceLinkPool/MediaLink']);
    expect(check(root(' Types="Cutting"'))[0]).toBe('JDF_STRUCTURE 1 /JDF/JDF[1]');
  });

  it('passes over foreign content and what describes a device', () => {
    const foreign =
      '<f:Media ID="m"/><Device ID="d" Class="Implementation" Status="Available"><DeviceCap><DisplayGroup rRef="none"/></DeviceCap></Device>';
    expect(check(ticket(foreign))).toEqual([]);
  });

  it('stops gathering after a hundred', () => {
    const dangling = '<MediaLink rRef="none" Usage="Input"/>';
    expect(check(ticket('', dangling.repeat(200)))).toHaveLength(100);
  });
});

describe('checking partitions', () => {
  const plates = (parts: string, keys = 'SheetName Side') =>
    ticket(
      `<ExposedMedia ID="x" Class="Handling" Status="Available" PartIDKeys="${keys}">${parts}</ExposedMedia>`,
    );
  const at = '/JDF/ResourcePool/ExposedMedia';

  // The rules and the legal case: the standard's samples ptExpMedia and legalIncompletePartition; its illegal* and
  // invalid* samples for the others.
  it('accepts one key a level in order, also where branches end early', () => {
    const parts =
      '<ExposedMedia SheetName="S1"><ExposedMedia Side="Front"/><ExposedMedia Side="Back"/></ExposedMedia><ExposedMedia SheetName="S2"/>';
    expect(check(plates(parts))).toEqual([]);
  });

  it.each([
    ['a level left out', '<ExposedMedia Side="Front"/>', ''],
    ['two keys at once', '<ExposedMedia SheetName="S1" Side="Front"/>', ''],
    ['no key', '<ExposedMedia/>', ''],
    ['a key that is not named', '<ExposedMedia Separation="Cyan"/>', ''],
    [
      'a level too many',
      '<ExposedMedia SheetName="S1"><ExposedMedia Side="Front"><ExposedMedia Separation="Cyan"/></ExposedMedia></ExposedMedia>',
      '/ExposedMedia/ExposedMedia',
    ],
    ['a value twice', '<ExposedMedia SheetName="S1"/><ExposedMedia SheetName="S1"/>', '[2]'],
    ['a part with an ID', '<ExposedMedia SheetName="S1" ID="y"/>', ''],
  ])('finds in the parts of a resource %s', (_what, parts, place) => {
    expect(check(plates(parts))).toEqual([`JDF_PARTITION 3 ${at}/ExposedMedia${place}`]);
  });

  it('finds keys that are none, and keys named twice', () => {
    expect(check(plates('', 'SheetName Page'))).toEqual([`JDF_PARTITION 3 ${at}`]);
    expect(check(plates('', 'Side Side'))).toEqual([`JDF_PARTITION 3 ${at}`]);
  });

  it('finds parts of a sub-element written inline', () => {
    const media = '<Media><Media Separation="Cyan"/></Media>';
    expect(check(plates(media))).toEqual([`JDF_PARTITION 3 ${at}/Media/Media`]);
  });

  // The reference table's rule: Identical names a part of the same level (sample partitioningWithTheIdenticalElement).
  it.each([
    ['the same level', 'SheetName="S1"', 0],
    ['another level', 'SheetName="S1" Side="Front"', 1],
    ['nothing', 'SheetName="S9"', 1],
    ['itself', 'SheetName="S2"', 1],
  ])('lets Identical name %s or not', (_what, keys, faults) => {
    const parts = `<ExposedMedia SheetName="S1"><ExposedMedia Side="Front"/></ExposedMedia><ExposedMedia SheetName="S2"><Identical><Part ${keys}/></Identical></ExposedMedia>`;
    expect(check(plates(parts))).toHaveLength(faults);
  });
});
