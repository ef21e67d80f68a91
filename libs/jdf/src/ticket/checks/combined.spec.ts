import { findingsIn, input, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const sheet = (id: string) => resource('Component', `ID="${id}" ComponentType="Sheet"`);
const RESOURCES =
  sheet('in') + sheet('out') + resource('FoldingParams') + resource('CuttingParams') + resource('Media');
const EXCHANGED = input('Component', 'rRef="in"') + output('Component', 'rRef="out"');
const FOLD = input('FoldingParams', 'CombinedProcessIndex="1"');
const CUT = input('CuttingParams', 'CombinedProcessIndex="0 2"');
const combined = (links: string, types = 'Cutting Folding Cutting') =>
  findingsIn(ticket(`Type="Combined" Types="${types}"`, RESOURCES, EXCHANGED + links));
const pool = '/JDF/ResourceLinkPool';

// The case that passes is the one of the standard's sample combinedProcessNode.
describe('a Combined node', () => {
  it('has the parameters of each of its processes', () => {
    expect(combined(CUT + FOLD)).toEqual([]);
    expect(combined(CUT)).toEqual(['error JDF_LINK /JDF']);
    expect(combined(input('CuttingParams', 'CombinedProcessIndex="0"') + FOLD)).toEqual([
      'error JDF_LINK /JDF',
    ]);
  });

  it('is only warned of where nobody has filled it in yet', () => {
    expect(combined('')).toEqual(Array(3).fill('warning JDF_LINK /JDF'));
  });

  it('names in a link the process that takes it', () => {
    const swapped = input('FoldingParams', 'CombinedProcessIndex="0"');
    expect(combined(CUT + FOLD + swapped)).toEqual([`error JDF_LINK ${pool}/FoldingParamsLink[2]`]);
    expect(combined(CUT + FOLD + input('Media', 'CombinedProcessIndex="3"'))).toEqual([
      `error JDF_LINK ${pool}/MediaLink`,
    ]);
  });

  it('has processes that take what the one before makes', () => {
    const odd = 'Cutting ImageSetting';
    expect(combined(input('CuttingParams'), odd)).toEqual(['warning JDF_NETWORK /JDF']);
  });
});

describe('the process of a node', () => {
  it.each([
    ['one of the standard', 'Type="ProcessGroup" Types="Folding"', []],
    ["one of somebody's own", 'Type="my:Gilding" xmlns:my="urn:example:my"', []],
    ['a gray box of any name', 'Type="ProcessGroup" Types="RIPing"', []],
    ['none', 'Type="Gilding"', ['error JDF_STRUCTURE /JDF']],
    ['none among several', 'Type="Combined" Types="Cutting Gilding"', ['error JDF_STRUCTURE /JDF']],
  ])('is %s', (_what, head, expected) => {
    expect(findingsIn(ticket(head)).filter((found) => !found.startsWith('warning'))).toEqual(expected);
  });
});
