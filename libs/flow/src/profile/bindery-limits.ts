import {
  type BinderDefinition,
  devicesOf,
  type GuillotineDefinition,
  type Plant,
  type StitcherDefinition,
  saddleThicknessMm,
} from '#libs/craft';
import { type Findings, type XmlElement } from '#libs/jdf';
import { type Demand, tellDemands } from './limits.js';
import {
  type Given,
  inMm,
  lengthMm,
  numbersOf,
  THICKNESS_TOLERANCE_MM,
  TOLERANCE_MM,
  type Work,
} from './work.js';

/**
 * Warns of what no stitcher of the plant can make: trimmed format (TrimmingParams, in one node with the stitching),
 * thickness of the copy (Component Dimensions, or SurfaceCount of the Media it is made of) and number of sections.
 */
export function checkStitching(plant: Plant, work: Work, findings: Findings): void {
  const demands: Demand<StitcherDefinition>[] = [
    ...work.taken('Trimming', 'TrimmingParams').flatMap(trimDemands),
    ...work.made('Stitching', 'Component').flatMap((copy) => {
      const mm = thicknessOf(work, copy);
      const can = ({ maxThicknessMm }: StitcherDefinition) => mm <= maxThicknessMm + THICKNESS_TOLERANCE_MM;
      const limit = ({ maxThicknessMm }: StitcherDefinition) => `${inMm(maxThicknessMm)} at most`;
      return mm > 0 ? [{ at: copy.at, what: `stitches a copy ${inMm(mm)} thick`, can, limit }] : [];
    }),
    ...sectionDemands(work),
  ];
  tellDemands(devicesOf(plant, 'stitcher'), work.node, demands, findings);
}

function trimDemands({ at, el }: Given): Demand<StitcherDefinition>[] {
  const [w, h] = [lengthMm(el, 'Width'), lengthMm(el, 'Height')];
  if (w === 0 || h === 0) return [];
  const can = (one: StitcherDefinition) =>
    w <= one.maxTrimWidthMm + TOLERANCE_MM &&
    h <= one.maxTrimHeightMm + TOLERANCE_MM &&
    w >= one.minTrimWidthMm - TOLERANCE_MM &&
    h >= one.minTrimHeightMm - TOLERANCE_MM;
  const limit = (one: StitcherDefinition) =>
    `${inMm(one.minTrimWidthMm, one.minTrimHeightMm)} to ${inMm(one.maxTrimWidthMm, one.maxTrimHeightMm)}`;
  return [{ at, what: `trims to ${inMm(w, h)}`, can, limit }];
}

/** Stated, or from the pages and the paper; 0 where neither is known. */
function thicknessOf(work: Work, copy: Given): number {
  const stated = lengthMm(copy.el, 'Dimensions', 2);
  const [pages = 0] = numbersOf(copy.el, 'SurfaceCount');
  const [micrometres = 0] = work.mediaOf(copy).flatMap((media) => numbersOf(media, 'Thickness'));
  return stated > 0 ? stated : saddleThicknessMm(pages, micrometres);
}

/** A cover has a feeder of its own where there is one. */
function sectionDemands(work: Work): Demand<StitcherDefinition>[] {
  if (!work.processes.includes('Collecting')) return [];
  const taken = work.taken('Collecting', 'Component');
  const [first] = taken;
  if (first === undefined) return [];
  const count = (those: readonly Given[]) => new Set(those.map(sectionOf)).size;
  const covers = count(taken.filter(({ role }) => role === 'Cover'));
  const sections = count(taken.filter(({ role }) => role !== 'Cover'));
  const what = `collects ${sections} sections${covers > 0 ? ' and a cover' : ''}`;
  const can = ({ stations, coverFeeder }: StitcherDefinition) =>
    sections + (coverFeeder ? 0 : covers) <= stations;
  const limit = ({ stations, coverFeeder }: StitcherDefinition) =>
    `${stations} stations${coverFeeder ? ' and a cover feeder' : ''}`;
  return [{ at: first.at, what, can, limit }];
}

const SECTION = [
  'SignatureName',
  'SheetName',
  'BinderySignatureName',
  'BinderySignatureID',
  'BlockName',
  'RibbonName',
];

/** What sets a section apart: its resource, and the keys that name sheets and what is cut from them. */
const sectionOf = ({ el, keys }: Given): string =>
  JSON.stringify([idOf(el), ...SECTION.map((key) => keys[key])]);

const idOf = ({ attributes }: XmlElement): string | undefined =>
  attributes.find(({ local }) => local === 'ID')?.value;

/** Warns of a pile that no guillotine of the plant takes: a cut goes across the shorter side at least. */
export function checkCutting(plant: Plant, work: Work, findings: Findings): void {
  const pieces = [
    ...work
      .taken('Cutting', 'Component')
      .map((one) => ({ at: one.at, sides: sidesOf(one.el, 'Dimensions') })),
    ...work.taken('Cutting', 'Media').map((one) => ({ at: one.at, sides: sidesOf(one.el, 'Dimension') })),
  ];
  const demands = pieces.flatMap(({ at, sides }): Demand<GuillotineDefinition>[] => {
    const short = Math.min(...sides);
    const can = ({ cutWidthMm }: GuillotineDefinition) => short <= cutWidthMm + TOLERANCE_MM;
    const limit = ({ cutWidthMm }: GuillotineDefinition) => `${inMm(cutWidthMm)} wide`;
    return short > 0 ? [{ at, what: `cuts a sheet of ${inMm(...sides)}`, can, limit }] : [];
  });
  tellDemands(devicesOf(plant, 'guillotine'), work.node, demands, findings);
}

const sidesOf = (el: XmlElement, name: string): [number, number] => [
  lengthMm(el, name),
  lengthMm(el, name, 1),
];

/** Warns of a book block that no binder of the plant takes, by the third of Component Dimensions of what it makes. */
export function checkBinding(plant: Plant, work: Work, findings: Findings): void {
  const demands = work.made('CoverApplication', 'Component').flatMap((book): Demand<BinderDefinition>[] => {
    const mm = lengthMm(book.el, 'Dimensions', 2);
    const can = (one: BinderDefinition) =>
      mm >= one.minBlockMm - THICKNESS_TOLERANCE_MM && mm <= one.maxBlockMm + THICKNESS_TOLERANCE_MM;
    const limit = (one: BinderDefinition) => `${one.minBlockMm} to ${inMm(one.maxBlockMm)}`;
    return mm > 0 ? [{ at: book.at, what: `binds a block ${inMm(mm)} thick`, can, limit }] : [];
  });
  tellDemands(devicesOf(plant, 'binder'), work.node, demands, findings);
}
