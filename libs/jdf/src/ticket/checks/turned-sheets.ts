import type { Findings, Rectangle } from '../../codec/index.js';
import { effectivePart, type Partition, partitionLeaves } from '../../partition/index.js';
import { attributeOf, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { type Place, placesOf } from './look-up/places.js';
import { paperOf } from './look-up/sizes.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * What lies on a sheet that is printed on both sides from one set of plates lies symmetrically (StrippingParams WorkStyle
 * WorkAndTurn about the vertical axis, WorkAndTumble about the horizontal one): turned, each place comes to lie on one.
 */
export const turnedSheets: TicketCheck = {
  number: 18,
  name: 'sheets that are turned',
  run({ doc, nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) {
        if (resource.local !== 'StrippingParams') continue;
        for (const leaves of bySheet(resource)) checkSheet(doc, leaves, findings);
      }
    }
  },
};

const TURNS: ReadonlyMap<string, (box: Rectangle) => Rectangle> = new Map([
  ['WorkAndTurn', ({ llx, urx, ...ys }: Rectangle) => ({ llx: 1 - urx, urx: 1 - llx, ...ys })],
  ['WorkAndTumble', ({ lly, ury, ...xs }: Rectangle) => ({ lly: 1 - ury, ury: 1 - lly, ...xs })],
]);

/** The parts of each sheet: the signatures on it have parts of their own. */
function bySheet(resource: XmlElement): Iterable<Partition[]> {
  const sheets = new Map<string, Partition[]>();
  for (const leaf of partitionLeaves(resource)) {
    const key = JSON.stringify([leaf.keys.SignatureName, leaf.keys.SheetName]);
    const there = sheets.get(key);
    if (there === undefined) sheets.set(key, [leaf]);
    else there.push(leaf);
  }
  return sheets.values();
}

function checkSheet(doc: XmlDocument, leaves: readonly Partition[], findings: Findings): void {
  const places: Place[] = [];
  const styles = new Set<string>();
  for (const leaf of leaves) {
    const part = effectivePart(leaf);
    styles.add(attributeOf(part, 'WorkStyle')?.trim() ?? '');
    const own = placesOf(part, paperOf(doc, leaf.chain));
    if (own === undefined) return;
    places.push(...own);
  }
  const [style = ''] = styles;
  const turn = styles.size === 1 ? TURNS.get(style) : undefined;
  if (turn === undefined) return;
  const taken = new Set(places.map(({ share }) => keyOf(cornersOf(share))));
  for (const { position, share } of places) {
    const turned = turn(share);
    if (position === undefined || isTaken(taken, turned)) continue;
    const { llx, lly, urx, ury } = turned;
    const box = [llx, lly, urx, ury].map((side) => Math.round(side * 10_000) / 10_000).join(' ');
    const message = `${style} prints this place on both sides, but nothing lies where it comes to lie.`;
    const hint = `Put something at RelativeBox="${box}", or correct WorkStyle.`;
    findings.warning('JDF_GEOMETRY', position, message, hint);
  }
}

// Of the sheet: 2 mm of a metre. Shares are written with few digits.
const SLACK = 0.002;

/** The four sides in steps of that. */
const cornersOf = ({ llx, lly, urx, ury }: Rectangle): number[] =>
  [llx, lly, urx, ury].map((side) => Math.round(side / SLACK));

const keyOf = (corners: readonly number[]): string => corners.join(' ');

/** Whether there is such a box, each side within a step: looked up, since a sheet may have thousands. */
function isTaken(taken: ReadonlySet<string>, box: Rectangle): boolean {
  let near: number[][] = [[]];
  for (const side of cornersOf(box)) {
    near = near.flatMap((sides) => [0, -1, 1].map((step) => [...sides, side + step]));
  }
  return near.some((sides) => taken.has(keyOf(sides)));
}
