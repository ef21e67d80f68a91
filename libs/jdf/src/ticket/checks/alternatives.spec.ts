import { findingsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (resources: string) =>
  findingsIn(ticket('Type="ProcessGroup"', resources)).filter((one) => one.includes('JDF_ALTERNATIVE'));
const pool = '/JDF/ResourcePool';
const CTM = 'CTM="1 0 0 1 0 0"';

// What excludes what: JDF BinderySignature, Layout and Position; that Ord may stand beside a kind of mark: the standard's
// own sample markObject.
describe('alternatives', () => {
  it.each([
    ['a fold code', resource('BinderySignature', 'FoldCatalog="F8-7"')],
    [
      'cells',
      resource('BinderySignature', '', '<SignatureCell FrontPages="0" BackPages="1"/><SignatureCell/>'),
    ],
    ['a list index', resource('Layout', '', `<ContentObject ${CTM} Ord="0"/>`)],
    [
      'marks of one kind',
      resource('Layout', '', `<MarkObject ${CTM} Ord="0"><CutMark/><CutMark/></MarkObject>`),
    ],
    ['a mark from a list', resource('Layout', '', `<MarkObject ${CTM} Ord="0"/>`)],
    ['a mark from a document', resource('Layout', '', `<MarkObject ${CTM} ContentRef="layout"/>`)],
    ['a text as a mark', resource('Layout', '', `<MarkObject ${CTM}><DeviceMark/></MarkObject>`)],
    [
      "somebody else's mark",
      resource('Layout', '', `<MarkObject ${CTM}><s:Star xmlns:s="urn:example:shop"/></MarkObject>`),
    ],
  ])('may be %s alone', (_what, resources) => {
    expect(found(resources)).toEqual([]);
  });

  it.each([
    [
      'a fold code and folds',
      resource('BinderySignature', 'FoldCatalog="F4-1"', '<Fold From="Left" To="Up"/>'),
      `error JDF_ALTERNATIVE ${pool}/BinderySignature`,
    ],
    [
      'an index and an expression',
      resource('Layout', '', `<ContentObject ${CTM} Ord="0" OrdExpression="1"/>`),
      `error JDF_ALTERNATIVE ${pool}/Layout/ContentObject`,
    ],
    [
      'two boxes',
      resource('StrippingParams', '', '<Position AbsoluteBox="0 0 9 9" RelativeBox="0 0 1 1"/>'),
      `error JDF_ALTERNATIVE ${pool}/StrippingParams/Position`,
    ],
    [
      'marks of two kinds',
      resource('Layout', '', `<MarkObject ${CTM}><CutMark/><RegisterMark Center="0 0"/></MarkObject>`),
      `error JDF_ALTERNATIVE ${pool}/Layout/MarkObject`,
    ],
    [
      'a mark that shows nothing',
      resource(
        'Layout',
        '',
        `<MarkObject ${CTM}><MarkActivation Context="SheetIndex" Index="0"/></MarkObject>`,
      ),
      `error JDF_ALTERNATIVE ${pool}/Layout/MarkObject`,
    ],
    [
      'a mark from a document and of a kind',
      resource('Layout', '', `<MarkObject ${CTM} ContentRef="layout"><CutMark/></MarkObject>`),
      `warning JDF_ALTERNATIVE ${pool}/Layout/MarkObject`,
    ],
  ])('may not be %s', (_what, resources, expected) => {
    expect(found(resources)).toEqual([expected]);
  });
});

describe('what is placed on a sheet', () => {
  const layout = (outer: string, inner: string) =>
    resource(
      'Layout',
      'PartIDKeys="SheetName Side"',
      `${outer}<Layout SheetName="S"><Layout Side="Front">${inner}</Layout></Layout>`,
    );
  const mark = `<ContentObject ${CTM} Ord="0"/>`;

  // Source: the comments in the standard's sample invalidMarkObject.
  it('stands in a leaf of its Layout', () => {
    expect(found(layout('', mark))).toEqual([]);
    expect(found(layout(mark, ''))).toEqual([`error JDF_ALTERNATIVE ${pool}/Layout/ContentObject`]);
  });
});
