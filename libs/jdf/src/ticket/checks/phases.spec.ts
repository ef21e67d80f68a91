import { findingsIn, ticket } from '../../../../../test/kit/small-ticket.js';

const at = (hour: number) => `2024-05-06T${String(hour).padStart(2, '0')}:00:00Z`;
const audit = (name: string, more: string, inside = '') =>
  `<${name} TimeStamp="${at(20)}" ${more}>${inside}</${name}>`;
const phase = (start: number, end: number, inside = '', more = '') =>
  audit('PhaseTime', `Start="${at(start)}" End="${at(end)}" Status="InProgress" ${more}`, inside);
const run = (start: number, end: number, status = 'Completed', inside = '') =>
  audit('ProcessRun', `Start="${at(start)}" End="${at(end)}" EndStatus="${status}"`, inside);
const found = (...audits: string[]) =>
  findingsIn(ticket('Type="ProcessGroup"', '', '', `<AuditPool>${audits.join('')}</AuditPool>`)).filter(
    (one) => one.includes('JDF_AUDIT') || one.includes('JDF_STATUS'),
  );
const device = (id: string) => `<Device DeviceID="${id}"/>`;
const part = (sheet: string) => `<Part SheetName="${sheet}"/>`;

// What must hold: JDF PhaseTime, ProcessRun, JDF/@Status.
describe('phases of work', () => {
  it('follow one another, on several devices and parts side by side', () => {
    expect(found(phase(8, 9), phase(9, 10), run(8, 10))).toEqual([]);
    expect(found(phase(8, 10, device('a')), phase(9, 11, device('b')))).toEqual([]);
    expect(found(phase(8, 10, part('a')), phase(9, 11, part('b')))).toEqual([]);
    expect(found(phase(8, 9), run(8, 9, 'Stopped'), phase(10, 11), run(10, 11))).toEqual([]);
  });

  it('do not overlap, unless one corrects the other', () => {
    expect(found(phase(8, 10, device('a')), phase(9, 11, device('a')))).toEqual([
      'warning JDF_AUDIT /JDF/AuditPool/PhaseTime[2]',
    ]);
    expect(found(phase(8, 10, '', 'ID="p"'), phase(9, 11, '', 'refID="p"'))).toEqual([]);
  });

  it.each([
    ['begin', phase(7, 9)],
    ['end', phase(9, 12)],
  ])('do not %s outside the run that they are of', (_what, worked) => {
    expect(found(worked, run(8, 11))).toEqual(['warning JDF_AUDIT /JDF/AuditPool/ProcessRun']);
  });

  it('have a run of their own part before that of the whole', () => {
    expect(found(phase(8, 9, part('a')), phase(9, 10), run(8, 9, 'Ready', part('a')), run(9, 10))).toEqual(
      [],
    );
    expect(found(phase(8, 9, part('a')), run(9, 10), run(8, 8, 'Ready', part('b')))).toEqual([]);
  });

  it('do not begin after the end', () => {
    const after = ['warning JDF_STATUS /JDF/AuditPool/PhaseTime[2]'];
    expect(found(phase(8, 9), run(8, 9), phase(10, 11))).toEqual(after);
    expect(found(phase(8, 9), run(8, 9, 'Aborted'), phase(10, 11))).toEqual(after);
  });
});
