import { findingsIn, input, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const sheet = (id: string) => resource('Component', `ID="${id}" ComponentType="Sheet"`);
const FOLDING = sheet('in') + sheet('out') + resource('FoldingParams');
const folding = (...links: string[]) =>
  ticket('Type="Folding"', FOLDING + resource('Media') + sheet('more'), links.join(''));
const IN = input('Component', 'rRef="in"');
const OUT = output('Component', 'rRef="out"');
const PARAMS = input('FoldingParams');
const pool = '/JDF/ResourceLinkPool';

// What each process takes and makes: the Constraint notes of the official JDF 1.9 schema (JDFProcess).
describe('the links of a process', () => {
  it('are those of its process and those of every process', () => {
    const device = resource('Device') + resource('NodeInfo');
    const links = IN + PARAMS + OUT + input('Device') + input('NodeInfo');
    expect(findingsIn(ticket('Type="Folding"', FOLDING + device, links))).toEqual([]);
  });

  it.each([
    ['one that it does not take', [IN, PARAMS, OUT, input('Media')], `error JDF_LINK ${pool}/MediaLink`],
    [
      'one in the wrong direction',
      [IN, PARAMS, OUT, output('FoldingParams')],
      `error JDF_LINK ${pool}/FoldingParamsLink[2]`,
    ],
    [
      'one too many',
      [IN, input('Component', 'rRef="more"'), PARAMS, OUT],
      `error JDF_LINK ${pool}/ComponentLink[2]`,
    ],
    ['none of what it needs', [IN, OUT], 'warning JDF_LINK /JDF'],
    [
      'a role that it has not',
      [IN, PARAMS, OUT, output('Component', 'rRef="more" ProcessUsage="Cover"')],
      `warning JDF_LINK ${pool}/ComponentLink[3]`,
    ],
  ])('are told of: %s', (_what, links, expected) => {
    expect(findingsIn(folding(...links))).toEqual([expected]);
  });

  it('may select parts of one resource several times', () => {
    const parts = ['A', 'B'].map((name) => `<Component SheetName="${name}"/>`).join('');
    const split = resource('Component', 'ID="in" ComponentType="Sheet" PartIDKeys="SheetName"', parts);
    const links = ['A', 'B'].map((name) => input('Component', 'rRef="in"', `<Part SheetName="${name}"/>`));
    const pooled = split + sheet('out') + resource('FoldingParams');
    expect(findingsIn(ticket('Type="Folding"', pooled, links.join('') + PARAMS + OUT))).toEqual([]);
  });

  it('of a gray box are judged mildly, and those of an unknown process not at all', () => {
    const links = IN + OUT + input('Media');
    const resources = FOLDING + resource('Media');
    expect(findingsIn(ticket('Type="ProcessGroup" Types="Folding Stitching"', resources, links))).toEqual([
      `warning JDF_LINK ${pool}/MediaLink`,
    ]);
    expect(findingsIn(ticket('xmlns:my="urn:example:my" Type="my:Gilding"', resources, links))).toEqual([]);
  });

  it('of a product are intents and components, no parameters', () => {
    const found = findingsIn(ticket('Type="Product"', FOLDING, PARAMS + OUT));
    expect(found).toEqual([`error JDF_LINK ${pool}/FoldingParamsLink`]);
  });
});
