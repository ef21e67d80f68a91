import { devicesOf, type Plant, type PressDefinition } from '#libs/craft';
import { attributeOf, childElements, type Findings, type XmlElement } from '#libs/jdf';
import { type Demand, tellDemands } from './limits.js';
import { inMm, lengthMm, numbersOf, TOLERANCE_MM, type Work } from './work.js';

const PRINTING = 'ConventionalPrinting';

type PressDemand = Demand<PressDefinition>;

/** Warns of paper and inks of a printing node that no press of the plant takes. Sizes in points, weights in g/m². */
export function checkPrinting(plant: Plant, work: Work, findings: Findings): void {
  const demands = [
    ...work.taken(PRINTING, 'Media').flatMap(({ at, el }) => paperDemands(at, el)),
    ...work.taken(PRINTING, 'ColorantControl').flatMap(({ at, el }) => inkDemands(at, el)),
  ];
  tellDemands(devicesOf(plant, 'press'), work.node, demands, findings);
}

function paperDemands(at: XmlElement, media: XmlElement): PressDemand[] {
  if ((attributeOf(media, 'MediaType') ?? 'Paper') !== 'Paper') return [];
  const demands: PressDemand[] = [];
  const [gsm = 0] = numbersOf(media, 'Weight');
  if (gsm > 0) {
    const can = ({ minGsm, maxGsm }: PressDefinition) => gsm >= minGsm && gsm <= maxGsm;
    const limit = ({ minGsm, maxGsm }: PressDefinition) => `${minGsm} to ${maxGsm} g/m²`;
    demands.push({ at, what: `prints paper of ${gsm} g/m²`, can, limit });
  }
  const [x, y] = [lengthMm(media, 'Dimension'), lengthMm(media, 'Dimension', 1)];
  // A size of 0 is still to be chosen.
  if ((attributeOf(media, 'MediaUnit') ?? 'Sheet') !== 'Sheet' || x === 0 || y === 0) return demands;
  const [long, short] = [Math.max(x, y), Math.min(x, y)];
  const what = `takes a sheet of ${inMm(long, short)}`;
  const can = (press: PressDefinition) => takes(press, long, short);
  return [...demands, { at, what, can, limit: formatOf }];
}

const formatOf = (press: PressDefinition): string =>
  `${inMm(press.minSheetWidthMm, press.minSheetHeightMm)} to ${inMm(press.maxSheetWidthMm, press.maxSheetHeightMm)}`;

/** How the sheet lies is the plant's to choose: either edge may run across. */
function takes(press: PressDefinition, longMm: number, shortMm: number): boolean {
  const fits = (width: number, height: number): boolean =>
    width <= press.maxSheetWidthMm + TOLERANCE_MM &&
    height <= press.maxSheetHeightMm + TOLERANCE_MM &&
    width >= press.minSheetWidthMm - TOLERANCE_MM &&
    height >= press.minSheetHeightMm - TOLERANCE_MM;
  return fits(longMm, shortMm) || fits(shortMm, longMm);
}

/** The newer generation lists the names in an attribute. */
function inkDemands(at: XmlElement, control: XmlElement): PressDemand[] {
  const [order] = childElements(control, 'ColorantOrder');
  const listed = (attributeOf(control, 'ColorantOrder') ?? '').split(/\s+/).filter(Boolean);
  const inks =
    order === undefined ? listed.length : childElements(order, 'SeparationSpec').filter(isNamed).length;
  if (inks === 0) return [];
  const what = `prints ${inks} inks on a side in one pass`;
  const can = (press: PressDefinition) => inks <= inksOnSide(press);
  return [{ at: order ?? at, what, can, limit: (press) => `${inksOnSide(press)} inks` }];
}

const isNamed = (spec: XmlElement): boolean => attributeOf(spec, 'Name') !== undefined;

/** Units of a press that prints both sides at once belong to a side each. */
const inksOnSide = ({ bothSides, units, unitsFront, unitsBack }: PressDefinition): number =>
  bothSides === 'onePass' ? Math.max(unitsFront, unitsBack) : units;
