import type { Problem } from '#libs/kernel';
import { hasErrors } from '#libs/kernel';
import { asJson } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { plantOf, readFiles } from '../files.js';
import { type Judged, judge } from '../judge.js';
import { sayJson } from '../output.js';
import { sayProblem } from '../say-problems.js';

/** One line of `check --json`. */
interface Verdict extends Judged {
  readonly file: string;
  readonly ok: boolean;
}

const verdict = (file: string, { kind, version, problems }: Judged): Verdict => ({
  file,
  kind,
  version,
  ok: !hasErrors(problems),
  problems,
});

const unreadable = (problem: Problem): Judged => ({ kind: 'unknown', version: null, problems: [problem] });

export const check: Command = {
  name: 'check',
  usage: 'FILE… [--json] [--plant FILE]',
  summary:
    'Check tickets, messages, packages and orders; says what is wrong, where, and how to mend it; with --plant, also what that plant cannot do.',
  options: { ...asJson, plant: { type: 'string' } },
  takes: [1, Number.POSITIVE_INFINITY],
  async run(call) {
    const { files, unread } = readFiles(call);
    const executing = call.values.plant === undefined ? null : plantOf(call);
    const verdicts: Verdict[] = [];
    for (const { file, bytes } of files) {
      verdicts.push(verdict(file, await judge(bytes, () => plantOf(call), executing)));
    }
    verdicts.push(...unread.map(({ file, problem }) => verdict(file, unreadable(problem))));
    // What cannot be read was said on stderr; only JSON has to have an answer all the same.
    if (call.values.json) sayJson(call, verdicts);
    else if (files.length > 0) {
      for (const { file, kind, version, ok, problems } of verdicts) {
        call.out(`${file}: ${ok ? 'sound' : 'not sound'} (${kind}${version === null ? '' : ` ${version}`})`);
        for (const problem of problems) call.out(`  ${sayProblem(file, problem).replaceAll('\n', '\n  ')}`);
      }
    }
    if (files.length === 0) return EXIT.use;
    return verdicts.every(({ ok }) => ok) ? EXIT.done : EXIT.faults;
  },
};
