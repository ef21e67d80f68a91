import type { PressDefinition } from '../plant.js';
import type { Job, PartJob } from './job.js';

export interface Waits {
  backUpS: number;
  cutS: number;
  foldS: number;
}

export function isMetallic(job: Job, ink: string): boolean {
  return job.plant.inks.some((set) => set.metallic === true && set.names.includes(ink));
}

/** Drying before the next pass, the guillotine and the folder: the longest of the plant's rows that apply. */
export function dryingWaits(job: PartJob, press: PressDefinition): Waits {
  if (press.curing === 'instant') return { backUpS: 0, cutS: 0, foldS: 0 };
  const { stock, inksFront, inksBack } = job.part;
  const metallic = [...inksFront, ...inksBack].some((ink) => isMetallic(job, ink));
  const rows = job.plant.waits.filter(
    (row) =>
      row.press === press.id &&
      (row.class === undefined || row.class === stock.class) &&
      (row.metallic !== true || metallic),
  );
  const most = (key: keyof Waits): number => Math.max(0, ...rows.map((row) => row[key]));
  return { backUpS: most('backUpS'), cutS: most('cutS'), foldS: most('foldS') };
}
