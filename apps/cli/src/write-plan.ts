import { join, parse } from 'node:path';
import { version } from '#apps/server';
import type { Plan, Plant } from '#libs/craft';
import { exportTicket, plannedFile, type StoredDocument } from '#libs/flow';
import { type Clock, Fault, type IdSource, realClock, systemRandom, uuidV7Source } from '#libs/kernel';
import { drawCuts, drawFolds, drawSheet } from '#libs/paper';
import type { Planned } from './plan-files.js';
import { writeTo } from './write-to.js';

/**
 * Writes what a plan gives to the people at the machines: drawings of sheets, cuts and folds, the process ticket, the
 * plan itself. Several jobs get a folder each, by the name of their file. Returns the paths written.
 */
export function writePlan(
  jobs: readonly Planned[],
  plant: Plant,
  folder: string,
  time: { clock: Clock; ids: IdSource } = realTime(),
): readonly string[] {
  const folders = foldersFor(jobs, folder);
  return jobs.flatMap((job, n) => {
    if (job.plan === null) return [];
    const files = [...drawings(job.plan), ...documents(job, job.plan, plant, time)];
    return files.map(([name, content]) => {
      const path = join(folders[n]!, name);
      writeTo(path, content);
      return path;
    });
  });
}

function realTime(): { clock: Clock; ids: IdSource } {
  const clock = realClock();
  return { clock, ids: uuidV7Source(clock, systemRandom) };
}

/** Files of one name from different folders must not overwrite each other. */
function foldersFor(jobs: readonly Planned[], folder: string): readonly string[] {
  if (jobs.length === 1) return [folder];
  const taken = new Set<string>();
  return jobs.map(({ source }) => {
    const { name } = parse(source.file);
    let free = name;
    for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${name}-${n}`;
    taken.add(free.toLowerCase());
    return join(folder, free);
  });
}

type NamedFile = readonly [name: string, content: string];

function drawings(plan: Plan): readonly NamedFile[] {
  const sheets = plan.sheets.flatMap((sheet, n): NamedFile[] => [
    [`${sheet.name}-front.svg`, drawSheet(plan, n, 'front')],
    ...(sheet.back.length > 0 ? [[`${sheet.name}-back.svg`, drawSheet(plan, n, 'back')] as const] : []),
    ...(plan.cuts.some((cut) => cut.sheet === sheet.name)
      ? [[`${sheet.name}-cuts.svg`, drawCuts(plan, n)] as const]
      : []),
  ]);
  const folds = plan.folding.map(
    (folding, n): NamedFile => [`${folding.signature}-folds.svg`, drawFolds(plan, n)],
  );
  return [...sheets, ...folds];
}

/** The plan, and the ticket that it would leave as if it were taken in now. */
function documents(
  { source, reading }: Planned,
  plan: Plan,
  plant: Plant,
  { clock, ids }: { clock: Clock; ids: IdSource },
): readonly NamedFile[] {
  const now = clock.now();
  const original: StoredDocument = {
    id: ids.next(),
    // Only what the store keeps is ever looked up by its hash.
    sha256: '',
    mediaType: reading.kind === 'jdf' ? 'application/vnd.cip4-jdf+xml' : 'application/json',
    name: source.file,
    bytes: source.bytes,
    receivedAt: now,
  };
  const file = plannedFile({ ...reading, plan }, original, plant, { now, ids });
  const ticket = file === null ? null : exportTicket(file, original, { now, version, plant });
  if (ticket === null || !ticket.ok) {
    const why = ticket?.problems[0]?.message ?? 'no order was read';
    throw new Fault('BROKEN', `a plan without a process ticket for ${source.file}: ${why}`);
  }
  return [
    ['plan.json', `${JSON.stringify(plan, null, 2)}\n`],
    ['ticket.jdf', ticket.value],
  ];
}
