import { devicesOf, type Plan, type PlanStep, type Plant } from '#libs/craft';
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
 * printing pass. The ink of the job (`totals.inkG`) is shared among the passes by the impressions that carry it.
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
  const inks = distinct(platesOf(plan, step).map((plate) => plate.ink));
  return inks.flatMap((ink): UseItem[] => {
    const share = carrying(plan, step, ink);
    const all = plan.steps.filter(isPrinting).reduce((sum, other) => sum + carrying(plan, other, ink), 0);
    const grams = plan.totals.inkG[ink];
    if (grams === undefined || all === 0) return [];
    const item = `${inkSetOf(plan, plant, step, ink)}/${ink}`;
    return [{ stepId: step.id, item, unit: 'kg', planned: roundTo((grams * share) / all / 1000, 6) }];
  });
}

/** Impressions of a pass that carry an ink: its sheets, for each side on which the ink has plates. */
function carrying(plan: Plan, step: PlanStep, ink: string): number {
  return sheetsOf(plan, step).reduce((sum, sheet) => {
    const plates = platesOf(plan, step).filter((plate) => plate.sheet === sheet.name && plate.ink === ink);
    return sum + sheet.sheetsToPress * distinct(plates.map((plate) => plate.side)).length;
  }, 0);
}

function inkSetOf(plan: Plan, plant: Plant, step: PlanStep, ink: string): string {
  const press = sheetsOf(plan, step)[0]?.press;
  const sets = plant.inks.filter((set) => set.names.includes(ink));
  return (sets.find((set) => set.press === press) ?? sets[0])?.id ?? `inks-of-${press}`;
}
