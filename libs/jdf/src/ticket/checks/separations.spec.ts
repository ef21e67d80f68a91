import { findingsIn, input, node, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const specs = (names: readonly string[]) => names.map((name) => `<SeparationSpec Name="${name}"/>`).join('');
const CONTROL = 'ColorantControl';
const step = node(
  'ID="n" Type="ConventionalPrinting"',
  '',
  input(CONTROL) +
    input('ConventionalPrintingParams') +
    input('ExposedMedia', 'ProcessUsage="Plate"') +
    output('Component'),
);

function found(order: readonly string[], colours: readonly string[], plates: readonly string[]): string[] {
  const pool = colours.map((name) => `<Color Name="${name}"/>`).join('');
  const media = plates.map((name) => `<ExposedMedia Separation="${name}"/>`).join('');
  const resources =
    resource('ColorPool', '', pool) +
    resource(CONTROL, '', `<ColorantOrder>${specs(order)}</ColorantOrder><ColorPoolRef rRef="colorpool"/>`) +
    resource('ConventionalPrintingParams') +
    resource('ExposedMedia', 'PartIDKeys="Separation"', `<Media MediaType="Plate"/>${media}`) +
    resource('Component', 'ComponentType="Sheet"');
  return findingsIn(ticket('Type="ProcessGroup"', resources, '', step)).filter((one) =>
    one.includes('COLOUR'),
  );
}

describe('separations', () => {
  it('agree', () => {
    expect(found(['Cyan', 'Black'], ['Cyan', 'Black', 'Gold'], ['Cyan', 'Black'])).toEqual([]);
  });

  it('have a colour', () => {
    expect(found(['Cyan', 'Gold'], ['Cyan'], ['Cyan', 'Gold'])).toEqual([
      'warning JDF_COLOUR /JDF/ResourcePool/ColorantControl',
    ]);
  });

  it('have a plate, and plates are of no others', () => {
    expect(found(['Cyan', 'Gold'], ['Cyan', 'Gold'], ['Cyan'])).toEqual([
      'warning JDF_COLOUR /JDF/ResourcePool/ExposedMedia',
    ]);
    expect(found(['Cyan'], ['Cyan'], ['Cyan', 'Gold'])).toEqual([
      'warning JDF_COLOUR /JDF/ResourcePool/ExposedMedia/ExposedMedia[2]',
    ]);
  });
});
