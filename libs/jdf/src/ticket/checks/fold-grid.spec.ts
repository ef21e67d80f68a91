import { problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

interface Sheet {
  readonly signature?: string;
  readonly cell?: string;
  readonly positions?: string;
  readonly paper?: string;
}

/** What is told of a sheet of 2000 × 1440 points with 4 × 2 pages of 480 × 680 and 20 around each. */
const told = ({
  signature = 'NumberUp="4 2"',
  cell = 'TrimSize="480 680" TrimHead="20" TrimFoot="20" TrimFace="20"',
  positions = '',
  paper = 'Dimension="2000 1440"',
}: Sheet) =>
  problemsIn(
    ticket(
      'Type="ProcessGroup"',
      resource(
        'StrippingParams',
        'PartIDKeys="SheetName"',
        `<Media MediaType="Paper" ${paper}/>
<StrippingParams SheetName="S1"><BinderySignature ${signature}/><StripCellParams ${cell}/>${positions}</StrippingParams>`,
      ),
    ),
  ).filter(({ code }) => code === 'JDF_GEOMETRY');
const HINT = 'Correct TrimSize and what is trimmed off in StripCellParams, NumberUp, or the place.';

// The grid of F16-6 is 4 × 2: the standard's own sample processes/strippingComplexExample.
describe('the cells of a signature', () => {
  it.each([
    ['the sheet', {}],
    ['the sheet, by their code', { signature: 'FoldCatalog="F16-6"' }],
    ['a sheet that lies the other way round', { paper: 'Dimension="1440 2000"' }],
    [
      'their half of the sheet',
      { signature: 'NumberUp="2 2"', positions: '<Position RelativeBox="0 0 0.5 1"/>' },
    ],
    [
      'a box in points',
      { signature: 'NumberUp="2 1"', positions: '<Position AbsoluteBox="1000 0 2000 720"/>' },
    ],
    ['a web, whose length is open', { paper: 'Dimension="1000 0"' }],
    ['a sheet that is still to be chosen', { paper: '' }],
  ])('go into %s', (_what, sheet) => {
    expect(told(sheet)).toEqual([]);
  });

  it('do not go into a sheet that is smaller', () => {
    expect(told({ paper: 'Dimension="1990 1440"' })).toMatchObject([
      {
        severity: 'warning',
        line: 2,
        path: '/JDF/ResourcePool/StrippingParams/StrippingParams',
        message: '4 × 2 cells of 500 × 720 points do not go into 1990 × 1440.',
        hint: HINT,
      },
    ]);
  });

  it('do not go into a place that is smaller', () => {
    const positions = '<Position RelativeBox="0 0 0.5 1"/>';
    expect(told({ positions })).toMatchObject([
      {
        line: 2,
        path: '/JDF/ResourcePool/StrippingParams/StrippingParams/Position',
        message: '4 × 2 cells of 500 × 720 points do not go into 1000 × 1440.',
      },
    ]);
  });

  it('need the room of their number where only their code is known', () => {
    const sheet = { signature: 'FoldCatalog="F16-6"', paper: 'Dimension="1990 1400"' };
    expect(told(sheet)).toMatchObject([
      { message: '8 cells of 500 × 720 points do not go into 1990 × 1400.' },
    ]);
  });
});
