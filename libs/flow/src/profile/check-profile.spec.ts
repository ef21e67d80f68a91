import type { DeviceDefinition, Plant, PressDefinition } from '#libs/craft';
import { input, node, resource, ticket } from '../../../../test/kit/small-ticket.js';
import { parsedXml } from '../../../../test/kit/value-in.js';
import { checkProfile } from './check-profile.js';

const press = {
  kind: 'press',
  maxSheetWidthMm: 750,
  maxSheetHeightMm: 530,
  minSheetWidthMm: 300,
  minSheetHeightMm: 210,
  units: 5,
  bothSides: 'none',
  minGsm: 70,
  maxGsm: 350,
} as PressDefinition;
const devices = [
  press,
  { kind: 'folder' },
  { kind: 'stitcher' },
  { kind: 'bench', does: ['gathering by hand'] },
] as DeviceDefinition[];

/** What the plant cannot do of a ticket: each as path and message. */
function cannot(text: string): string[] {
  const doc = parsedXml(text);
  return checkProfile(doc, { devices } as Plant).map(
    ({ severity, code, line, path, message }) => `${severity} ${code} ${line} ${path} ${message}`,
  );
}

const printing = (media: string, colours: number): string => {
  const specs = Array.from({ length: colours }, (_, i) => `<SeparationSpec Name="ink${i}"/>`).join('');
  return ticket(
    'Type="ConventionalPrinting"',
    resource('Media', media) + resource('ColorantControl', '', `<ColorantOrder>${specs}</ColorantOrder>`),
    input('Media') + input('ColorantControl'),
  );
};

describe('what a plant cannot do', () => {
  it('is nothing where every node has its device', () => {
    const nodes =
      node('ID="a" Type="Folding"') +
      node('ID="b" Type="Combined" Types="Collecting Stitching Trimming"') +
      node('ID="c" Type="Gathering"') +
      node('ID="d" Type="Approval"');
    expect(cannot(ticket('Type="Product"', '', '', nodes))).toEqual([]);
  });

  it('is a process without a device, by its node', () => {
    const nodes = node('ID="a" Type="Folding"') + node('ID="b" Type="Embossing"');
    expect(cannot(ticket('Type="Product"', '', '', nodes))).toEqual([
      'warning PLANT_CANNOT 1 /JDF/JDF[2] No device of the plant runs Embossing.',
    ]);
  });

  it('is a Combined node that no single device runs, not a gray box of the same', () => {
    expect(cannot(ticket('Type="Combined" Types="Folding Stitching"'))).toEqual([
      'warning PLANT_CANNOT 1 /JDF No device of the plant runs Folding, Stitching in one.',
    ]);
    expect(cannot(ticket('Type="ProcessGroup" Types="Folding Stitching"'))).toEqual([]);
  });

  it('is a process of an XJDF', () => {
    const xjdf = (types: string) =>
      `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" Types="${types}"/>`;
    expect(cannot(xjdf('Product Folding'))).toEqual([]);
    expect(cannot(xjdf('Folding Laminating'))).toEqual([
      'warning PLANT_CANNOT 1 /XJDF No device of the plant runs Laminating.',
    ]);
  });

  // 1984.25 × 1417.32 points are 700 × 500 mm; 2976.38 points are 1050 mm.
  it('is paper and inks beyond every press, in either direction of the sheet', () => {
    expect(cannot(printing('Dimension="1984.25 1417.32" Weight="115"', 4))).toEqual([]);
    expect(cannot(printing('Dimension="1417.32 1984.25" Weight="350"', 5))).toEqual([]);
    expect(cannot(printing('Dimension="0 0"', 1))).toEqual([]);
    expect(
      cannot(printing('Dimension="2976.38 1984.25" Weight="400"', 6)).map((text) => text.slice(23)),
    ).toEqual([
      '/JDF/ResourcePool/Media No press of the plant prints paper of 400 g/m².',
      '/JDF/ResourcePool/Media No press of the plant takes a sheet of 1050 × 700 mm.',
      '/JDF/ResourcePool/ColorantControl/ColorantOrder No press of the plant prints 6 inks on a side in one pass.',
    ]);
  });
});
