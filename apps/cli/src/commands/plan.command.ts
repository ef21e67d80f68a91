import { resolve } from 'node:path';
import type { JobSequence } from '#libs/craft';
import { asJson, text } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { describePlan, describeSequences } from '../describe-plan.js';
import { plantOf, readFiles, type UnreadFile } from '../files.js';
import { sayJson } from '../output.js';
import { type Planned, planFiles, sequencesOf } from '../plan-files.js';
import { sayProblem } from '../say-problems.js';
import { writePlan } from '../write-plan.js';

export const plan: Command = {
  name: 'plan',
  usage: 'FILE… [--plant FILE] [--out DIR] [--json]',
  summary:
    'Plan product tickets or orders, without a server; several files follow each other on their presses.',
  options: { ...asJson, plant: { type: 'string' }, out: { type: 'string' } },
  takes: [1, Number.POSITIVE_INFINITY],
  async run(call) {
    const plant = plantOf(call);
    const { files, unread } = readFiles(call);
    const jobs = await planFiles(files, plant);
    const folder = text(call, 'out');
    if (folder !== undefined) {
      for (const path of writePlan(jobs, plant, resolve(call.folder, folder))) call.err(path);
    }
    for (const { source, problems } of jobs) {
      for (const problem of problems) call.err(sayProblem(source.file, problem));
    }
    const sequences = sequencesOf(jobs, plant);
    if (call.values.json) sayJson(call, documentOf(jobs, unread, sequences));
    else {
      for (const job of jobs) if (job.plan !== null) call.out(`${describePlan(job.plan)}\n`);
      if (sequences.length > 0) call.out(`${describeSequences(sequences)}\n`);
    }
    if (files.length === 0) return EXIT.use;
    return unread.length > 0 || jobs.some((job) => job.plan === null) ? EXIT.faults : EXIT.done;
  },
};

/**
 * One file: its plan. Several: a list in the order of the files, each plan with what other orders of the jobs would cost
 * in change-overs. Where there is no plan: the file and why.
 */
function documentOf(
  jobs: readonly Planned[],
  unread: readonly UnreadFile[],
  sequences: readonly JobSequence[],
): unknown {
  const also = sequences.length > 0 ? { sequences } : {};
  const documents = [
    ...jobs.map(({ plan: made, source, problems }) =>
      made === null ? { file: source.file, problems } : { ...made, ...also },
    ),
    ...unread.map(({ file, problem }) => ({ file, problems: [problem] })),
  ];
  return documents.length === 1 ? documents[0] : documents;
}
