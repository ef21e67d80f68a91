import { findingsIn, input, node, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (text: string) => findingsIn(text).filter((one) => one.includes('JDF_STATUS'));
const group = (status: string, ...inner: string[]) =>
  found(
    ticket(
      `Type="ProcessGroup" Status="${status}"`,
      '',
      '',
      inner.map((one, i) => node(`ID="n${i}" Type="ProcessGroup" Status="${one}"`)).join(''),
    ),
  );
const RUN =
  '<AuditPool><ProcessRun Start="2024-05-06T08:00:00Z" End="2024-05-06T09:00:00Z" EndStatus="Completed" TimeStamp="2024-05-06T09:00:00Z"/></AuditPool>';
const folding = (status: string, made: string, taken: string, audits = '') =>
  found(
    ticket(
      `Type="Folding" Status="${status}"`,
      resource('Component', `ID="in" ComponentType="Sheet" Status="${taken}"`) +
        resource('Component', `ID="out" ComponentType="Sheet" Status="${made}"`) +
        resource('FoldingParams'),
      input('Component', 'rRef="in"') + input('FoldingParams') + output('Component', 'rRef="out"'),
      audits,
    ),
  );
const pool = '/JDF/ResourceLinkPool';

// What contradicts what: the standard reference, section 9, check 12.
describe('the status of a node', () => {
  it('is Completed where all nodes inside are, InProgress where one is', () => {
    expect(group('Completed', 'Completed', 'Completed')).toEqual([]);
    expect(group('Waiting', 'Completed', 'Waiting')).toEqual([]);
    expect(group('Waiting', 'Completed', 'Completed')).toEqual(['warning JDF_STATUS /JDF']);
    expect(group('Waiting', 'InProgress', 'Waiting')).toEqual(['warning JDF_STATUS /JDF']);
  });

  it('is Completed only with a run in its log and with what it made', () => {
    expect(folding('Completed', 'Available', 'Available', RUN)).toEqual([]);
    expect(folding('Completed', 'Available', 'Available')).toEqual(['warning JDF_STATUS /JDF']);
    expect(folding('Completed', 'Unavailable', 'Available', RUN)).toEqual([
      `warning JDF_STATUS ${pool}/ComponentLink[2]`,
    ]);
  });

  it('is one of work only with what it takes', () => {
    expect(folding('InProgress', 'Unavailable', 'InUse')).toEqual([]);
    expect(folding('InProgress', 'Unavailable', 'Unavailable')).toEqual([
      `warning JDF_STATUS ${pool}/ComponentLink[1]`,
    ]);
  });

  it('says that each part has its own only where one has', () => {
    const info = (status: string) =>
      resource('NodeInfo', 'PartIDKeys="SheetName"', `<NodeInfo SheetName="a" ${status}/>`);
    const parts = (status: string) =>
      findingsIn(ticket('Type="ProcessGroup" Status="Part"', info(status), input('NodeInfo'))).filter((one) =>
        one.includes('JDF_STATUS'),
      );
    expect(parts('NodeStatus="Waiting"')).toEqual([]);
    expect(parts('')).toEqual(['warning JDF_STATUS /JDF']);
  });
});
