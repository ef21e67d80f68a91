import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { input, output, resource, ticket } from '../../../../test/kit/small-ticket.js';
import { parsedXml } from '../../../../test/kit/value-in.js';
import { checkProfile } from './check-profile.js';

const plant = demoPlant();

/** What the demo plant cannot do of a ticket, in which each resource has a line of its own. */
function cannot(text: string): string[] {
  const doc = parsedXml(text);
  return checkProfile(doc, plant).map(
    ({ severity, code, line, path, message, hint }) =>
      `${severity} ${code} ${line} ${path} ${message} ${hint}`,
  );
}

const pt = (...mm: number[]): string => mm.map((one) => ((one * 72) / 25.4).toFixed(2)).join(' ');

/** The same job in both generations: parameters, what goes in and what comes out. */
interface Job {
  readonly types: string;
  /** Name, attributes and content of each resource that goes in. */
  readonly takes: readonly (readonly [string, string, string?])[];
  readonly makes?: string;
}

const PAPER = 'MediaType="Paper"';

function older({ types, takes, makes = '' }: Job): string {
  const resources = takes.map(([name, attributes, inside], i) =>
    resource(name, `ID="r${i}" ${attributes}`, inside),
  );
  const links = takes.map(([name], i) => input(name, `rRef="r${i}"`)).join('');
  const made = resource('Component', `ID="made" ComponentType="Block" ${makes}`);
  const type = types.includes(' ') ? `Type="Combined" Types="${types}"` : `Type="${types}"`;
  return ticket(type, `\n${[...resources, made].join('\n')}`, links + output('Component', 'rRef="made"'));
}

function newer({ types, takes, makes = '' }: Job): string {
  const set = (name: string, usage: string, attributes: string, inside = '') =>
    `<ResourceSet Name="${name}"${usage}><Resource><${name} ${attributes}>${inside}</${name}></Resource></ResourceSet>`;
  const sets = takes.map(([name, attributes, inside]) => {
    const media = /<Media ([^>]*)\/>/.exec(inside ?? '')?.[1];
    if (media === undefined) return set(name, ' Usage="Input"', attributes, inside);
    const own = set(name, ' Usage="Input"', `${attributes} MediaRef="m"`);
    return own + set('Media', '', media).replace('<Resource>', '<Resource ID="m">');
  });
  sets.push(set('Component', ' Usage="Output"', makes));
  return `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" Types="${types}">\n${sets.join('\n')}</XJDF>`;
}

const folds = (text: string) =>
  text
    .split(' ')
    .map((from) => `<Fold From="${from}" To="Up" Travel="100"/>`)
    .join('');
const folding = (params: string, piece: string, gsm: number, inside = ''): Job => ({
  types: 'Folding',
  takes: [
    ['FoldingParams', params, inside],
    ['Component', piece, `<Media ${PAPER} Weight="${gsm}"/>`],
  ],
});
const PIECE = `Dimensions="${pt(640, 900)} 0"`;

const stitching = (trim: string, makes: string): Job => ({
  types: 'Collecting Stitching Trimming',
  takes: [
    ['StitchingParams', ''],
    ['TrimmingParams', trim],
  ],
  makes,
});
const TRIM = `Width="${pt(210)}" Height="${pt(297)}"`;

const ELSE = 'Have it made elsewhere, or keep to what there is';
const FOLDERS =
  'Large folder, four plates and three knives: 200 × 250 mm to 780 × 1100 mm; Small folder, four plates and two at right angles: 100 × 140 mm to 560 × 900 mm';
const UNITS =
  'Large folder, four plates and three knives: 4 × plate, then 1 × knife, then 1 × knife, then 1 × knife; Small folder, four plates and two at right angles: 4 × plate, then 2 × plate';

