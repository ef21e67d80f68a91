import { piecesToFeed } from '#libs/kernel';
import type { PlanUnit, Side, Turn, WorkStyle } from '../plan.js';
import type { PressDefinition, PressOvers, Stock } from '../plant.js';
import { pressUnits } from './units.js';

/** One way of a sheet through a press. */
export interface PressPass {
  sides: Side[];
  units: PlanUnit[];
  overs: PressOvers;
  sheetsIn: number;
  sheetsOut: number;
  /** Seconds at planning speed for the sheets beyond set-up. */
  runS: number;
}

export interface PressRun {
  workStyle: WorkStyle;
  turn: Turn;
  passes: PressPass[];
  goodSheets: number;
  makereadySheets: number;
  runningWasteSheets: number;
  sheetsToPress: number;
  impressions: number;
  plates: number;
}

/** How the inks of both sides can be printed on this press: the sides of each pass, or why it cannot be. */
export interface PrintWay {
  workStyle: WorkStyle;
  turn: Turn;
  passes: { sides: Side[]; units: PlanUnit[]; overs: PressOvers }[];
}

/** The waste row of a pass: the first whose colours cover the fuller side; a row for one side if none for both. */
function oversRow(press: PressDefinition, colours: number, bothSides: boolean): PressOvers | null {
  const rows = press.overs.toSorted((a, b) => a.coloursUpTo - b.coloursUpTo);
  const fits = (row: PressOvers, both: boolean): boolean =>
    row.coloursUpTo >= colours && row.bothSides === both;
  return rows.find((row) => fits(row, bothSides)) ?? rows.find((row) => fits(row, !bothSides)) ?? null;
}

/**
 * One pass for one side or on a press that prints both; two passes with two sets of plates (sheetwise) otherwise. The
 * work styles and their turns are the open standard's.
 */
export function printWay(
  press: PressDefinition,
  inksFront: readonly string[],
  inksBack: readonly string[],
): PrintWay | string {
  const inks = { front: inksFront, back: inksBack };
  const both = inksFront.length > 0 && inksBack.length > 0;
  const onePass = !both || press.bothSides !== 'none';
  const wanted: { front: readonly string[]; back: readonly string[] }[] = onePass
    ? [inks]
    : [
        { front: inksFront, back: [] },
        { front: [], back: inksBack },
      ];
  const passes: PrintWay['passes'] = [];
  for (const pass of wanted) {
    const units = pressUnits(press, pass);
    if (typeof units === 'string') return units;
    const colours = Math.max(pass.front.length, pass.back.length);
    const overs = oversRow(press, colours, pass.front.length > 0 && pass.back.length > 0);
    if (overs === null) return `${press.name} has no waste figures for ${colours} colours`;
    const sides: Side[] = [];
    if (pass.front.length > 0) sides.push('front');
    if (pass.back.length > 0) sides.push('back');
    passes.push({ sides, units, overs });
  }
  if (!both) return { workStyle: 'Simplex', turn: 'none', passes };
  if (!onePass) return { workStyle: 'WorkAndBack', turn: 'sideways', passes };
  return { workStyle: 'Perfecting', turn: press.bothSides === 'onePass' ? 'none' : 'headOverTail', passes };
}

/** Sheets an hour to plan with: the band of the grammage, less on short runs, never above the rated speed. */
export function planSpeed(press: PressDefinition, gsm: number, runSheets: number): number | null {
  const band = press.planSpeedPerHour.find((b) => gsm >= b.gsmFrom && gsm <= b.gsmTo);
  if (band === undefined) return null;
  const factor = runSheets < press.shortRun.belowSheets ? press.shortRun.speedFactor : 1;
  return Math.min(press.speedPerHour, band.perHour * factor);
}

/**
 * Carries the good sheets that finishing needs back through the passes: each pass adds its running waste and its
 * set-up sheets (convention onInput); run time counts the sheets beyond set-up.
 */
export function pressRun(press: PressDefinition, stock: Stock, way: PrintWay, goodSheets: number): PressRun {
  let out = goodSheets;
  let setup = 0;
  const passes: PressPass[] = [];
  for (const pass of way.passes.toReversed()) {
    const sheetsIn = piecesToFeed(out, pass.overs.runningPct, pass.overs.setupSheets);
    const runSheets = sheetsIn - pass.overs.setupSheets;
    const speed = planSpeed(press, stock.gsm, runSheets) ?? press.speedPerHour;
    passes.unshift({ ...pass, sheetsIn, sheetsOut: out, runS: Math.round((runSheets / speed) * 3600) });
    setup += pass.overs.setupSheets;
    out = sheetsIn;
  }
  return {
    workStyle: way.workStyle,
    turn: way.turn,
    passes,
    goodSheets,
    makereadySheets: setup,
    runningWasteSheets: out - goodSheets - setup,
    sheetsToPress: out,
    impressions: out * passes.length,
    plates: passes.reduce((sum, p) => sum + p.units.length, 0),
  };
}
