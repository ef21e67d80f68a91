import { findingsIn, input, node, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const sheet = (id: string, attributes = 'Status="Unavailable"', inside = '') =>
  resource('Component', `ID="${id}" ComponentType="Sheet" ${attributes}`, inside);
const labor = (id: string, takes: string, makes: string, attributes = '') =>
  node(
    `ID="${id}" JobPartID="${id}" Type="ManualLabor"`,
    '',
    input('ManualLaborParams') +
      (takes === '' ? '' : input('Component', `rRef="${takes}" ${attributes}`)) +
      output('Component', `rRef="${makes}"`),
  );
const group = (resources: string, nodes: string) =>
  findingsIn(ticket('Type="ProcessGroup"', resource('ManualLaborParams') + resources, '', nodes));
const at = (step: number, link: string) => `/JDF/JDF[${step}]/ResourceLinkPool/${link}`;

describe('the network of steps', () => {
  it('runs from what is there to what is made', () => {
    const resources = sheet('raw', 'Status="Available"') + sheet('cut') + sheet('folded');
    expect(group(resources, labor('A', 'raw', 'cut') + labor('B', 'cut', 'folded'))).toEqual([]);
  });

  it('has no circle', () => {
    const resources = sheet('a') + sheet('b') + sheet('c');
    const steps = labor('A', 'c', 'a') + labor('B', 'a', 'b') + labor('C', 'b', 'c');
    expect(group(resources, steps)).toEqual([`error JDF_NETWORK ${at(3, 'ComponentLink[1]')}`]);
  });

  it('may have a circle over a pipe', () => {
    const resources = sheet('a') + sheet('b', 'Status="Unavailable" PipeID="p"');
    expect(group(resources, labor('A', 'b', 'a') + labor('B', 'a', 'b'))).toEqual([]);
  });

  it('tells of each circle once, and not of what only leads into one', () => {
    const resources =
      ['a', 'b', 'c', 'd', 'e'].map((id) => sheet(id)).join('') + sheet('raw', 'Status="Available"');
    const first = labor('A', 'b', 'a') + labor('B', 'a', 'b');
    const second = labor('C', 'd', 'c') + labor('D', 'c', 'd') + labor('E', 'd', 'e');
    expect(group(resources, first + second).filter((found) => found.startsWith('error'))).toHaveLength(2);
  });

  it('is judged by parts: one step may make what another takes of the same resource', () => {
    const parts = '<Component SheetName="S1"/><Component SheetName="S2"/>';
    const both = sheet('x', 'Status="Unavailable" PartIDKeys="SheetName"', parts);
    const step = (id: string, takes: string, makes: string) =>
      node(
        `ID="${id}" JobPartID="${id}" Type="ManualLabor"`,
        '',
        input('ManualLaborParams') +
          input('Component', 'rRef="x"', `<Part SheetName="${takes}"/>`) +
          output('Component', 'rRef="x"', `<Part SheetName="${makes}"/>`),
      );
    const first = output('Component', 'rRef="x"', '<Part SheetName="S1"/>');
    const raw = node('ID="R" Type="ManualLabor"', '', input('ManualLaborParams') + first);
    expect(group(both, raw + step('A', 'S1', 'S2'))).toEqual([]);
    expect(group(both, step('A', 'S2', 'S1') + step('B', 'S1', 'S2'))).toHaveLength(1);
  });

  it('has something that makes what is not there', () => {
    expect(group(sheet('raw') + sheet('cut'), labor('A', 'raw', 'cut'))).toEqual([
      'warning JDF_NETWORK /JDF/JDF/ResourceLinkPool/ComponentLink[1]',
    ]);
    const early = labor('A', 'raw', 'cut', 'MinStatus="Unavailable"');
    expect(group(sheet('raw') + sheet('cut'), early)).toEqual([]);
  });

  it('has one step that makes a part', () => {
    const resources = sheet('raw', 'Status="Available"') + sheet('cut');
    expect(group(resources, labor('A', 'raw', 'cut') + labor('B', 'raw', 'cut'))).toEqual([
      `warning JDF_NETWORK ${at(2, 'ComponentLink[2]')}`,
    ]);
  });
});
