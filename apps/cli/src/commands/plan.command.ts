import { mkdirSync, writeFileSync } from 'node:fs';
import { join, parse, resolve } from 'node:path';
import { version } from '#apps/server';
import { type Order, type Plan, type Plant, planSequence } from '#libs/craft';
import { exportTicket, plannedFile, type Reading, readDocument, type StoredDocument } from '#libs/flow';
import { hasErrors, type Problem, realClock, systemRandom, uuidV7Source } from '#libs/kernel';
import { drawCuts, drawFolds, drawSheet } from '#libs/paper';
import { asJson, type Call, type Command, EXIT, text } from '../command.js';
import { describePlan } from '../describe-plan.js';
import { plantOf, type ReadFile, readFiles } from '../files.js';
import { sayProblem } from '../say-problems.js';

interface Planned {
  readonly source: ReadFile;
  readonly reading: Reading;
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
}

export const plan: Command = {
  name: 'plan',
  usage: 'FILE… [--plant FILE] [--out DIR] [--json]',
  summary:
    'Plan product tickets or orders, without a server; several files follow each other on their presses.',
  options: { ...asJson, plant: { type: 'string' }, out: { type: 'string' } },
  takes: [1, Number.POSITIVE_INFINITY],
  run(call) {
    const plant = plantOf(call);
    const { files, unread } = readFiles(call);
    const jobs = planAll(files, plant);
    const out = text(call, 'out');
    for (const job of jobs) {
      for (const problem of job.problems) call.err(sayProblem(job.source.file, problem));
      if (job.plan !== null && out !== undefined)
        writeDrawings(call, resolve(call.folder, out), job, job.plan, plant, jobs.length > 1);
    }
    const plans = jobs.flatMap((job) => (job.plan === null ? [] : [job.plan]));
    if (call.values.json) {
      if (plans.length > 0) call.out(JSON.stringify(files.length === 1 ? plans[0] : plans, null, 2));
      else call.out(JSON.stringify({ problems: jobs.flatMap((job) => job.problems) }, null, 2));
    } else for (const made of plans) call.out(describePlan(made));
    return Promise.resolve(unread > 0 || jobs.some((job) => job.plan === null) ? EXIT.faults : EXIT.done);
  },
};

/** Each file for itself, then all sound orders in a row, so that a change-over is from the job before. */
function planAll(files: readonly ReadFile[], plant: Plant): readonly Planned[] {
  const readings = files.map((source) => ({ source, reading: readDocument(source.bytes, plant) }));
  const sound = readings.filter(({ reading }) => reading.order !== null && reading.plan !== null);
  const inRow = planSequence(
    sound.map(({ reading }) => reading.order as Order),
    plant,
  );
  return readings.map(({ source, reading }) => {
    const row = sound.findIndex((candidate) => candidate.source === source);
    const result = row < 0 ? null : inRow[row]!;
    const made = result?.ok && !hasErrors(reading.problems) ? result.value : null;
    return {
      source,
      reading,
      plan: made,
      problems: [...reading.problems, ...(result?.ok === false ? result.problems : [])],
    };
  });
}

function writeDrawings(
  call: Call,
  out: string,
  job: Planned,
  made: Plan,
  plant: Plant,
  several: boolean,
): void {
  const folder = several ? join(out, parse(job.source.file).name) : out;
  mkdirSync(folder, { recursive: true });
  const write = (name: string, content: string): void => {
    writeFileSync(join(folder, name), content);
    call.err(join(folder, name));
  };
  write('plan.json', `${JSON.stringify(made, null, 2)}\n`);
  made.sheets.forEach((sheet, n) => {
    write(`${sheet.name}-front.svg`, drawSheet(made, n, 'front'));
    if (sheet.back.length > 0) write(`${sheet.name}-back.svg`, drawSheet(made, n, 'back'));
    if (made.cuts.some((cut) => cut.sheet === sheet.name)) write(`${sheet.name}-cuts.svg`, drawCuts(made, n));
  });
  for (const [n, folding] of made.folding.entries())
    write(`${folding.signature}-folds.svg`, drawFolds(made, n));
  const ticket = processTicketOf(job, made, plant);
  if (ticket !== null) write('ticket.jdf', ticket);
}

function processTicketOf({ source, reading }: Planned, made: Plan, plant: Plant): string | null {
  const clock = realClock();
  const ids = uuidV7Source(clock, systemRandom);
  const original: StoredDocument = {
    id: ids.next(),
    sha256: '',
    mediaType: reading.kind === 'jdf' ? 'application/vnd.cip4-jdf+xml' : 'application/json',
    name: source.file,
    bytes: source.bytes,
    receivedAt: clock.now(),
  };
  const file = plannedFile({ ...reading, plan: made }, original, plant, { now: clock.now(), ids });
  if (file === null) return null;
  const ticket = exportTicket(file, original, { now: clock.now(), version });
  return ticket.ok ? ticket.value : null;
}
