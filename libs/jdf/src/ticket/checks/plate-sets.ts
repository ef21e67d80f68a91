import type { Findings } from '../../codec/index.js';
import type { PartKeys } from '../../elements/part.js';
import { type Partition, partAttribute, partitionKeysOf, partsNamed } from '../../partition/index.js';
import type { XmlElement } from '../../xml/index.js';
import { selectionsMeet } from './look-up/parts.js';
import { inputOf, leavesOf, orderOf, perSeparation, spelled } from './look-up/printing.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

/**
 * Each side of each sheet has what prints it and nothing else: plates, ink profiles and inks of the separations that
 * ColorantControl has for this part (ColorantOrder, PartIDKeys); a profile for each plate; and plates for as many sides
 * as WorkStyle has sets of.
 */
export const plateSets: TicketCheck = {
  number: 20,
  name: 'plates of each side',
  run({ nodes }, findings) {
    for (const node of nodes) {
      if (!node.processes.includes('ConventionalPrinting')) continue;
      const control = inputOf(node, 'ColorantControl');
      for (const link of perSeparation(node)) {
        if (link.resource === undefined || !isDivided(link.resource, 'Separation')) continue;
        const leaves = leavesOf(link).filter(({ keys }) => keys.Separation !== undefined);
        if (control !== undefined) checkOrder(control, link, link.resource, leaves, findings);
        if (link.name !== 'ExposedMedia') continue;
        checkProfiles(node, leaves, findings);
        checkSides(node, link.resource, leaves, findings);
      }
    }
  },
};

const isDivided = (resource: XmlElement, key: string): boolean => partitionKeysOf(resource).includes(key);

/**
 * Only where the control is divided: else a separation may be on one side and is told if it is nowhere. Compared by the
 * keys that both are divided by, each part looked up: there may be thousands of sheets.
 */
function checkOrder(
  control: TicketLink,
  { name, element }: TicketLink,
  resource: XmlElement,
  leaves: readonly Partition[],
  findings: Findings,
): void {
  const wanted = partsNamed(element);
  const dividing = partitionKeysOf(control.resource!);
  const common = dividing.filter((key) => isDivided(resource, key));
  const anywhere = new Set(leaves.map(separationOf));
  const parts = separationsBy(leaves, common);
  for (const { keys, chain } of leavesOf(control)) {
    const printed = new Set(orderOf(chain));
    const own = parts.get(partBy(keys, common)) ?? new Map<string, Partition>();
    // A part that is not divided as far says nothing of each side.
    if (printed.size === 0 || dividing.length === 0 || dividing.some((key) => keys[key] === undefined))
      continue;
    if (!selectionsMeet([keys], wanted)) continue;
    for (const separation of printed) {
      // One that is nowhere at all is told once, and not for each side.
      if (!anywhere.has(separation) || own.has(separation)) continue;
      const message = `${name} has nothing for the separation ${separation} of ${spelled(keys)}.`;
      findings.warning('JDF_COLOUR', resource, message, 'Add it, or take it out of ColorantOrder.');
    }
    // What is not divided by side or sheet is there for all of them.
    if (common.length < dividing.length) continue;
    for (const [separation, { chain: to }] of own) {
      if (printed.has(separation)) continue;
      const message = `${name} is for ${separation}, which is not printed on ${spelled(keys)}.`;
      findings.warning('JDF_COLOUR', to.at(-1)!, message, `Printed are ${[...printed].join(', ')}.`);
    }
  }
}

const separationOf = ({ keys }: Partition): string => keys.Separation!.trim();

const partBy = (keys: PartKeys, names: readonly string[]): string =>
  names.map((key) => `${key}="${keys[key]}"`).join(' ');

/** The separations of each part, parts told apart by some keys. */
function separationsBy(
  leaves: readonly Partition[],
  names: readonly string[],
): ReadonlyMap<string, Map<string, Partition>> {
  const parts = new Map<string, Map<string, Partition>>();
  for (const leaf of leaves) {
    const part = partBy(leaf.keys, names);
    const there = parts.get(part) ?? new Map<string, Partition>();
    parts.set(part, there.set(separationOf(leaf), leaf));
  }
  return parts;
}

