import { parsedXml } from '../../../../../test/kit/value-in.js';
import { checkDocument } from '../../index.js';

const ticket = (content: string, types = 'Cutting Folding'): string =>
  `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" Types="${types}">\n${content}\n</XJDF>`;
const set = (attributes: string, ...resources: readonly string[]): string =>
  `<ResourceSet ${attributes}>${resources.join('\n')}</ResourceSet>`;
const resource = (content: string, attributes = ''): string =>
  `<Resource ${attributes}>${content}</Resource>`;

function found(text: string): string[] {
  const doc = parsedXml(text);
  return checkDocument(doc).problems.map(({ severity, code, path }) => `${severity} ${code} ${path}`);
}

const SETS = '/XJDF/ResourceSet';
const PAPER = resource('<Media MediaType="Paper"/>', 'ID="m"');

// XJDF ResourceSet, Part, ProductList, BindingIntent ChildRefs.
describe('what no schema finds in an XJDF ticket', () => {
  it('says nothing of a sound one', () => {
    const sets = [
      set('Name="Media"', PAPER),
      set('Name="Component" Usage="Input"', resource('<Part SheetName="S1"/><Component MediaRef="m"/>')),
      set('Name="Component" Usage="Output" CombinedProcessIndex="1"', resource('<Component/>')),
      set('Name="CuttingParams" Usage="Input"', '<Resource/>'),
    ];
    expect(found(ticket(sets.join('\n')))).toEqual([]);
  });

  it.each([
    [
      'a resource in a set of another name',
      set('Name="Ink"', PAPER),
      `error JDF_LINK ${SETS}/Resource/Media`,
    ],
    [
      'two sets for the same use',
      set('Name="Media" Usage="Input"', PAPER) + set('Name="Media" Usage="Input"', '<Resource/>'),
      `error JDF_STRUCTURE ${SETS}[2]`,
    ],
    [
      'an ID twice',
      set('Name="Media"', PAPER, resource('<Media MediaType="Film"/>', 'ID="m"')),
      `error JDF_ID_DOUBLE ${SETS}/Resource[2]`,
    ],
    [
      'a reference to nothing',
      set('Name="Component"', resource('<Component MediaRef="x"/>')),
      `error JDF_DANGLING ${SETS}/Resource/Component`,
    ],
    [
      'a reference to something else than its name says',
      set('Name="Ink"', resource('<Ink/>', 'ID="i"')) +
        set('Name="Component"', resource('<Component MediaRef="i"/>')),
      `error JDF_LINK ${SETS}[2]/Resource/Component`,
    ],
    [
      'parts that name every side',
      set('Name="Media"', resource('<Part Side="Front"/><Part Side="Back"/><Media MediaType="Paper"/>')),
      `error JDF_PARTITION ${SETS}/Resource/Part[1]`,
    ],
    [
      'parts of different keys in one set',
      set('Name="Ink"', resource('<Part Side="Front"/><Ink/>'), resource('<Part SheetName="S1"/><Ink/>')),
      `warning JDF_PARTITION ${SETS}/Resource[2]/Part`,
    ],
    [
      'a process that Types has not',
      set('Name="Media" CombinedProcessIndex="2"', PAPER),
      `error JDF_VALUE ${SETS}`,
    ],
    [
      'products without a root',
      '<ProductList><Product IsRoot="false"/></ProductList>',
      'error JDF_STRUCTURE /XJDF/ProductList',
    ],
    [
      'a part of a product that is no product',
      `<ProductList><Product ID="p"><Intent Name="AssemblingIntent"><AssemblingIntent Container="m"/></Intent></Product></ProductList>${set('Name="Media"', PAPER)}`,
      'error JDF_DANGLING /XJDF/ProductList/Product/Intent/AssemblingIntent',
    ],
  ])('finds %s', (_what, content, problem) => {
    expect(found(ticket(content))).toContain(problem);
  });
});
