import {
  findingsIn,
  input,
  node,
  output,
  problemsIn,
  resource,
  ticket,
} from '../../../../../test/kit/small-ticket.js';

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

// What contradicts what: JDF/@Status, NodeInfo NodeStatus.
describe('the status of a node', () => {
  it('is Completed where all nodes inside are, InProgress where one is', () => {
    expect(group('Completed', 'Completed', 'Completed')).toEqual([]);
    expect(group('Waiting', 'Completed', 'Completed')).toEqual(['warning JDF_STATUS /JDF']);
    expect(group('Waiting', 'InProgress', 'Waiting')).toEqual(['warning JDF_STATUS /JDF']);
  });

  it('has begun where a node inside has, and has ended only where all have', () => {
    expect(group('InProgress', 'Completed', 'Waiting')).toEqual([]);
    expect(group('Stopped', 'Completed', 'Stopped')).toEqual([]);
    expect(group('Ready', 'Waiting', 'Waiting')).toEqual([]);
    expect(group('Waiting', 'Completed', 'Waiting')).toEqual(['warning JDF_STATUS /JDF']);
    expect(group('Completed', 'Completed', 'Waiting')).toEqual(['warning JDF_STATUS /JDF']);
    expect(group('Completed', 'Completed', 'Aborted')).toEqual(['warning JDF_STATUS /JDF']);
    expect(group('InProgress', 'Waiting', 'Ready')).toEqual(['warning JDF_STATUS /JDF']);
  });

  it('cannot be told from nodes that are elsewhere or differ by part', () => {
    expect(group('Waiting', 'Spawned', 'Completed')).toEqual([]);
    expect(group('InProgress', 'Pool', 'Waiting')).toEqual([]);
    expect(group('Waiting', 'Pool', 'InProgress')).toEqual(['warning JDF_STATUS /JDF']);
  });

  it('is told with what is wrong, where, and how to mend it', () => {
    const inner = node('ID="a" Type="ProcessGroup" Status="Completed"') + node('ID="b" Type="ProcessGroup"');
    const text = ticket('Type="ProcessGroup" Status="Completed"', '', '', inner);
    expect(problemsIn(`\n\n${text}`)).toMatchObject([
      {
        line: 3,
        message: 'Status="Completed" does not fit: the nodes inside are Completed, Waiting.',
        hint: 'Set Status="InProgress".',
      },
    ]);
  });

  it('is Completed only with a run in its log and with what it made', () => {
    expect(folding('Completed', 'Available', 'Available', RUN)).toEqual([]);
    expect(folding('Completed', 'Available', 'Available')).toEqual(['warning JDF_STATUS /JDF']);
    const aborted = RUN.replace('"Completed"', '"Aborted"');
    expect(folding('Completed', 'Available', 'Available', aborted)).toEqual(['warning JDF_STATUS /JDF']);
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

  describe('by its parts', () => {
    const info = (...statuses: string[]) =>
      resource(
        'NodeInfo',
        'PartIDKeys="SheetName"',
        statuses.map((one, i) => `<NodeInfo SheetName="s${i}" ${one && `NodeStatus="${one}"`}/>`).join(''),
      );
    const parts = (status: string, ...statuses: string[]) =>
      found(ticket(`Type="ProcessGroup" Status="${status}"`, info(...statuses), input('NodeInfo')));
    const FAULT = ['warning JDF_STATUS /JDF'];

    it('is Part only where a part has its own', () => {
      expect(parts('Part', 'Waiting')).toEqual([]);
      expect(parts('Part', '')).toEqual(FAULT);
    });

    it('is Part where they differ, else what they all are', () => {
      expect(parts('Part', 'Waiting', 'Completed')).toEqual([]);
      expect(parts('Waiting', 'Waiting', 'Waiting')).toEqual([]);
      expect(parts('Waiting', 'Waiting', 'Completed')).toEqual(FAULT);
      expect(parts('InProgress', 'Stopped', 'Stopped')).toEqual(FAULT);
    });
  });
});
