import { devicesOf, type Plan, type PlanSheet, type PlanStep, type Plant, type PlanUnit } from '#libs/craft';
import { roundTo } from '#libs/kernel';
import { passOf, platesOf, sheetsOf } from '../build/lookup.js';
import { distinct } from '../build/values.js';

/** What a step uses up of one stock item, as planned. */
export interface UseItem {
  readonly stepId: string;
  /** Stock id, plate type id, or `INKSET/INK`. */
  readonly item: string;
  readonly unit: 'sheets' | 'plates' | 'kg';
  readonly planned: number;
}

/**
 * What each step of a plan uses up: paper with the first pass of each sheet, plates where they are imaged, ink with each
 * printing pass: that of each sheet, shared among its passes by the sides that carry it.
 */
export function useItems(plan: Plan, plant: Plant): readonly UseItem[] {
  return plan.steps.flatMap((step) => [
    ...(step.types.includes('ImageSetting') ? platesUsed(plan, plant, step) : []),
    ...(isPrinting(step) ? [...paperUsed(plan, step), ...inkUsed(plan, plant, step)] : []),
  ]);
}

const isPrinting = (step: PlanStep): boolean => step.types.includes('ConventionalPrinting');

function platesUsed(plan: Plan, plant: Plant, step: PlanStep): readonly UseItem[] {
  const presses = devicesOf(plant, 'press');
  const plates = platesOf(plan, step).map((plate) => {
    const press = plan.sheets.find((sheet) => sheet.name === plate.sheet)?.press;
    return presses.find((device) => device.id === press)?.plate ?? `plate-of-${press}`;
  });
  return distinct(plates).map((item) => ({
    stepId: step.id,
    item,
    unit: 'plates',
    planned: plates.filter((plate) => plate === item).length,
  }));
}

function paperUsed(plan: Plan, step: PlanStep): readonly UseItem[] {
  if (passOf(plan, step) > 1) return [];
  const byStock = new Map<string, number>();
  for (const sheet of sheetsOf(plan, step)) {
    byStock.set(sheet.stock, (byStock.get(sheet.stock) ?? 0) + sheet.sheetsToPress);
  }
  return [...byStock].map(([item, planned]) => ({ stepId: step.id, item, unit: 'sheets', planned }));
}

function inkUsed(plan: Plan, plant: Plant, step: PlanStep): readonly UseItem[] {
  const sheets = sheetsOf(plan, step);
  const inks = distinct(sheets.flatMap((sheet) => unitsOf(sheet, step).map(({ ink }) => ink)));
  return inks.flatMap((ink): UseItem[] => {
    const grams = sheets.reduce((sum, sheet) => {
      const share = sidesWith(unitsOf(sheet, step), ink) / sidesWith(sheet.units, ink);
      return sum + gramsOn(plan, sheet, ink) * share;
    }, 0);
    if (grams === 0) return [];
    const item = `${inkSetOf(plan, plant, step, ink)}/${ink}`;
    return [{ stepId: step.id, item, unit: 'kg', planned: roundTo(grams / 1000, 6) }];
  });
}

/** The units that print in this step: all of the sheet's, or those of its side where each side is a pass. */
function unitsOf(sheet: PlanSheet, step: PlanStep): readonly PlanUnit[] {
  return sheet.units.filter((unit) => step.side === undefined || unit.side === step.side);
}

const sidesWith = (units: readonly PlanUnit[], ink: string): number =>
  distinct(units.filter((unit) => unit.ink === ink).map(({ side }) => side)).length;

/** Ink on a sheet's whole run, g. Plans of earlier versions have it of the whole job only: shared out by impressions. */
function gramsOn(plan: Plan, sheet: PlanSheet, ink: string): number {
  if (sheet.inkG !== undefined) return sheet.inkG[ink] ?? 0;
  const carrying = (one: PlanSheet): number => one.sheetsToPress * sidesWith(one.units, ink);
  const all = plan.sheets.reduce((sum, one) => sum + carrying(one), 0);
  return all === 0 ? 0 : ((plan.totals.inkG[ink] ?? 0) * carrying(sheet)) / all;
}

function inkSetOf(plan: Plan, plant: Plant, step: PlanStep, ink: string): string {
  const press = sheetsOf(plan, step)[0]?.press;
  const sets = plant.inks.filter((set) => set.names.includes(ink));
  return (sets.find((set) => set.press === press) ?? sets[0])?.id ?? `inks-of-${press}`;
}
