import { findingsIn, node, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (outer: string, inner: string) =>
  findingsIn(
    ticket(
      `Type="Product" ${outer}`,
      '',
      '',
      node('Type="ProcessGroup"', '', '', node(`Type="ProcessGroup" ${inner}`)),
    ),
  ).filter((one) => one.includes('JDF_STATUS'));

// What must hold: JDF/@Activation.
describe('the activation of a node', () => {
  it.each([
    ['', 'Activation="Held"'],
    ['Activation="Held"', ''],
    ['Activation="Held"', 'Activation="Inactive"'],
    ['Activation="TestRunAndGo"', 'Activation="TestRun"'],
  ])('may hold back more than that around it: %s, %s', (outer, inner) => {
    expect(found(outer, inner)).toEqual([]);
  });

  it.each([
    ['Held', 'Active'],
    ['Informative', 'Held'],
    ['TestRun', 'TestRunAndGo'],
  ])('cannot let go what %s holds back: %s', (outer, inner) => {
    expect(found(`Activation="${outer}"`, `Activation="${inner}"`)).toEqual([
      'warning JDF_STATUS /JDF/JDF/JDF',
    ]);
  });
});
