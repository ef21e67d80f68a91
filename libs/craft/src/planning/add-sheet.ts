import { error, type Problem } from '#libs/kernel';
import { pressChange } from '../changeover/press-change.js';
import type { Printable } from '../layouts/printable.js';
import type { PlanCell, PlanMark, PlanPlate, PlanSheet, PlanStep, PlanUnit, Side } from '../plan.js';
import { devicesOf, type PressDefinition, type PressState } from '../plant.js';
import { type PressPass, pressRun } from '../sheets/press-run.js';
import { addStep, type Draft } from './draft.js';
import type { PartJob } from './job.js';
import type { PressChoice } from './press-choice.js';
import { dryingWaits } from './waits.js';

export interface SheetWant {
  /** Number of the sheet in the job, from 1. */
  number: number;
  area: Printable;
  cells: Record<Side, PlanCell[]>;
  copiesUp: number;
  goodSheets: number;
  /** What comes after the last pass. */
  next: 'cut' | 'fold';
  version?: SheetVersion;
}

/** A version that is printed by itself: the inks whose plates are its own. */
export interface SheetVersion {
  name: string;
  changes: readonly string[];
}

function colourBars(area: Printable, cells: Record<Side, PlanCell[]>, sides: readonly Side[]): PlanMark[] {
  if (area.colourBarMm === 0) return [];
  return sides.map((side) => {
    const from = Math.min(...cells[side].map((c) => c.xMm));
    const to = Math.max(...cells[side].map((c) => c.xMm + c.widthMm));
    return {
      kind: 'colourBar',
      side,
      xMm: from,
      yMm: area.sheetHeightMm - area.tailFreeMm - area.colourBarMm,
      widthMm: to - from,
      heightMm: area.colourBarMm,
    };
  });
}

function addPlates(draft: Draft, job: PartJob, press: PressDefinition, number: number, plates: PlanPlate[]) {
  const setter = devicesOf(job.plant, 'platesetter').find((d) =>
    d.plates.some((p) => p.plate === press.plate),
  );
  if (setter === undefined) {
    return error('PLANT_DEFINITION', `No platesetter makes ${press.plate} for ${press.name}.`, {
      path: '/platesetters',
    });
  }
  const perHour = setter.plates.find((p) => p.plate === press.plate)?.perHour ?? 1;
  return addStep(draft, {
    id: `plates-${number}`,
    types: ['ImageSetting'],
    device: setter.id,
    sheet: `S${number}`,
    setupS: setter.setupS,
    // The first plate takes the whole way through the setter and its processor, the others follow at its rate.
    runS: Math.round(setter.firstPlateOutS + ((plates.length - 1) * 3600) / perHour),
    inAmount: plates.length,
    inUnit: 'plates',
    outAmount: plates.length,
    unit: 'plates',
    inputs: [{ from: 'prepress', amount: plates.length, unit: 'plates' }],
  });
}

function washesDark(
  job: PartJob,
  press: PressDefinition,
  before: PressState | null,
  pass: PressPass,
): boolean {
  return pass.units.some((u) => {
    const held = before?.unitInks.find((h) => h.unit === u.unit)?.ink;
    const free = (press.unitInks[u.unit - 1] ?? null) === null;
    return (
      free &&
      held !== undefined &&
      held !== u.ink &&
      job.plant.inks.some((set) => set.dark === true && set.names.includes(held))
    );
  });
}

/** The plate for a unit: one that another version has made already, where it is not of its own, else a new one. */
function plateFor(
  draft: Draft,
  press: PressDefinition,
  sheet: string,
  { unit, side, ink }: PlanUnit,
  version: SheetVersion | undefined,
): PlanPlate {
  const own = version?.changes.includes(ink) === true;
  const made = draft.plateList.find((plate) => {
    const on = draft.sheets.find((s) => s.name === plate.sheet)?.press;
    return plate.version === '' && plate.side === side && plate.ink === ink && on === press.id;
  });
  if (version !== undefined && !own && made !== undefined) return made;
  return {
    id: `${sheet}-${side}-${ink.replaceAll(' ', '')}`,
    sheet,
    side,
    ink,
    version: own ? version.name : '',
    unit,
  };
}

