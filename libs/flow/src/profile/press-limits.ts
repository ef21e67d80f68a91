import { devicesOf, type Plant, type PressDefinition } from '#libs/craft';
import {
  attributeOf,
  childElements,
  type Findings,
  linksOf,
  type Partition,
  partAttribute,
  resolveParts,
  type XmlElement,
} from '#libs/jdf';
import { mmFromPoints, roundTo } from '#libs/kernel';

// Points are rounded when a ticket is written.
const TOLERANCE_MM = 0.5;

/** Warns of paper and inks of a printing node that no press of the plant takes. Sizes in points, weights in g/m². */
export function checkPrinting(plant: Plant, node: XmlElement, findings: Findings): void {
  const presses = devicesOf(plant, 'press');
  if (presses.length === 0) return;
  for (const { name, usage, resource, parts } of linksOf(findings.doc, node)) {
    if (usage !== 'Input') continue;
    const leaves = resolveParts(resource, parts).found;
    if (name === 'Media') for (const leaf of leaves) checkPaper(presses, leaf, findings);
    if (name === 'ColorantControl') for (const leaf of leaves) checkInks(presses, leaf, findings);
  }
}

function checkPaper(presses: readonly PressDefinition[], leaf: Partition, findings: Findings): void {
  const at = leaf.chain.at(-1)!;
  if ((partAttribute(leaf, 'MediaType') ?? 'Paper') !== 'Paper') return;
  const gsm = Number(partAttribute(leaf, 'Weight'));
  if (gsm > 0 && !presses.some(({ minGsm, maxGsm }) => gsm >= minGsm && gsm <= maxGsm)) {
    findings.warning('PLANT_CANNOT', at, `No press of the plant prints paper of ${gsm} g/m².`);
  }
  if ((partAttribute(leaf, 'MediaUnit') ?? 'Sheet') !== 'Sheet') return;
  const size = (partAttribute(leaf, 'Dimension') ?? '').trim().split(/\s+/).map(Number).map(mmFromPoints);
  const [long, short] = [Math.max(...size), Math.min(...size)];
  // A size of 0 is still to be chosen.
  if (size.length !== 2 || !(short > 0) || presses.some((press) => takes(press, long, short))) return;
  const said = `${roundTo(long, 1)} × ${roundTo(short, 1)} mm`;
  findings.warning('PLANT_CANNOT', at, `No press of the plant takes a sheet of ${said}.`);
}

/** How the sheet lies is the plant's to choose: either edge may run across. */
function takes(press: PressDefinition, longMm: number, shortMm: number): boolean {
  const fits = (width: number, height: number): boolean =>
    width <= press.maxSheetWidthMm + TOLERANCE_MM &&
    height <= press.maxSheetHeightMm + TOLERANCE_MM &&
    width >= press.minSheetWidthMm - TOLERANCE_MM &&
    height >= press.minSheetHeightMm - TOLERANCE_MM;
  return fits(longMm, shortMm) || fits(shortMm, longMm);
}

function checkInks(presses: readonly PressDefinition[], leaf: Partition, findings: Findings): void {
  // The innermost order is that of the part.
  const order = leaf.chain.flatMap((el) => childElements(el, 'ColorantOrder')).at(-1);
  const inks = order === undefined ? 0 : childElements(order, 'SeparationSpec').filter(isNamed).length;
  const most = Math.max(...presses.map(inksOnSide));
  if (order === undefined || inks <= most) return;
  const message = `${inks} inks on a side are more than any press of the plant prints in one pass: ${most}.`;
  findings.warning('PLANT_CANNOT', order, message);
}

const isNamed = (spec: XmlElement): boolean => attributeOf(spec, 'Name') !== undefined;

/** Units of a press that prints both sides at once belong to a side each. */
const inksOnSide = ({ bothSides, units, unitsFront, unitsBack }: PressDefinition): number =>
  bothSides === 'onePass' ? Math.max(unitsFront, unitsBack) : units;
