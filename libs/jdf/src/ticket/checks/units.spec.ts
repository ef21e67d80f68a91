import { findingsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (attributes: string) =>
  findingsIn(ticket('Type="ProcessGroup"', resource('Media', attributes))).filter((one) =>
    one.includes('JDF_UNIT'),
  );

// The limits: common practice, no source.
describe('the units of media', () => {
  it.each([
    'Thickness="2000"',
    'Weight="1000"',
    'Dimension="2834.6 1984.3"',
    'Dimension="0 0"',
    'Dimension="210 297" MediaType="Plate"',
  ])('are likely with %s', (attributes) => {
    expect(found(attributes)).toEqual([]);
  });

  it.each(['Thickness="2001"', 'Weight="1001"', 'Dimension="210 297"'])(
    'are not likely with %s',
    (attributes) => {
      expect(found(attributes)).toEqual(['warning JDF_UNIT /JDF/ResourcePool/Media']);
    },
  );
});
