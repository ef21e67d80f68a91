import { findingsIn, node, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (outer: string, inner: string) =>
  findingsIn(ticket(`Type="Product" ${outer}`, '', '', node(`Type="ProcessGroup" ${inner}`))).filter((one) =>
    one.includes('JDF_VERSION'),
  );

// What must hold: JDF/@Version, MaxVersion.
describe('the highest version allowed', () => {
  it('is at least that which is stated, compared as numbers', () => {
    expect(found('Version="1.3" MaxVersion="1.9"', 'MaxVersion="1.3"')).toEqual([]);
    expect(found('Version="1.9" MaxVersion="1.10"', '')).toEqual([]);
  });

  it('is not lower, of the node itself or of the ticket', () => {
    expect(found('Version="1.4" MaxVersion="1.3"', '')).toEqual(['warning JDF_VERSION /JDF']);
    expect(found('Version="1.4"', 'MaxVersion="1.3"')).toEqual(['warning JDF_VERSION /JDF/JDF']);
  });
});