/** Compared by the keys that plates and profiles are both divided by. */
function checkProfiles(node: TicketNode, plates: readonly Partition[], findings: Findings): void {
  const link = inputOf(node, 'InkZoneProfile');
  const [plate] = plates;
  if (link?.resource === undefined || plate === undefined || !isDivided(link.resource, 'Separation')) return;
  const profiles = leavesOf(link).filter(({ keys }) => keys.Separation !== undefined);
  const common = partitionKeysOf(link.resource).filter((key) => isDivided(plate.chain[0]!, key));
  const [ofPlates, ofProfiles] = [partsBy(plates, common), partsBy(profiles, common)];
  if (ofProfiles.size === 0) return;
  for (const [name] of ofPlates) {
    if (ofProfiles.has(name)) continue;
    const message = `InkZoneProfile has nothing for the plate ${name}.`;
    findings.warning('JDF_COLOUR', link.resource, message, 'Add its profile, or leave out the plate.');
  }
  for (const [name, { chain }] of ofProfiles) {
    if (ofPlates.has(name)) continue;
    const message = `There is no plate for the InkZoneProfile ${name}.`;
    findings.warning('JDF_COLOUR', chain.at(-1)!, message, 'Add the plate, or leave out the profile.');
  }
}

function partsBy(leaves: readonly Partition[], names: readonly string[]): ReadonlyMap<string, Partition> {
  return new Map(leaves.map((leaf) => [partBy(leaf.keys, names), leaf]));
}

/** How many sides of a sheet a work style has plates for (JDF WorkStyle; two sides by one set are plates of one side). */
const SIDES: Readonly<Record<string, number>> = {
  Simplex: 1,
  Perfecting: 2,
  WorkAndBack: 2,
  WorkAndTurn: 1,
  WorkAndTumble: 1,
  WorkAndTwist: 1,
};

function checkSides(
  node: TicketNode,
  resource: XmlElement,
  plates: readonly Partition[],
  findings: Findings,
): void {
  const params = inputOf(node, 'ConventionalPrintingParams');
  const styles = params === undefined ? [] : leavesOf(params).map((leaf) => partAttribute(leaf, 'WorkStyle'));
  const [style] = styles;
  const wanted = new Set(styles).size === 1 && style !== undefined ? SIDES[style.trim()] : undefined;
  // A node that prints one pass names the side of its plates.
  const link = inputOf(node, 'ExposedMedia');
  if (wanted === undefined || !isDivided(resource, 'Side')) return;
  const isPass = link !== undefined && partsNamed(link.element).some(({ Side }) => Side !== undefined);
  if (isPass && wanted > 1) return;
  for (const [sheet, sides] of sidesBySheet(plates)) {
    if (sides.size === wanted) continue;
    const message = `${sheet} has plates for ${[...sides.keys()].join(' and ')}, but is printed ${style}.`;
    const hint = wanted > 1 ? 'Add the plates of the other side' : 'Leave out the plates of one side';
    const at = [...sides.values()].at(-1)!;
    findings.warning('JDF_COLOUR', at.chain.at(-2) ?? resource, message, `${hint}, or correct WorkStyle.`);
  }
}

function sidesBySheet(plates: readonly Partition[]): ReadonlyMap<string, Map<string, Partition>> {
  const sheets = new Map<string, Map<string, Partition>>();
  for (const plate of plates) {
    const { SignatureName, SheetName, Side } = plate.keys;
    if (Side === undefined) continue;
    const name = [SignatureName, SheetName].filter((one) => one !== undefined).join(' ');
    const key = name === '' ? 'The sheet' : `Sheet ${name}`;
    const sides = sheets.get(key) ?? new Map<string, Partition>();
    sheets.set(key, sides.set(Side.trim(), plate));
  }
  return sheets;
}
