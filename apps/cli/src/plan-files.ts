import { type Order, type Plan, type Plant, planSequence } from '#libs/craft';
import { type Reading, readDocument } from '#libs/flow';
import type { Problem, Result } from '#libs/kernel';
import type { ReadFile } from './files.js';

export interface Planned {
  readonly source: ReadFile;
  readonly reading: Reading;
  /** With what was noticed while the document was read among its problems; null when it cannot be planned. */
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
}

/** Plans each document, and those that can be planned one after the other: a press changes over from the one before. */
export function planFiles(files: readonly ReadFile[], plant: Plant): readonly Planned[] {
  const readings = files.map((source) => ({ source, reading: readDocument(source.bytes, plant) }));
  const sound = readings.filter(({ reading }) => reading.plan !== null);
  const inRow = planSequence(
    sound.flatMap(({ reading }): Order[] => (reading.order === null ? [] : [reading.order])),
    plant,
  );
  return readings.map(({ source, reading }) => {
    const row = sound.findIndex((candidate) => candidate.source === source);
    return row < 0
      ? { source, reading, plan: null, problems: reading.problems }
      : { source, reading, ...together(reading, inRow[row]!) };
  });
}

function together(reading: Reading, inRow: Result<Plan>): Pick<Planned, 'plan' | 'problems'> {
  const alone = new Set((reading.plan?.problems ?? []).map(asText));
  const noticed = reading.problems.filter((problem) => !alone.has(asText(problem)));
  const problems = [...noticed, ...(inRow.ok ? inRow.value.problems : inRow.problems)];
  return { problems, plan: inRow.ok ? { ...inRow.value, problems } : null };
}

const asText = (problem: Problem): string => JSON.stringify(problem);
