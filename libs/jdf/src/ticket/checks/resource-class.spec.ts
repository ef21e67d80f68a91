import { findingsIn, input, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const GROUP = 'Type="ProcessGroup"';
const at = '/JDF/ResourcePool';

// The class of each resource: the official JDF 1.9 schema (the base of its type).
describe('a resource', () => {
  it.each([
    ['Media', 'Consumable', []],
    ['Media', 'Quantity', [`warning JDF_RESOURCE ${at}/Media`]],
    ['FoldingParams', 'Parameter', []],
    ['FoldingParams', 'Intent', [`warning JDF_RESOURCE ${at}/FoldingParams`]],
  ])('%s of Class %s is right or not', (name, kind, expected) => {
    const found = findingsIn(ticket(GROUP, `<${name} ID="r" Class="${kind}" Status="Available"/>`));
    expect(found).toEqual(expected);
  });

  it('has an amount only where it can be counted', () => {
    expect(findingsIn(ticket(GROUP, resource('Media', 'Amount="4"'), input('Media', 'Amount="4"')))).toEqual(
      [],
    );
    const folding = resource(
      'FoldingParams',
      'PartIDKeys="SheetName"',
      '<FoldingParams SheetName="S" Amount="4"/>',
    );
    expect(findingsIn(ticket(GROUP, folding, input('FoldingParams', 'Amount="4"')))).toEqual([
      `warning JDF_RESOURCE ${at}/FoldingParams/FoldingParams`,
      'warning JDF_RESOURCE /JDF/ResourceLinkPool/FoldingParamsLink',
    ]);
  });
});
