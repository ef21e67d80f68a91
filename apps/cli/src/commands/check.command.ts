import { readOrder } from '#libs/flow';
import { checkDocument, parseXml } from '#libs/jdf';
import { error, hasErrors, type Problem } from '#libs/kernel';
import { kindOfPart, type PackagePart, packageKind, readPackage } from '#libs/wire';
import { asJson, type Command, EXIT } from '../command.js';
import { plantOf, readFiles } from '../files.js';
import { sayProblem } from '../say-problems.js';

interface Verdict {
  readonly file: string;
  readonly kind: 'jdf' | 'jmf' | 'xjdf' | 'xjmf' | 'package' | 'unknown';
  readonly version: string | null;
  readonly ok: boolean;
  readonly problems: readonly Problem[];
}

type Judged = Omit<Verdict, 'file' | 'ok'>;

export const check: Command = {
  name: 'check',
  usage: 'FILE… [--json] [--plant FILE]',
  summary: 'Check tickets, messages, packages and orders; says what is wrong, where, and how to mend it.',
  options: { ...asJson, plant: { type: 'string' } },
  takes: [1, Number.POSITIVE_INFINITY],
  async run(call) {
    const { files, unread } = readFiles(call);
    const verdicts: Verdict[] = [];
    for (const { file, bytes } of files) {
      const judged = await judge(bytes, () => plantOf(call));
      verdicts.push({ file, ...judged, ok: !hasErrors(judged.problems) });
    }
    if (call.values.json) call.out(JSON.stringify(verdicts, null, 2));
    else {
      for (const { file, kind, version, ok, problems } of verdicts) {
        call.out(`${file}: ${ok ? 'sound' : 'not sound'} (${kind}${version === null ? '' : ` ${version}`})`);
        for (const problem of problems) call.out(`  ${sayProblem(file, problem).replaceAll('\n', '\n  ')}`);
      }
    }
    return unread > 0 || verdicts.some(({ ok }) => !ok) ? EXIT.faults : EXIT.done;
  },
};

async function judge(bytes: Uint8Array, plant: () => ReturnType<typeof plantOf>): Promise<Judged> {
  if (packageKind(bytes, null) !== null) return judgePackage(bytes);
  const first = Buffer.from(bytes.subarray(0, 1024)).toString('latin1').trimStart()[0];
  return first === '{' || first === '[' ? judgeOrder(bytes, plant()) : judgeXml(bytes);
}

function judgeXml(bytes: Uint8Array): Judged {
  const parsed = parseXml(bytes);
  if (!parsed.ok) return { kind: 'unknown', version: null, problems: parsed.problems };
  const { kind, version, problems } = checkDocument(parsed.value);
  return { kind, version: version ?? null, problems };
}

function judgeOrder(bytes: Uint8Array, plant: ReturnType<typeof plantOf>): Judged {
  let json: unknown;
  try {
    json = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (cause) {
    const message = `The JSON can't be read: ${cause instanceof Error ? cause.message : 'unknown'}`;
    return {
      kind: 'unknown',
      version: null,
      problems: [error('JSON_NOT_WELL_FORMED', message, { path: '' })],
    };
  }
  return { kind: 'unknown', version: null, problems: readOrder(json, plant).problems };
}

/** Each message and ticket of a package; their places begin with the name of the part. */
async function judgePackage(bytes: Uint8Array): Promise<Judged> {
  const pack = await readPackage(bytes, null);
  if (!pack.ok) return { kind: 'package', version: null, problems: pack.problems };
  const parts = pack.value.parts.filter((part) => kindOfPart(part) !== 'content');
  if (parts.length === 0) {
    const empty = error('KIND_UNKNOWN', 'The package has neither a message nor a ticket in it.');
    return { kind: 'package', version: null, problems: [empty] };
  }
  const judged = parts.map((part) => ({ part, verdict: judgeXml(part.bytes) }));
  return {
    kind: 'package',
    version: judged[0]!.verdict.version,
    problems: judged.flatMap(({ part, verdict }) => verdict.problems.map((problem) => within(part, problem))),
  };
}

const within = (part: PackagePart, problem: Problem): Problem => ({
  ...problem,
  path: `${part.contentId ?? part.name}!${problem.path ?? ''}`,
});
