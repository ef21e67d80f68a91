import { findingsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (position: string) =>
  findingsIn(
    ticket(
      'Type="ProcessGroup"',
      resource(
        'StrippingParams',
        'PartIDKeys="SheetName"',
        `<Media MediaType="Paper" Dimension="2000 1400"/><StrippingParams SheetName="S1"><Position ${position}/></StrippingParams>`,
      ),
    ),
  );
const FAULT = ['warning JDF_GEOMETRY /JDF/ResourcePool/StrippingParams/StrippingParams/Position'];

describe('positions on the sheet', () => {
  it.each([
    ['RelativeBox="0 0 0.5 1"', []],
    ['RelativeBox="0 0 0.5 1.2"', FAULT],
    ['RelativeBox="-0.1 0 0.5 1"', FAULT],
    ['RelativeBox="0.5 0 0.5 1"', FAULT],
    ['AbsoluteBox="10 10 1990 1390"', []],
    ['AbsoluteBox="10 10 2010 1390"', FAULT],
    ['AbsoluteBox="10 1390 1990 10"', FAULT],
  ])('have a size and lie on it: %s', (position, expected) => {
    expect(found(position)).toEqual(expected);
  });
});
