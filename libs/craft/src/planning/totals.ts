import { roundTo } from '#libs/kernel';
import { type Material, type Operation, type Price, priceJob } from '../cost/price.js';
import { inkMassG } from '../ink/ink-mass.js';
import { paperKg, paperPrice } from '../paper/paper.js';
import type { PlanSheet } from '../plan.js';
import { devicesOf, type Stock } from '../plant.js';
import type { Draft } from './draft.js';
import type { Job } from './job.js';

/** The stock that a sheet is printed on. */
function stockOf(job: Job, sheet: PlanSheet): Stock {
  return sheet.stock === job.cover?.stock.id ? job.cover.stock : job.body.stock;
}

/** Grams of every ink on a sheet's run, from the plant's assumed coverage of the printed pages. */
function sheetInkG(job: Job, sheet: PlanSheet): Map<string, number> {
  const grams = new Map<string, number>();
  for (const { side, ink } of sheet.units) {
    const set = job.plant.inks.find((s) => s.press === sheet.press && s.names.includes(ink));
    const film = set?.solidGPerM2[stockOf(job, sheet).class] ?? 0;
    const cells = sheet[side].filter((c) => c.page !== 0);
    const areaMm2 = cells.reduce((sum, c) => sum + c.widthMm * c.heightMm, 0);
    const mass = inkMassG(areaMm2, job.plant.defaults.assumedCoveragePct, film, sheet.sheetsToPress);
    grams.set(ink, (grams.get(ink) ?? 0) + mass);
  }
  return grams;
}

/** Grams of every ink on one sheet's run, to a tenth. */
export function inkOfSheet(job: Job, sheet: PlanSheet): Record<string, number> {
  return Object.fromEntries([...sheetInkG(job, sheet)].map(([ink, g]) => [ink, roundTo(g, 1)]));
}

export function inkGrams(job: Job, draft: Draft): Record<string, number> {
  const sums = new Map<string, number>();
  for (const sheet of draft.sheets) {
    for (const [ink, g] of sheetInkG(job, sheet)) sums.set(ink, (sums.get(ink) ?? 0) + g);
  }
  return Object.fromEntries([...sums].map(([ink, g]) => [ink, roundTo(g, 1)]));
}

/** Price of the ink: by mass on each press, but a spot ink loses at least what a wash-up takes. */
function inkPrice(job: Job, draft: Draft): number {
  return devicesOf(job.plant, 'press').reduce((sum, press) => {
    const grams = new Map<string, number>();
    for (const sheet of draft.sheets.filter((s) => s.press === press.id)) {
      for (const [ink, g] of sheetInkG(job, sheet)) grams.set(ink, (grams.get(ink) ?? 0) + g);
    }
    return [...grams].reduce((all, [ink, g]) => {
      const set = job.plant.inks.find((s) => s.press === press.id && s.names.includes(ink));
      const least = press.unitInks.includes(ink) ? 0 : job.plant.inkRules.lostPerWashUpKg;
      return all + Math.max(g / 1000, least) * (set?.pricePerKg ?? 0);
    }, sum);
  }, 0);
}

function platePrice(job: Job, draft: Draft): number {
  return draft.sheets.reduce((sum, sheet) => {
    const press = devicesOf(job.plant, 'press').find((p) => p.id === sheet.press);
    const plate = job.plant.plates.find((p) => p.id === press?.plate);
    return sum + sheet.plates * (plate?.price ?? 0);
  }, 0);
}

export function sheetsOf(draft: Draft): number {
  return draft.sheets.reduce((sum, sheet) => sum + sheet.sheetsToPress, 0);
}

export function platesOf(draft: Draft): number {
  return draft.sheets.reduce((sum, sheet) => sum + sheet.plates, 0);
}

export function paperMassKg(job: Job, draft: Draft): number {
  return draft.sheets.reduce(
    (sum, s) => sum + paperKg(s.sheetWidthMm, s.sheetHeightMm, stockOf(job, s).gsm, s.sheetsToPress),
    0,
  );
}

/** Price of everything in a draft: each step's time at its device's hour rate, paper, plates and ink. */
export function draftPrice(job: Job, draft: Draft): Price {
  const rate = (device: string): number => job.plant.devices.find((d) => d.id === device)?.hourRate ?? 0;
  const operations = draft.steps.map(
    (s): Operation => ({ name: s.id, seconds: s.setupS + s.runS, hourRate: rate(s.device) }),
  );
  const materials: Material[] = [
    {
      name: 'paper',
      price: draft.sheets.reduce((sum, s) => sum + paperPrice(stockOf(job, s), s.sheetsToPress), 0),
    },
    { name: 'plates', price: platePrice(job, draft) },
    { name: 'ink', price: inkPrice(job, draft) },
  ];
  return priceJob(operations, materials, job.plant.costs);
}
