import { devicesOf, makereadyCapacity, type Plant, type PressDefinition } from '#libs/craft';
import { error, type Problem } from '#libs/kernel';

const fault = (path: string, message: string, hint: string | null = null): Problem =>
  error('PLANT_DEFINITION', message, { path, hint });

function doubles(plant: Plant): Problem[] {
  const seen = new Set<string>();
  const ids = [...plant.devices, ...plant.stocks, ...plant.plates].map((thing) => thing.id);
  return ids.flatMap((id) => {
    if (seen.has(id))
      return [fault('', `The id ${id} is used twice.`, 'Give every device, stock and plate its own id.')];
    seen.add(id);
    return [];
  });
}

function hasCycle(press: PressDefinition): boolean {
  const done = new Set<string>();
  let open = press.setupTasks;
  while (open.length > 0) {
    const ready = open.filter((task) => task.after.every((name) => done.has(name)));
    if (ready.length === 0) return true;
    for (const task of ready) done.add(task.name);
    open = open.filter((task) => !done.has(task.name));
  }
  return false;
}

function pressProblems(plant: Plant, press: PressDefinition, path: string): Problem[] {
  const problems: Problem[] = [];
  if (press.bothSides !== 'none' && press.unitsFront + press.unitsBack !== press.units) {
    problems.push(
      fault(
        `${path}/units`,
        `${press.name}: ${press.unitsFront} front and ${press.unitsBack} back units are not ${press.units}.`,
      ),
    );
  }
  if (press.unitInks.length !== press.units) {
    problems.push(
      fault(`${path}/unitInks`, `${press.name}: name an ink or null for each of ${press.units} units.`),
    );
  }
  if (!plant.plates.some((plate) => plate.id === press.plate)) {
    problems.push(fault(`${path}/plate`, `${press.name}: there is no plate ${press.plate}.`));
  }
  const names = press.setupTasks.map((task) => task.name);
  press.setupTasks.forEach((task, i) => {
    for (const name of task.after.filter((n) => !names.includes(n))) {
      problems.push(
        fault(`${path}/setupTasks/${i}/after`, `${press.name}: there is no set-up task ${name}.`),
      );
    }
  });
  if (problems.length > 0) return problems;
  if (hasCycle(press)) {
    return [fault(`${path}/setupTasks`, `${press.name}: set-up tasks wait for each other in a circle.`)];
  }
  const capacity = makereadyCapacity(press);
  press.overs.forEach((row, i) => {
    if (row.setupSheets > capacity) {
      problems.push(
        fault(
          `${path}/overs/${i}/setupSheets`,
          `${press.name}: ${row.setupSheets} set-up sheets do not fit the running set-up tasks, which run ${capacity} sheets at most.`,
          'Lower the set-up sheets, or give the running tasks their true time.',
        ),
      );
    }
  });
  return problems;
}

/** What the schema cannot see: names that lead nowhere, figures that contradict each other. */
export function checkPlant(plant: Plant): Problem[] {
  const problems = doubles(plant);
  if (!plant.stocks.some((stock) => stock.id === plant.defaults.stock)) {
    problems.push(fault('/defaults/stock', `There is no stock ${plant.defaults.stock}.`));
  }
  const known = new Set(plant.inks.flatMap((set) => set.names));
  for (const side of ['inksFront', 'inksBack'] as const) {
    plant.defaults[side].forEach((ink, i) => {
      if (!known.has(ink)) problems.push(fault(`/defaults/${side}/${i}`, `There is no ink ${ink}.`));
    });
  }
  const presses = devicesOf(plant, 'press');
  presses.forEach((press, i) => {
    problems.push(...pressProblems(plant, press, `/presses/${i}`));
  });
  const pressIds = presses.map((press) => press.id);
  plant.inks.forEach((set, i) => {
    if (!pressIds.includes(set.press))
      problems.push(fault(`/inks/${i}/press`, `There is no press ${set.press}.`));
    for (const stock of plant.stocks.filter((s) => set.solidGPerM2[s.class] === undefined)) {
      problems.push(
        fault(
          `/inks/${i}/solidGPerM2`,
          `${set.id}: the ink on a solid is not given for ${stock.class} stock.`,
        ),
      );
      break;
    }
  });
  plant.waits.forEach((row, i) => {
    if (!pressIds.includes(row.press))
      problems.push(fault(`/waits/${i}/press`, `There is no press ${row.press}.`));
  });
  for (const device of Object.keys(plant.calendars)) {
    if (!plant.devices.some((d) => d.id === device)) {
      problems.push(fault(`/calendars/${device}`, `There is no device ${device}.`));
    }
  }
  return problems;
}