/**
 * Adds one sheet to a draft: the sheet itself, its plates, the platesetter step and a print step with its change-over
 * for every pass. Returns the last print step, or what in the plant definition forbids it.
 */
export function addSheet(
  draft: Draft,
  job: PartJob,
  choice: PressChoice,
  want: SheetWant,
): PlanStep | Problem {
  const { press, way } = choice;
  const { stock } = job.part;
  const { area, number, cells } = want;
  const name = `S${number}`;
  const run = pressRun(press, stock, way, want.goodSheets);
  const hung = run.passes.flatMap((pass) =>
    pass.units.map((unit) => plateFor(draft, press, name, unit, want.version)),
  );
  const plates = hung.filter((plate) => !draft.plateList.includes(plate));
  const sides: Side[] = run.passes.flatMap((pass) => pass.sides);
  const sheet: PlanSheet = {
    name,
    press: press.id,
    workStyle: run.workStyle,
    turn: run.turn,
    sheetWidthMm: area.sheetWidthMm,
    sheetHeightMm: area.sheetHeightMm,
    grain: stock.grain,
    gripperMm: area.gripperMm,
    tailMm: area.tailMm,
    copiesUp: want.copiesUp,
    stock: stock.id,
    ...cells,
    plates: plates.length,
    goodSheets: run.goodSheets,
    makereadySheets: run.makereadySheets,
    runningWasteSheets: run.runningWasteSheets,
    sheetsToPress: run.sheetsToPress,
    impressions: run.impressions,
    bleedMm: job.bleedMm,
    units: run.passes.flatMap((pass) => pass.units),
    marks: colourBars(area, cells, sides),
    sideLay: 'operator',
  };
  const platesStep = plates.length === 0 ? null : addPlates(draft, job, press, number, plates);
  if (platesStep !== null && 'severity' in platesStep) return platesStep;
  draft.sheets.push(sheet);
  draft.plateList.push(...plates);
  const waits = dryingWaits(job, press);
  let last: PlanStep | null = platesStep;
  for (const [i, pass] of run.passes.entries()) {
    const twoPasses = run.passes.length > 1;
    const side: Side = pass.sides[0] ?? 'front';
    const id = twoPasses ? `print-${number}-${side}` : `print-${number}`;
    const onPress = hung.filter((p) => pass.sides.includes(p.side));
    const fresh = onPress.filter((p) => plates.includes(p)).length;
    const held = draft.pressStates.get(press.id) ?? null;
    const change = pressChange(
      press,
      held,
      {
        jobId: job.order.jobId,
        stock,
        sheetWidthMm: area.sheetWidthMm,
        sheetHeightMm: area.sheetHeightMm,
        units: pass.units,
        plates: onPress.map((plate) => `${job.order.jobId} ${plate.id}`),
        washesDark: washesDark(job, press, held, pass),
      },
      pass.overs.setupSheets,
      id,
    );
    if ('severity' in change) return change;
    draft.changeovers.push(change.changeover);
    draft.pressStates.set(press.id, change.state);
    const lastPass = i === run.passes.length - 1;
    const before: PlanStep | null = last;
    last = addStep(draft, {
      id,
      types: ['ConventionalPrinting'],
      device: press.id,
      sheet: name,
      ...(pass.sides.length === 1 ? { side } : {}),
      ...(twoPasses ? { pass: i + 1 } : {}),
      setupS: change.changeover.durationS,
      runS: pass.runS,
      waitAfterS: lastPass ? (want.next === 'cut' ? waits.cutS : waits.foldS) : waits.backUpS,
      inAmount: pass.sheetsIn,
      inUnit: 'sheets',
      outAmount: pass.sheetsOut,
      unit: 'sheets',
      inputs: [
        ...(fresh > 0 && platesStep !== null
          ? [{ from: platesStep.id, amount: fresh, unit: 'plates' as const }]
          : []),
        ...(i > 0 && before !== null
          ? [{ from: before.id, amount: before.outAmount, unit: before.unit }]
          : []),
      ],
    });
    const { setupSheets, runningPct } = pass.overs;
    draft.overs.push({ step: id, setupSheets, runningPct });
  }
  return last ?? error('PLANT_DEFINITION', `${press.name} prints nothing of ${name}.`, { path: '/presses' });
}
