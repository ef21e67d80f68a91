import { problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const sheet = (style: string, ...signatures: string[]) =>
  problemsIn(
    ticket(
      'Type="ProcessGroup"',
      resource(
        'StrippingParams',
        `PartIDKeys="SheetName BinderySignatureName" WorkStyle="${style}"`,
        `<Media MediaType="Paper" Dimension="2000 1400"/><StrippingParams SheetName="S1">${signatures
          .map((one, i) => `\n<StrippingParams BinderySignatureName="B${i}">${one}</StrippingParams>`)
          .join('')}</StrippingParams>`,
      ),
    ),
  ).filter(({ code }) => code === 'JDF_GEOMETRY');
const at = (box: string) => `<Position RelativeBox="${box}"/>`;
const points = (box: string) => `<Position AbsoluteBox="${box}"/>`;

// How the sheet is turned: JDF StrippingParams WorkStyle; the first is the standard's own sample strippingComplexExample.
describe('what lies on a sheet with one set of plates', () => {
  it.each([
    ['WorkAndTurn', at('0 0 0.5 1') + at('0.5 0 1 1')],
    ['WorkAndTurn', ''],
    ['WorkAndTurn', at('0.25 0 0.75 0.5')],
    ['WorkAndTurn', at('0 0 0.3333 1') + at('0.667 0 1 1')],
    ['WorkAndTurn', points('100 50 900 1300') + points('1100 50 1900 1300')],
    ['WorkAndTumble', at('0 0 1 0.5') + at('0 0.5 1 1')],
    ['WorkAndBack', at('0 0 0.5 1')],
  ])('lies symmetrically: %s, %s', (style, positions) => {
    expect(sheet(style, positions)).toEqual([]);
  });

  it('may be of several signatures', () => {
    expect(sheet('WorkAndTurn', at('0 0 0.5 1'), at('0.5 0 1 1'))).toEqual([]);
  });

  it.each([
    ['WorkAndTurn', at('0 0 0.5 1'), '0.5 0 1 1'],
    ['WorkAndTurn', at('0 0 1 0.5') + at('0 0 0.4 0.5'), '0.6 0 1 0.5'],
    ['WorkAndTurn', points('100 50 900 1300'), '0.55 0.0357 0.95 0.9286'],
    ['WorkAndTumble', at('0 0 1 0.5'), '0 0.5 1 1'],
  ])('does not lie on one side only: %s, %s', (style, positions, missing) => {
    expect(sheet(style, positions)).toMatchObject([
      {
        severity: 'warning',
        line: 2,
        message: `${style} prints this place on both sides, but nothing lies where it comes to lie.`,
        hint: `Put something at RelativeBox="${missing}", or correct WorkStyle.`,
      },
    ]);
  });
});
