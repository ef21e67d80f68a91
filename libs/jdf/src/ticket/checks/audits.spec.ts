import { findingsIn, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (audits: string) =>
  findingsIn(ticket('Type="ProcessGroup"', '', '', `<AuditPool>${audits}</AuditPool>`)).filter((one) =>
    one.includes('JDF_AUDIT'),
  );
const at = (hour: string) => `2024-05-06T${hour}:00:00Z`;
const created = (id: string, hour: string, more = '') =>
  `<Created ID="${id}" TimeStamp="${at(hour)}" ${more}/>`;
const phase = (start: string, end: string) =>
  `<PhaseTime TimeStamp="${at('20')}" Start="${at(start)}" End="${at(end)}" Status="InProgress"/>`;

// What must hold: JDF AuditPool, TimeStamp, Start, End, refID.
describe('audits', () => {
  it('stand in the order of time, end after they begin and point back', () => {
    expect(found(created('a', '08') + created('b', '09', 'refID="a"') + phase('10', '11'))).toEqual([]);
  });

  it.each([
    ['stand before an older one', created('a', '09') + created('b', '08'), '/Created[2]'],
    ['end before they begin', phase('11', '10'), '/PhaseTime'],
    ['point forward', created('a', '08', 'refID="b"') + created('b', '09'), '/Created[1]'],
  ])('may not %s', (_what, audits, place) => {
    expect(found(audits)).toEqual([`warning JDF_AUDIT /JDF/AuditPool${place}`]);
  });
});
