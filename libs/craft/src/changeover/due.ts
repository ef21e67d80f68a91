import type { PlanDifference, PlanUnit } from '../plan.js';
import type { ChangeCondition, PressDefinition, PressState, SetupTask, Stock } from '../plant.js';

/** What comes onto the press next. */
export interface NextOnPress {
  jobId: string;
  stock: Stock;
  sheetWidthMm: number;
  sheetHeightMm: number;
  units: PlanUnit[];
  plates: string[];
  washesDark?: boolean;
}

/** Inks in units that keep none of their own, e.g. the fifth unit of a press with four process units. */
function extraInks(press: PressDefinition, inks: readonly { unit: number; ink: string }[]) {
  return inks.filter((u) => (press.unitInks[u.unit - 1] ?? null) === null);
}

function extraInkDiffers(press: PressDefinition, before: PressState | null, next: NextOnPress): boolean {
  const held = extraInks(press, before?.unitInks ?? []);
  return extraInks(press, next.units).some((u) => !held.some((h) => h.unit === u.unit && h.ink === u.ink));
}

function extraInkToWash(press: PressDefinition, before: PressState | null, next: NextOnPress): boolean {
  const held = extraInks(press, before?.unitInks ?? []);
  return extraInks(press, next.units).some((u) => held.some((h) => h.unit === u.unit && h.ink !== u.ink));
}

/**
 * The conditions that hold for this change. From a clean press (`before` null) everything differs, but nothing has to
 * be washed out of a unit that held no ink.
 */
export function conditions(
  press: PressDefinition,
  before: PressState | null,
  next: NextOnPress,
): ReadonlySet<ChangeCondition> {
  const sizeDiffers =
    before === null ||
    before.sheetWidthMm !== next.sheetWidthMm ||
    before.sheetHeightMm !== next.sheetHeightMm;
  const rows: [ChangeCondition, boolean][] = [
    ['everyChange', true],
    ['platesDiffer', before === null || next.plates.some((p) => !before.plates.includes(p))],
    ['sizeOrCaliperDiffers', sizeDiffers || before.stockCaliperUm !== next.stock.caliperUm],
    ['stockDiffers', before === null || before.stock !== next.stock.id],
    ['stockClassDiffers', before === null || before.stockClass !== next.stock.class],
    [
      'largerSheet',
      before === null || before.sheetWidthMm < next.sheetWidthMm || before.sheetHeightMm < next.sheetHeightMm,
    ],
    ['extraInkDiffers', extraInkDiffers(press, before, next)],
    ['extraInkToWash', extraInkToWash(press, before, next)],
    ['everyThirdChange', before === null || before.changesSinceBlanketWash >= 2],
    ['everySixthChange', before === null || before.changesSinceCylinderWash >= 5],
  ];
  return new Set(rows.filter(([, holds]) => holds).map(([name]) => name));
}

export function dueTasks(press: PressDefinition, holds: ReadonlySet<ChangeCondition>): SetupTask[] {
  return press.setupTasks.filter((t) => t.when === undefined || t.when.some((c) => holds.has(c)));
}

/** Tasks that are not due drop out; who waited for them waits for what they waited for. */
export function dueAfter(press: PressDefinition, due: readonly SetupTask[], task: SetupTask): string[] {
  const found = new Set<string>();
  const visit = (name: string): void => {
    if (due.some((t) => t.name === name)) {
      found.add(name);
      return;
    }
    for (const earlier of press.setupTasks.find((t) => t.name === name)?.after ?? []) visit(earlier);
  };
  for (const name of task.after) visit(name);
  return [...found];
}

const sizeText = (w: number, h: number): string => `${w} × ${h} mm`;
const inkText = (units: readonly { unit: number; ink: string }[]): string =>
  units
    .toSorted((a, b) => a.unit - b.unit)
    .map((u) => `${u.unit} ${u.ink}`)
    .join(', ');

/** What the crew must change, one line each; from a clean press everything is new. */
export function differences(before: PressState | null, next: NextOnPress): PlanDifference[] {
  const size = sizeText(next.sheetWidthMm, next.sheetHeightMm);
  const rows: PlanDifference[] = [
    {
      what: 'plates',
      from: before === null ? 'none' : before.plates.join(', '),
      to: next.plates.join(', '),
    },
    { what: 'stock', from: before?.stock ?? 'none', to: next.stock.id },
    {
      what: 'sheet size',
      from: before === null ? 'none' : sizeText(before.sheetWidthMm, before.sheetHeightMm),
      to: size,
    },
    {
      what: 'inks by unit',
      from: before === null ? 'none' : inkText(before.unitInks),
      to: inkText(next.units),
    },
  ];
  return rows.filter((row) => row.from !== row.to);
}
