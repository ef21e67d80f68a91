import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import type { Problem } from '#libs/kernel';
import { packageKind } from '#libs/wire';
import { asJson, atServer, type Command, EXIT } from '../command.js';
import { type ReadFile, readFiles } from '../files.js';
import { Client, refusal } from '../http-client.js';
import { sayProblem } from '../say-problems.js';

interface Outcome {
  readonly file: string;
  readonly status: number;
  readonly ticket: string | null;
  readonly problems: readonly Problem[];
}

export const submit: Command = {
  name: 'submit',
  usage: 'FILE… [--again] [--json] [--server URL] [--token T]',
  summary: 'Send tickets, packages or orders to a server. The same file is taken once, unless --again.',
  options: { ...asJson, ...atServer, again: { type: 'boolean' } },
  takes: [1, Number.POSITIVE_INFINITY],
  async run(call) {
    const client = new Client(call);
    const { files, unread } = readFiles(call);
    const outcomes: Outcome[] = [];
    for (const source of files) outcomes.push(await send(client, source, call.values.again === true));
    if (call.values.json) call.out(JSON.stringify(outcomes, null, 2));
    else {
      for (const { file, status, ticket, problems } of outcomes) {
        call.out(
          `${file}: ${status < 300 ? (status === 200 ? 'was taken in before' : 'taken in') : 'refused'}${ticket === null ? '' : ` as ${ticket}`}`,
        );
        for (const problem of problems) call.err(sayProblem(file, problem));
      }
    }
    return unread > 0 || outcomes.some(({ status }) => status >= 300) ? EXIT.faults : EXIT.done;
  },
};

async function send(client: Client, { file, bytes }: ReadFile, again: boolean): Promise<Outcome> {
  const headers: Record<string, string> = {
    'content-type': mediaTypeOf(bytes),
    'x-sidelay-intake': 'commandLine',
  };
  // Sending the same file twice by mistake must not print it twice.
  if (!again)
    headers['idempotency-key'] = createHash('sha256').update(basename(file)).update(bytes).digest('hex');
  const answer = await client.ask('/api/v1/tickets', { method: 'POST', body: bytes as BodyInit, headers });
  if (answer.status < 300) {
    const { id, problems } = answer.json<{ id: string; problems: Problem[] }>();
    return { file, status: answer.status, ticket: id, problems };
  }
  const ticket = answer.headers.get('location')?.split('/').at(-1) ?? null;
  const { problems, code } = answer.json<{ problems?: Problem[]; code: Problem['code'] }>();
  const said: Problem = {
    severity: 'error',
    code,
    line: null,
    path: null,
    message: refusal(answer),
    hint: null,
  };
  return { file, status: answer.status, ticket, problems: problems ?? [said] };
}

function mediaTypeOf(bytes: Uint8Array): string {
  const kind = packageKind(bytes, null);
  if (kind === 'zip') return 'application/zip';
  // A multipart file begins with its own header, which names its boundary.
  if (kind === 'multipart') return 'application/octet-stream';
  const first = Buffer.from(bytes.subarray(0, 1024)).toString('latin1').trimStart()[0];
  return first === '{' || first === '[' ? 'application/json' : 'application/vnd.cip4-jdf+xml';
}
