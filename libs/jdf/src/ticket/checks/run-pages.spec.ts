import { findingsIn, input, node, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const list = (id: string, attributes: string) => resource('RunList', `ID="${id}" ${attributes}`);

describe('pages of runs', () => {
  it.each([
    ['NPage="8" Pages="0~7"', 0],
    ['NPage="4" Pages="4~7"', 0],
    ['NPage="8" Pages="0 ~ -1"', 0],
    ['NPage="2" Pages="0 2 5"', 1],
  ])('are no more than it has: %s', (attributes, faults) => {
    const found = findingsIn(ticket('Type="ProcessGroup"', list('d', attributes)));
    expect(found).toEqual(Array(faults).fill('warning JDF_PAGES /JDF/ResourcePool/RunList'));
  });

  it.each([
    [0, 0],
    [7, 0],
    [-8, 0],
    [8, 1],
    [-9, 1],
  ])('are there where a layout places them: page %d of 8', (ord, faults) => {
    const layout = resource(
      'Layout',
      'PartIDKeys="Side"',
      `<Layout Side="Front"><ContentObject CTM="1 0 0 1 0 0" Ord="${ord}"/></Layout>`,
    );
    const step = node(
      'ID="n" Type="Imposition"',
      '',
      input('Layout') + input('RunList', 'rRef="d" ProcessUsage="Document"') + output('RunList', 'rRef="o"'),
    );
    const found = findingsIn(
      ticket('Type="ProcessGroup"', layout + list('d', 'NPage="8"') + list('o', ''), '', step),
    );
    expect(found).toEqual(
      Array(faults).fill('warning JDF_PAGES /JDF/ResourcePool/Layout/Layout/ContentObject'),
    );
  });
});
