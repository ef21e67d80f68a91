/**
 * Partitioned resources of the official samples, read as the samples' own names and comments say. These are the
 * samples of partitioning that are in the set at hand.
 */
import {
  attributeOf,
  childElements,
  descendants,
  effectivePart,
  findById,
  linkAmounts,
  partAttribute,
  resolveParts,
  resourceAmounts,
  subElements,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { parsedXml } from '../kit/value-in.js';
import { bytesOf, samples } from './samples.js';

const all = samples();

function open(name: string): XmlDocument {
  const sample = all.find(({ path }) => path.endsWith(`/${name}.jdf`));
  if (sample === undefined) throw new Error(`There is no sample ${name}.`);
  return parsedXml(bytesOf(sample));
}

/** The links to a resource, in document order, with what their Part elements mean. */
function meant(doc: XmlDocument, id: string) {
  const links = [...descendants(doc.root)].filter(
    (el) => el.local.endsWith('Link') && attributeOf(el, 'rRef') === id,
  );
  return links.map((link) => {
    const parts = childElements(link, 'Part').map((part) =>
      Object.fromEntries(part.attributes.map(({ local, value }) => [local, value])),
    );
    return { link, ...resolveParts(findById(doc, id)!, parts) };
  });
}

const products = (doc: XmlDocument, id: string) =>
  meant(doc, id).map(({ found }) => found.map((part) => partAttribute(part, 'ProductID')));

const brands = (doc: XmlDocument, resource: XmlElement): (string | undefined)[] =>
  resolveParts(resource, []).found.flatMap((part) =>
    subElements(doc, effectivePart(part), 'Media').map((media) =>
      ['MediaType', 'Brand'].map((name) => attributeOf(media, name)).join(' '),
    ),
  );

describe('partitioned resources of the samples', () => {
  it('ptExpMedia: twelve plates; each inherits brand, status and amount, one is not there yet', () => {
    const doc = open('ptExpMedia');
    const plates = meant(doc, 'L1')[0]!.found;
    expect(plates.map((part) => partAttribute(part, 'ProductID'))).toEqual(
      ['S1F', 'S1B', 'S2F'].flatMap((side) => ['C', 'M', 'Y', 'K'].map((ink) => `${side}${ink}PlateJ42`)),
    );
    expect(new Set(plates.map((part) => partAttribute(part, 'Brand')))).toEqual(new Set(['Gooey']));
    expect(
      plates.filter((part) => partAttribute(part, 'Status') === 'Unavailable').map(({ keys }) => keys),
    ).toEqual([{ SheetName: 'S1', Side: 'Front', Separation: 'Yellow' }]);
    const bySide = resourceAmounts(findById(doc, 'L1')!, 'Amount', ['SheetName', 'Side']);
    expect(bySide.groups.map(({ own, leaves }) => [own.total, leaves])).toEqual([
      [8, 4],
      [8, 4],
      [8, 4],
    ]);
  });

  it('partUsageInAPartitionedResource: the version of the black plate is found', () => {
    const doc = open('partUsageInAPartitionedResource');
    expect(products(doc, 'XM_ID')).toEqual([['S1FKD']]);
    const plates = findById(doc, 'XM_ID')!;
    const of = (keys: Record<string, string>) =>
      resolveParts(plates, [keys]).found.map((part) => partAttribute(part, 'ProductID'));
    // Implicit: cyan is the same plate for every version, and so is a version of black that nobody made.
    expect(of({ SheetName: 'S1', Side: 'Front', Separation: 'Cyan', PartVersion: 'Deutsch' })).toEqual([
      'S1FC',
    ]);
    expect(of({ SheetName: 'S1', Side: 'Front', Separation: 'Black', PartVersion: 'Suomi' })).toEqual([
      'S1FK',
    ]);
    // The back of S2 is the back of S1.
    expect(of({ SheetName: 'S2', Side: 'Back', PartVersion: 'English' })).toEqual([
      'S1BC',
      'S1BM',
      'S1BY',
      'S1BKE',
    ]);
  });

  it('amountInAnExposedMediaLinkToAptExpMedia: cyan and magenta of one sheet, one of them twice', () => {
    const doc = open('amountInAnExposedMediaLinkToAptExpMedia');
    expect(products(doc, 'E1')).toEqual([['1', '2', '5', '6']]);
    const { link } = meant(doc, 'E1')[0]!;
    const each = linkAmounts(link, findById(doc, 'E1')!, 'Amount', ['SheetName', 'Side', 'Separation']);
    expect(each.groups.map(({ keys, own }) => [keys.Side, keys.Separation, own.stated, own.total])).toEqual([
      ['Front', 'Cyan', 0, 0],
      ['Front', 'Magenta', 0, 0],
      ['Back', 'Cyan', 0, 0],
      ['Back', 'Magenta', 1, 2],
    ]);
  });

  it('explicitRefOfOrderedPtndResources: each link takes one sheet', () => {
    const doc = open('explicitRefOfOrderedPtndResources');
    expect(meant(doc, 'Sheets01').map(({ found }) => found.map(({ keys }) => keys))).toEqual(
      ['Sheet1', 'Sheet2', 'Sheet3'].map((SheetName) => [{ SheetName }]),
    );
  });

  it('exposedMediaWithLocationElements: half of what lies in the second drawer', () => {
    const doc = open('exposedMediaWithLocationElements');
    const [{ link, found }] = meant(doc, 'L1') as [ReturnType<typeof meant>[number]];
    expect(found.map((part) => partAttribute(part, 'Amount'))).toEqual(['100']);
    expect(resourceAmounts(findById(doc, 'L1')!, 'Amount').all.total).toBe(142);
    expect(linkAmounts(link, findById(doc, 'L1')!, 'Amount').all.total).toBe(50);
  });

  it('legalIncompletePartition and degeneratePartition: leaves of different depth, and one leaf alone', () => {
    expect(meant(open('legalIncompletePartition'), 'P1')[0]!.found.map(({ keys }) => keys)).toEqual([
      { PreviewType: 'Separation', Separation: 'Cyan' },
      { PreviewType: 'Separation', Separation: 'Magenta' },
      { PreviewType: 'ThumbNail' },
    ]);
    const folding = findById(open('degeneratePartition'), 'fold')!;
    const noOp = (SheetName: string) =>
      resolveParts(folding, [{ SheetName }]).found.map((part) => partAttribute(part, 'NoOp'));
    expect([noOp('Sheet 1'), noOp('Sheet 2')]).toEqual([['false'], []]);
  });

  it('ptExpMediaWithMediaSubelements and ...MediaRefSubelements: an own sub-element replaces the inherited one', () => {
    const inline = open('ptExpMediaWithMediaSubelements');
    expect(brands(inline, findById(inline, 'L1')!)).toEqual(['Film foo', 'Film bar']);
    const referred = open('ptExpMediaWithMediaRefSubelements');
    expect(brands(referred, findById(referred, 'L41')!)).toEqual(['Film foo', 'Film bar']);
  });

  it('mediaLinkAndMediaRef: first and last page on one paper, those between on the other', () => {
    const media = findById(open('mediaLinkAndMediaRef'), 'r0006')!;
    const of = (RunIndex: string) =>
      resolveParts(media, [{ RunIndex }]).found.map(({ keys }) => keys.RunIndex);
    expect([of('0'), of('-1'), of('5'), of('0 ~ 1')]).toEqual([
      ['0 -1'],
      ['0 -1'],
      ['1 ~ -2'],
      ['0 -1', '1 ~ -2'],
    ]);
  });
});
