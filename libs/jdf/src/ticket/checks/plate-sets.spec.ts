import { input, node, output, problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const leaf = (name: string, key: string, value: string, inside: string) =>
  `<${name} ${key}="${value}">${inside}</${name}>`;

/** Parts by side and separation: `Front: Cyan Black, Back: Black`. */
const sides = (name: string, text: string, sheet = 'S1') =>
  leaf(
    name,
    'SheetName',
    sheet,
    text
      .split(', ')
      .map((side) => side.split(': ') as [string, string])
      .map(([side, inks]) =>
        leaf(
          name,
          'Side',
          side,
          inks
            .split(' ')
            .map((ink) => `<${name} Separation="${ink}"/>`)
            .join(''),
        ),
      )
      .join('\n'),
  );
const KEYS = 'PartIDKeys="SheetName Side Separation"';
const specs = (inks: string) =>
  `<ColorantOrder>${inks
    .split(' ')
    .map((ink) => `<SeparationSpec Name="${ink}"/>`)
    .join('')}</ColorantOrder>`;

interface Job {
  /** Inks of the whole, or of each side. */
  readonly order?: string;
  readonly plates: string;
  readonly profiles?: string;
  readonly style?: string;
  readonly part?: string;
}

function told({ order = 'Cyan Black', plates, profiles, style = 'WorkAndBack', part = '' }: Job) {
  const bySide = order.includes(':');
  const orders = bySide
    ? order
        .split(', ')
        .map((side) => side.split(': ') as [string, string])
        .map(([side, inks]) => leaf('ColorantControl', 'Side', side, specs(inks)))
        .join('')
    : specs(order);
  const resources =
    resource('ColorantControl', bySide ? 'PartIDKeys="Side"' : '', orders) +
    resource('ConventionalPrintingParams', `WorkStyle="${style}"`) +
    resource('ExposedMedia', KEYS, `<Media MediaType="Plate"/>\n${sides('ExposedMedia', plates)}`) +
    (profiles === undefined ? '' : resource('InkZoneProfile', KEYS, sides('InkZoneProfile', profiles))) +
    resource('Component', 'ComponentType="Sheet"');
  const links =
    input('ColorantControl') +
    input('ConventionalPrintingParams') +
    input('ExposedMedia', 'ProcessUsage="Plate"', part) +
    (profiles === undefined ? '' : input('InkZoneProfile')) +
    output('Component');
  const step = node('ID="n" Type="ConventionalPrinting"', '', links);
  return problemsIn(ticket('Type="ProcessGroup"', resources, '', step)).filter(
    ({ code }) => code === 'JDF_COLOUR',
  );
}

const PLATES = '/JDF/ResourcePool/ExposedMedia';
const BOTH = 'Front: Cyan Black, Back: Cyan Black';

// What each part has: JDF ColorantControl ColorantOrder; how many sets of plates: JDF WorkStyle.
describe('the plates of each side', () => {
  it.each<[string, Job]>([
    ['all of the order', { plates: BOTH }],
    [
      'those of an order for each side',
      { order: 'Front: Cyan Black, Back: Black', plates: 'Front: Cyan Black, Back: Black' },
    ],
    ['fewer on one side, where the order is one for both', { plates: 'Front: Cyan Black, Back: Black' }],
    ['those of one pass', { plates: BOTH, part: '<Part SheetName="S1" Side="Front"/>' }],
    ['one set', { style: 'WorkAndTurn', plates: 'Front: Cyan Black' }],
    ['with a profile each', { plates: BOTH, profiles: BOTH }],
  ])('may be %s', (_what, job) => {
    expect(told(job)).toEqual([]);
  });

  it('are all there, and no others', () => {
    const order = 'Front: Cyan Black, Back: Black';
    expect(told({ order, plates: 'Front: Black, Back: Cyan Black' })).toMatchObject([
      {
        severity: 'warning',
        line: 1,
        path: PLATES,
        message: 'ExposedMedia has nothing for the separation Cyan of Side="Front".',
        hint: 'Add it, or take it out of ColorantOrder.',
      },
      {
        line: 3,
        path: `${PLATES}/ExposedMedia/ExposedMedia[2]/ExposedMedia[1]`,
        message: 'ExposedMedia is for Cyan, which is not printed on Side="Back".',
        hint: 'Printed are Black.',
      },
    ]);
  });

  it('have a profile each, and none is left over', () => {
    const profiles = 'Front: Cyan Black, Back: Black Gold';
    expect(told({ order: 'Cyan Black Gold', plates: `${BOTH} Gold`, profiles })).toMatchObject([
      { message: 'InkZoneProfile has nothing for the plate SheetName="S1" Side="Back" Separation="Cyan".' },
    ]);
    expect(told({ plates: BOTH, profiles: `${BOTH} Black` })).toEqual([]);
    const one = told({ order: 'Cyan Black Gold', plates: 'Front: Cyan Black Gold, Back: Black', profiles });
    expect(one.map(({ line, message }) => `${line} ${message}`)).toEqual([
      '3 InkZoneProfile has nothing for the plate SheetName="S1" Side="Front" Separation="Gold".',
      '4 There is no plate for the InkZoneProfile SheetName="S1" Side="Back" Separation="Gold".',
    ]);
  });

  it.each([
    ['WorkAndBack', 'Front: Cyan Black', 'Front', 'Add the plates of the other side'],
    ['Perfecting', 'Back: Cyan Black', 'Back', 'Add the plates of the other side'],
    ['WorkAndTurn', BOTH, 'Front and Back', 'Leave out the plates of one side'],
  ])('are as many sets as %s prints from', (style, plates, has, hint) => {
    expect(told({ style, plates })).toMatchObject([
      {
        severity: 'warning',
        message: `Sheet S1 has plates for ${has}, but is printed ${style}.`,
        hint: `${hint}, or correct WorkStyle.`,
      },
    ]);
  });
});
