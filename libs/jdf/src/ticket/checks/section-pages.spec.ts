import { input, node, problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const CODE = '<BinderySignature FoldCatalog="F16-6"/>';
const EIGHT =
  '<BinderySignature NumberUp="2 2"><Fold From="Front" To="Up"/><Fold From="Left" To="Up"/></BinderySignature>';
const sheet = (name: string, section: string, signature: string) =>
  `<StrippingParams SheetName="${name}" ${section}>${signature}</StrippingParams>`;

/** A product of so many pages, stripped on these sheets. */
function told(pages: string, sheets: readonly string[], inside = '') {
  const resources = [
    resource('LayoutIntent', '', `<Pages DataType="IntegerSpan" ${pages}/>`),
    resource('StrippingParams', 'PartIDKeys="SheetName"', sheets.join('')),
  ];
  const stripping = node('ID="n" Type="Stripping"', '', input('StrippingParams'));
  return problemsIn(
    ticket('Type="Product"', `\n${resources.join('\n')}`, input('LayoutIntent'), inside + stripping),
  ).filter(({ code }) => code === 'JDF_FOLD');
}

const TWO = [sheet('S1', 'SectionList="0"', CODE), sheet('S2', 'SectionList="1"', EIGHT)];

// 16 + 8 pages: FoldCatalog F16-6 folds 16 (PWG 5100.1), two by two pages on both sides are 8.
describe('the sections of a product', () => {
  it.each([
    ['have its pages', 'Actual="24"', TWO],
    ['have those that were wished for', 'Preferred="24"', TWO],
    [
      'are counted once, on however many sheets',
      'Actual="24"',
      [...TWO, sheet('S3', 'SectionList="1"', EIGHT)],
    ],
    [
      'are told apart by what they are gathered to',
      'Actual="32"',
      [sheet('S1', 'AssemblyIDs="A"', CODE), sheet('S2', 'AssemblyIDs="B"', CODE)],
    ],
    ['may have room for more, such as a cover', 'Actual="20"', TWO],
    ['may be said nowhere', 'Actual="40"', [sheet('S1', '', CODE)]],
    ['may be several in one', 'Actual="40"', [sheet('S1', 'SectionList="0 1"', CODE)]],
    [
      'are none where nothing is folded',
      'Actual="2"',
      [sheet('S1', 'SectionList="0"', '<BinderySignature BinderySignatureType="Grid" NumberUp="4 2"/>')],
    ],
    ['may belong to any number of pages', 'Range="8 ~ 40"', TWO],
  ])('%s', (_what, pages, sheets) => {
    expect(told(pages, sheets)).toEqual([]);
  });

  it.each([
    ['Actual="40"', 40],
    ['Preferred="20" Actual="26"', 26],
  ])('do not have too few for %s', (pages, stated) => {
    expect(told(pages, TWO)).toMatchObject([
      {
        severity: 'warning',
        line: 3,
        path: '/JDF/ResourcePool/StrippingParams',
        message: `The sections have 24 pages together, too few for the ${stated} of the product.`,
        hint: 'Correct FoldCatalog, the sections of the sheets (AssemblyIDs, SectionList), or Pages of LayoutIntent.',
      },
    ]);
  });

  it('may be of a product inside, or elsewhere', () => {
    expect(told('Actual="40"', TWO, node('ID="p" Type="Product"'))).toEqual([]);
    expect(told('Actual="40"', TWO, '<AncestorPool><Ancestor NodeID="whole"/></AncestorPool>')).toEqual([]);
  });
});
