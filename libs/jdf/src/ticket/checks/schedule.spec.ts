import { findingsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (attributes: string, inside = '') =>
  findingsIn(ticket('Type="ProcessGroup"', resource('NodeInfo', attributes, inside))).filter((one) =>
    one.includes('JDF_SCHEDULE'),
  );
const at = (hour: string) => `2024-05-06T${hour}:00:00Z`;
const PLACE = 'warning JDF_SCHEDULE /JDF/ResourcePool/NodeInfo';

// The order of the times: JDF NodeInfo.
describe('the times of a node', () => {
  it('follow one another', () => {
    const times = `FirstStart="${at('06')}" Start="${at('07')}" End="${at('09')}" LastEnd="${at('12')}"`;
    expect(found(times)).toEqual([]);
  });

  it.each([
    ['a start before the first', `FirstStart="${at('08')}" Start="${at('07')}"`],
    ['an end after the last', `End="${at('13')}" LastEnd="${at('12')}"`],
    ['an end before the start', `Start="${at('10')}" End="${at('09')}"`],
    ['an end at the start', `Start="${at('10')}" End="2024-05-06T12:00:00+02:00"`],
  ])('may not have %s', (_what, times) => {
    expect(found(times)).toEqual([PLACE]);
  });

  it('are those of each part with what it inherits', () => {
    const part = `<NodeInfo SheetName="S1" End="${at('09')}"/><NodeInfo SheetName="S2" End="${at('11')}"/>`;
    expect(found(`PartIDKeys="SheetName" Start="${at('10')}"`, part)).toEqual([`${PLACE}/NodeInfo[1]`]);
  });
});
