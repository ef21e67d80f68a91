import {
  compareOrders,
  type JobSequence,
  type Order,
  type Plan,
  type Plant,
  planSequence,
} from '#libs/craft';
import { type Reading, readDocument } from '#libs/flow';
import type { Problem, Result } from '#libs/kernel';
import { checkPartReferences, ticketIn, withinPart } from '#libs/wire';
import type { ReadFile } from './files.js';

export interface Planned {
  readonly source: ReadFile;
  readonly reading: Reading;
  /** With what was noticed while the document was read among its problems; null when it cannot be planned. */
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
}

/** Plans each document, and those that can be planned one after the other: a press changes over from the one before. */
export async function planFiles(files: readonly ReadFile[], plant: Plant): Promise<readonly Planned[]> {
  const readings = await Promise.all(files.map((source) => readOne(source, plant)));
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

/** How the change-overs depend on which of the jobs comes first; empty for one job. */
export function sequencesOf(jobs: readonly Planned[], plant: Plant): readonly JobSequence[] {
  return compareOrders(
    jobs.flatMap(({ plan, reading }) => (plan === null || reading.order === null ? [] : [reading.order])),
    plant,
  );
}

/** The document, or the ticket of a package; then the paths of problems begin with the part: `part!path`. */
async function readOne(source: ReadFile, plant: Plant): Promise<Pick<Planned, 'source' | 'reading'>> {
  const found = await ticketIn(source.bytes, null);
  if (!found.ok) return { source, reading: unread(found.problems) };
  const { bytes, within } = found.value;
  if (within === null) return { source, reading: readDocument(bytes, plant) };
  const reading = readDocument(
    bytes,
    plant,
    new Map(),
    (document) => checkPartReferences(within.pack, within.part, document).problems,
  );
  const inPart = (problem: Problem): Problem => withinPart(within.part, problem);
  return {
    source: { ...source, bytes },
    reading: {
      ...reading,
      problems: [...found.problems, ...reading.problems.map(inPart)],
      plan: reading.plan && { ...reading.plan, problems: reading.plan.problems.map(inPart) },
    },
  };
}

const unread = (problems: readonly Problem[]): Reading => ({
  kind: 'package',
  jobId: '',
  name: '',
  order: null,
  plan: null,
  pressStates: [],
  problems,
});

function together(reading: Reading, inRow: Result<Plan>): Pick<Planned, 'plan' | 'problems'> {
  const alone = new Set((reading.plan?.problems ?? []).map(asText));
  const noticed = reading.problems.filter((problem) => !alone.has(asText(problem)));
  const problems = [...noticed, ...(inRow.ok ? inRow.value.problems : inRow.problems)];
  return { problems, plan: inRow.ok ? { ...inRow.value, problems } : null };
}

const asText = (problem: Problem): string => JSON.stringify(problem);
