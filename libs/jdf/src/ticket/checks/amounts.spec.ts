import { findingsIn, input, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const component = (attributes = '') => resource('Component', `ComponentType="Sheet" ${attributes}`);
const found = (media: string, made: string, links: readonly [string, string]) =>
  findingsIn(ticket('Type="ConventionalPrinting"', media + made, links.join(''))).filter((one) =>
    one.includes('JDF_COUNT'),
  );
const pool = (kind: string, good: number, waste: number) =>
  `<AmountPool><PartAmount ${kind}="${good}"><Part Condition="Good"/></PartAmount>` +
  `<PartAmount ${kind}="${waste}"><Part Condition="Waste"/></PartAmount></AmountPool>`;
const at = (link: string) => [`warning JDF_COUNT /JDF/ResourceLinkPool/${link}`];
const print = (taken: string, made: string, inside = '') =>
  found(resource('Media'), component(), [input('Media', taken), output('Component', made, inside)]);

// What must hold: JDF ResourceLink Amount, ActualAmount, PartAmount.
describe('amounts', () => {
  it('may be those of good and waste together or of good alone', () => {
    expect(print('Amount="1100"', 'Amount="1100"', pool('Amount', 1000, 100))).toEqual([]);
    expect(print('Amount="1100"', 'Amount="1000"', pool('Amount', 1000, 100))).toEqual([]);
  });

  it('are never less than nothing', () => {
    expect(print('ActualAmount="-1"', '')).toEqual(at('MediaLink'));
    expect(print('', '', pool('ActualAmount', 1, -2))).toEqual(at('ComponentLink/AmountPool/PartAmount[2]'));
  });

  it('of the parts make that of the whole', () => {
    expect(print('', 'Amount="1200"', pool('Amount', 1000, 100))).toEqual(at('ComponentLink'));
  });

  it('come out of what went in', () => {
    expect(print('ActualAmount="1050"', '', pool('ActualAmount', 1000, 100))).toEqual(at('ComponentLink'));
    expect(print('ActualAmount="1100"', '', pool('ActualAmount', 1000, 100))).toEqual([]);
  });

  it('are compared only in one unit', () => {
    const links = [input('Media', 'ActualAmount="5"'), output('Component', 'ActualAmount="1000"')] as const;
    expect(found(resource('Media', 'Unit="kg"'), component(), links)).toEqual([]);
    expect(found(resource('Media'), component(), links)).toEqual(at('ComponentLink'));
  });

  it('have no total over parts in different units', () => {
    const parts = '<Media Location="A"/><Media Location="B" Unit="kg"/>';
    const media = resource('Media', 'PartIDKeys="Location"', parts);
    expect(found(media, component(), [input('Media', 'Amount="5"'), output('Component')])).toEqual(
      at('MediaLink'),
    );
    const one = input('Media', 'Amount="5"', '<Part Location="A"/>');
    expect(found(media, component(), [one, output('Component')])).toEqual([]);
  });
});
