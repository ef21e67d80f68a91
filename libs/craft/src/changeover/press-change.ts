import { error, type Problem } from '#libs/kernel';
import type { PlanChangeover, PlanChangeoverTask } from '../plan.js';
import type { PressDefinition, PressState, SetupTask } from '../plant.js';
import { conditions, differences, dueAfter, dueTasks, type NextOnPress } from './due.js';
import { shortestSchedule } from './shortest.js';

export interface PressChange {
  changeover: PlanChangeover;
  /** What hangs and lies in the press afterwards. */
  state: PressState;
}

function platesToHang(before: PressState | null, next: NextOnPress): number {
  return next.plates.filter((p) => !(before?.plates ?? []).includes(p)).length;
}

function durationOf(task: SetupTask, before: PressState | null, next: NextOnPress): number {
  if (task.perPlateS !== undefined) return task.perPlateS * platesToHang(before, next);
  const dark = next.washesDark === true && task.darkToLightS !== undefined;
  return (dark ? task.darkToLightS : task.durationS) ?? 0;
}

function taskCapacity(press: PressDefinition, task: SetupTask | undefined, durationS: number): number {
  if (task?.runsSheets !== true) return 0;
  const byTime = Math.floor((durationS * press.makereadySpeedPerHour) / 3600);
  return Math.min(byTime, task.sheets ?? byTime);
}

/** Sheets that a press can run in its set-up at makeready speed; its set-up waste must not be more. */
export function makereadyCapacity(press: PressDefinition): number {
  return press.setupTasks.reduce((sum, task) => sum + taskCapacity(press, task, task.durationS ?? 0), 0);
}

/**
 * Change-over of a press from what it holds to what comes next, up to the first good sheet: which tasks are due, the
 * shortest schedule of them under what each waits for, who does it and what excludes it. External tasks are done before
 * the stop. `makereadySheets` are spread over the tasks that run sheets; figures of the plant that let them not fit are
 * a problem of the plant definition. Source of the model: trade practice (no source); check values in the spec.
 */
export function pressChange(
  press: PressDefinition,
  before: PressState | null,
  next: NextOnPress,
  makereadySheets: number,
  step: string,
): PressChange | Problem {
  const holds = conditions(press, before, next);
  const due = dueTasks(press, holds);
  const internal = due.filter((t) => t.external !== true);
  const network = internal.map((t) => ({
    name: t.name,
    durationS: durationOf(t, before, next),
    after: dueAfter(press, internal, t),
    needs: [...(t.who === undefined ? [] : [t.who]), ...(t.uses ?? [])],
  }));
  const schedule = shortestSchedule(network);
  const tasks = due.map((t): PlanChangeoverTask => {
    const durationS = durationOf(t, before, next);
    return {
      name: t.name,
      durationS,
      startS: t.external === true ? -durationS : (schedule.startS.get(t.name) ?? 0),
      after: t.external === true ? [] : dueAfter(press, due, t),
      who: t.who ?? 'press',
      ...(t.external === true ? { external: true } : {}),
    };
  });
  const capacity = tasks.map((task) =>
    taskCapacity(
      press,
      due.find((t) => t.name === task.name),
      task.durationS,
    ),
  );
  const total = capacity.reduce((a, b) => a + b, 0);
  if (total < makereadySheets) {
    return error(
      'PLANT_DEFINITION',
      `${press.name}: ${makereadySheets} set-up sheets do not fit the running set-up tasks, which run ${total} sheets at most at ${press.makereadySpeedPerHour} an hour.`,
      { path: '/presses', hint: 'Lower the set-up sheets, or give the running tasks their true time.' },
    );
  }
  let left = makereadySheets;
  tasks.forEach((task, i) => {
    const run = Math.min(left, capacity[i] ?? 0);
    left -= run;
    if (run > 0) task.runsSheets = run;
  });
  return {
    changeover: {
      step,
      fromJob: before?.jobId ?? null,
      toJob: next.jobId,
      differs: differences(before, next),
      tasks,
      criticalPath: schedule.criticalPath,
      durationS: schedule.durationS,
    },
    state: stateAfter(press, before, next, due),
  };
}

function stateAfter(
  press: PressDefinition,
  before: PressState | null,
  next: NextOnPress,
  due: readonly SetupTask[],
): PressState {
  const washed = (condition: 'everyThirdChange' | 'everySixthChange'): boolean =>
    due.some((t) => t.when?.includes(condition) === true);
  const used = new Set(next.units.map((u) => u.unit));
  const kept = (before?.unitInks ?? []).filter((u) => !used.has(u.unit));
  return {
    press: press.id,
    jobId: next.jobId,
    stock: next.stock.id,
    stockClass: next.stock.class,
    stockCaliperUm: next.stock.caliperUm,
    sheetWidthMm: next.sheetWidthMm,
    sheetHeightMm: next.sheetHeightMm,
    unitInks: [...kept, ...next.units.map(({ unit, ink }) => ({ unit, ink }))],
    plates: next.plates,
    changesSinceBlanketWash: washed('everyThirdChange') ? 0 : (before?.changesSinceBlanketWash ?? 0) + 1,
    changesSinceCylinderWash: washed('everySixthChange') ? 0 : (before?.changesSinceCylinderWash ?? 0) + 1,
  };
}