describe.each([
  ['JDF', older, (name: string) => `/JDF/ResourcePool/${name}`, '/JDF'],
  [
    'XJDF',
    newer,
    (name: string, set: number) => `/XJDF/ResourceSet[${set}]/Resource/${name.replace(/\[\d+\]$/, '')}`,
    '/XJDF',
  ],
] as const)('limits of the demo plant for %s', (_kind, write, at, root) => {
  it.each<[string, Job]>([
    ['three folds at right angles', folding('', PIECE, 115, folds('Left Front Left'))],
    ['a code that is known', folding('FoldCatalog="F16-6"', PIECE, 135)],
    ['a code whose folds are not known', folding('FoldCatalog="F12-7"', PIECE, 115)],
    ['a piece that lies the other way', folding('', `Dimensions="${pt(1000, 700)} 0"`, 90, folds('Left'))],
    ['a code that is no code', folding('FoldCatalog="F3-1"', PIECE, 115)],
    ['a copy of 6 mm', stitching(TRIM, `Dimensions="${pt(210, 297, 6)}"`)],
    ['a sheet', { types: 'Cutting', takes: [['Component', `Dimensions="${pt(1400, 1100)} 0"`]] }],
    ['a block of 40 mm', { types: 'CoverApplication', takes: [], makes: `Dimensions="${pt(210, 297, 40)}"` }],
  ])('are kept by %s', (_what, job) => {
    expect(cannot(write(job))).toEqual([]);
  });

  it('are the format of what is folded', () => {
    expect(cannot(write(folding('', `Dimensions="${pt(1200, 700)} 0"`, 115, folds('Left'))))).toEqual([
      `warning PLANT_CANNOT 3 ${at('Component[1]', 2)} No folder of the plant takes a piece of 1200 × 700 mm. ${ELSE} (${FOLDERS}).`,
    ]);
  });

  it('are units for the folds, by the folds themselves or their code', () => {
    expect(cannot(write(folding('', PIECE, 80, folds('Left Front Front Left'))))).toEqual([
      `warning PLANT_CANNOT 2 ${at('FoldingParams', 1)} No folder of the plant has units for the 4 folds in this order: Left, Front, Front, Left. ${ELSE} (${UNITS}).`,
    ]);
  });

  it('are the paper for so many folds', () => {
    const paper = (gsm: number, params: string) => cannot(write(folding(params, PIECE, gsm)));
    const told = (folded: string, large: number, small: number) =>
      `warning PLANT_CANNOT 3 ${at('Component[1]', 2)} No folder of the plant folds paper of ${folded}. ${ELSE} (Large folder, four plates and three knives: ${large} g/m²; Small folder, four plates and two at right angles: ${small} g/m²).`;
    expect(paper(200, 'FoldCatalog="F16-6"')).toEqual([told('200 g/m² 3 times', 135, 170)]);
    expect(paper(250, 'FoldCatalog="F4-2"')).toEqual([told('250 g/m² once', 200, 200)]);
  });

  it('are of one device: another may keep each of them alone', () => {
    expect(cannot(write(folding('FoldCatalog="F16-6"', PIECE, 150)))).toEqual([
      `warning PLANT_CANNOT 1 ${root} No one folder of the plant does all of this: it takes a piece of 640 × 900 mm, has units for the 3 folds of F16-6 in this order: Left, Front, Left, folds paper of 150 g/m² 3 times. Make it nodes of their own, or have it made elsewhere.`,
    ]);
  });

  it('are format and thickness of what is stitched', () => {
    const small = `Width="${pt(90)}" Height="${pt(297)}"`;
    const limits = 'Stitcher, six stations and cover: 105 × 148 mm to 300 × 430 mm';
    expect(cannot(write(stitching(small, `Dimensions="${pt(90, 297, 8)}"`)))).toEqual([
      `warning PLANT_CANNOT 3 ${at('TrimmingParams', 2)} No stitcher of the plant trims to 90 × 297 mm. ${ELSE} (${limits}).`,
      `warning PLANT_CANNOT 4 ${at('Component', 3)} No stitcher of the plant stitches a copy 8 mm thick. ${ELSE} (Stitcher, six stations and cover: 6 mm at most).`,
    ]);
  });

  it('are the knife of the guillotine and the clamp of the binder', () => {
    const sheet: Job = { types: 'Cutting', takes: [['Component', `Dimensions="${pt(1400, 1200)} 0"`]] };
    expect(cannot(write(sheet))).toEqual([
      `warning PLANT_CANNOT 2 ${at('Component[1]', 1)} No guillotine of the plant cuts a sheet of 1400 × 1200 mm. ${ELSE} (Guillotine 1150: 1150 mm wide).`,
    ]);
    const block: Job = {
      types: 'CoverApplication',
      takes: [['CoverApplicationParams', '']],
      makes: `Dimensions="${pt(210, 297, 50)}"`,
    };
    expect(cannot(write(block))).toEqual([
      `warning PLANT_CANNOT 3 ${at('Component', 2)} No binder of the plant binds a block 50 mm thick. ${ELSE} (Binder, hot melt: 3 to 45 mm).`,
    ]);
  });
});

describe('limits that only one generation can state', () => {
  it('are stations for sections, the cover apart', () => {
    const collecting = (sections: number, cover: string) => {
      const parts = Array.from({ length: sections }, (_, i) => `<Component SignatureName="S${i}"/>`).join('');
      const resources =
        resource('Component', 'ID="s" ComponentType="PartialProduct" PartIDKeys="SignatureName"', parts) +
        resource('Component', 'ID="c" ComponentType="PartialProduct"') +
        resource('Component', 'ID="o" ComponentType="Block"');
      const links = input('Component', 'rRef="s"') + cover + output('Component', 'rRef="o"');
      return cannot(ticket('Type="Combined" Types="Collecting Stitching"', resources, links));
    };
    const cover = input('Component', 'rRef="c" ProcessUsage="Cover"');
    expect(collecting(6, cover)).toEqual([]);
    expect(collecting(7, cover).map((text) => text.split(' No ')[1])).toEqual([
      `stitcher of the plant collects 7 sections and a cover. ${ELSE} (Stitcher, six stations and cover: 6 stations and a cover feeder).`,
    ]);
  });

  // 160 pages on paper of 100 µm: 80 leaves.
  it('is the thickness by pages and paper', () => {
    const job = (pages: number) => {
      const media = '<Media MediaType="Paper" Thickness="100"/>';
      const made = resource('Component', `ComponentType="Block" SurfaceCount="${pages}"`, media);
      return cannot(ticket('Type="Stitching"', made, output('Component')));
    };
    expect(job(120)).toEqual([]);
    expect(job(160).map((text) => text.split(' No ')[1])).toEqual([
      `stitcher of the plant stitches a copy 8 mm thick. ${ELSE} (Stitcher, six stations and cover: 6 mm at most).`,
    ]);
  });

  it('are inks that the newer lists in an attribute, and its paper', () => {
    const inks = Array.from({ length: 12 }, (_, i) => `Ink${i}`).join(' ');
    const xjdf = newer({
      types: 'ConventionalPrinting',
      takes: [
        ['ColorantControl', `ColorantOrder="${inks}"`],
        ['Media', `${PAPER} Weight="500"`],
      ],
    });
    expect(cannot(xjdf).map((text) => text.split(' (')[0])).toEqual([
      `warning PLANT_CANNOT 3 /XJDF/ResourceSet[2]/Resource/Media No press of the plant prints paper of 500 g/m². ${ELSE}`,
      `warning PLANT_CANNOT 2 /XJDF/ResourceSet[1]/Resource/ColorantControl No press of the plant prints 12 inks on a side in one pass. ${ELSE}`,
    ]);
  });
});
