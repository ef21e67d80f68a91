import { type Printable, printableArea, sheetSizeRefusal } from '../layouts/printable.js';
import { devicesOf, type PressDefinition } from '../plant.js';
import { type PrintWay, planSpeed, printWay } from '../sheets/press-run.js';
import type { PartJob, Reason } from './job.js';

/** A press that can print the job, the way it would, and the orientations in which it takes the stock's sheet. */
export interface PressChoice {
  press: PressDefinition;
  way: PrintWay;
  areas: Printable[];
}

function inksOnPress(job: PartJob, press: PressDefinition): Reason | null {
  const there = new Set(job.plant.inks.filter((set) => set.press === press.id).flatMap((set) => set.names));
  for (const side of ['inksFront', 'inksBack'] as const) {
    const i = job.part[side].findIndex((ink) => !there.has(ink));
    if (i >= 0) {
      return {
        path: `${job.part.path}/${side}/${i}`,
        text: `${press.name} has no ${job.part[side][i]}; it prints ${[...there].join(', ')}`,
      };
    }
  }
  return null;
}

/** Sorts the presses into those that can print the job's sheets and the reasons of the others. */
export function pressChoices(job: PartJob): { choices: PressChoice[]; reasons: Reason[] } {
  const choices: PressChoice[] = [];
  const reasons: Reason[] = [];
  const { stock, path, inksFront, inksBack } = job.part;
  for (const press of devicesOf(job.plant, 'press')) {
    const ink = inksOnPress(job, press);
    if (ink !== null) {
      reasons.push(ink);
      continue;
    }
    if (stock.gsm < press.minGsm || stock.gsm > press.maxGsm || planSpeed(press, stock.gsm, 1) === null) {
      reasons.push({
        path: `${path}/stock`,
        text: `${press.name} prints paper of ${press.minGsm} to ${press.maxGsm} g/m², the stock has ${stock.gsm} g/m²`,
      });
      continue;
    }
    const way = printWay(press, inksFront, inksBack);
    if (typeof way === 'string') {
      const fuller = inksBack.length > inksFront.length ? 'inksBack' : 'inksFront';
      reasons.push({ path: `${path}/${fuller}`, text: way });
      continue;
    }
    const sizes: [number, number][] = [[stock.sheetWidthMm, stock.sheetHeightMm]];
    if (stock.sheetWidthMm !== stock.sheetHeightMm) sizes.push([stock.sheetHeightMm, stock.sheetWidthMm]);
    const refusals = sizes.map(([w, h]) => sheetSizeRefusal(press, w, h));
    const areas = sizes
      .filter((_, i) => refusals[i] === null)
      .map(([w, h]) => printableArea(press, w, h, way.turn === 'headOverTail'));
    if (areas.length === 0) {
      const tooLarge =
        stock.sheetWidthMm > press.maxSheetWidthMm || stock.sheetHeightMm > press.maxSheetHeightMm;
      reasons.push({
        path: `${path}/stock`,
        text: `${refusals[0]}${tooLarge ? '; cutting paper to press size first is not planned yet' : ''}`,
        notYet: tooLarge,
      });
      continue;
    }
    choices.push({ press, way, areas });
  }
  return { choices, reasons };
}
