import { problemsIn, ticket } from '../../../../../test/kit/small-ticket.js';

const at = (hour: number) => `2024-05-06T${String(hour).padStart(2, '0')}:00:00Z`;
const audit = (name: string, start: number, end: number, more: string, inside = '') =>
  `<${name} TimeStamp="${at(20)}" Start="${at(start)}" End="${at(end)}" ${more}>${inside}</${name}>\n`;
const phase = (start: number, status: string, inside = '') =>
  audit('PhaseTime', start, start + 1, `Status="${status}"`, inside);
const run = (start: number, end: number, status: string) =>
  audit('ProcessRun', start, end, `EndStatus="${status}"`);
const problems = (...audits: string[]) =>
  problemsIn(ticket('Type="ProcessGroup"', '', '', `\n<AuditPool>\n${audits.join('')}</AuditPool>`));
const places = (...audits: string[]) => problems(...audits).map(({ code, path }) => `${code} ${path}`);
const device = (id: string) => `<Device DeviceID="${id}"/>`;

// What may follow: the meanings of the statuses (JDF JDF/@Status); the standard has no table of them.
describe('phases that follow one another at once', () => {
  it.each([
    [['TestRunInProgress', 'Setup', 'InProgress', 'Cleanup']],
    [['Setup', 'InProgress', 'Stopped', 'InProgress', 'Suspended', 'Setup', 'InProgress']],
    [['InProgress', 'InProgress', 'Setup', 'Cleanup', 'InProgress']],
    [['Suspended', 'TestRunInProgress', 'InProgress']],
  ])('may be %s', (statuses) => {
    const phases = statuses.map((status, i) => phase(8 + i, status));
    expect(places(...phases, run(8, 8 + statuses.length, 'Completed'))).toEqual([]);
  });

  it.each([
    ['InProgress', 'TestRunInProgress'],
    ['Cleanup', 'Suspended'],
    ['Suspended', 'Cleanup'],
    ['TestRunInProgress', 'Cleanup'],
    ['Setup', 'Spawned'],
  ])('may not be %s and %s, unless time lies in between or another device does it', (before, after) => {
    const fault = ['JDF_STATUS /JDF/AuditPool/PhaseTime[2]'];
    expect(places(phase(8, before), phase(9, after))).toEqual(fault);
    expect(places(phase(8, before), phase(10, after))).toEqual([]);
    expect(places(phase(8, before, device('a')), phase(9, after, device('b')))).toEqual([]);
    expect(places(phase(8, before, device('a')), phase(9, after, device('a')))).toEqual(fault);
  });

  it('end a run with what can follow the last of them', () => {
    expect(places(phase(8, 'Suspended'), run(8, 9, 'Aborted'))).toEqual([]);
    expect(problems(phase(8, 'Suspended'), run(8, 9, 'Completed'))).toMatchObject([
      {
        severity: 'warning',
        code: 'JDF_STATUS',
        line: 4,
        path: '/JDF/AuditPool/ProcessRun',
        message: 'ProcessRun of EndStatus="Completed" ends with a phase of "Suspended".',
        hint: "Record what came in between, or correct the Status: Cleanup, Completed can't follow Suspended.",
      },
    ]);
  });
});
