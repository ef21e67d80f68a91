import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import { kindOf, parseXml } from '#libs/jdf';
import { error, type Problem } from '#libs/kernel';
import { packageKind } from '#libs/wire';
import { asJson, atServer } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { looksLikeJson, type ReadFile, readFiles } from '../files.js';
import { Client, refusal } from '../http-client.js';
import { sayJson } from '../output.js';
import { sayProblem } from '../say-problems.js';

interface Outcome {
  readonly file: string;
  /** HTTP status; 0 for a file that could not be read. */
  readonly http: number;
  /** Id of the ticket, also of one that was kept as Rejected. */
  readonly ticket: string | null;
  /** The ticket's own status. */
  readonly status: string | null;
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
    for (const source of files) {
      const outcome = await send(client, source, call.values.again === true);
      outcomes.push(outcome);
      if (!call.values.json) call.out(lineOf(outcome));
      for (const problem of outcome.problems) call.err(sayProblem(outcome.file, problem));
    }
    for (const { file, problem } of unread) {
      outcomes.push({ file, http: 0, ticket: null, status: null, problems: [problem] });
    }
    if (call.values.json) sayJson(call, outcomes);
    if (files.length === 0) return EXIT.use;
    return outcomes.every(taken) ? EXIT.done : EXIT.faults;
  },
};

/** A repeat of a refused document is answered as the first time, whatever the HTTP status says. */
const taken = ({ http, status }: Outcome): boolean => http >= 200 && http < 300 && status !== 'Rejected';

function lineOf(outcome: Outcome): string {
  const { file, http, ticket, status } = outcome;
  const what = !taken(outcome) ? 'refused' : http === 200 ? 'was taken in before' : 'taken in';
  return `${file}: ${what}${ticket === null ? '' : ` as ${ticket}`}${status === null ? '' : ` (${status})`}`;
}

async function send(client: Client, { file, bytes }: ReadFile, again: boolean): Promise<Outcome> {
  const headers: Record<string, string> = {
    'content-type': mediaTypeOf(bytes),
    'x-sidelay-intake': 'commandLine',
  };
  // Sending the same file twice by mistake must not print it twice.
  if (!again) {
    const name = Buffer.from(`${basename(file)}\0`);
    headers['idempotency-key'] = createHash('sha256').update(name).update(bytes).digest('hex');
  }
  const answer = await client.ask('/api/v1/tickets', { method: 'POST', body: bytes as BodyInit, headers });
  const http = answer.status;
  if (http < 300) {
    const { id, status, problems } = answer.json<{ id: string; status: string; problems: Problem[] }>();
    return { file, http, ticket: id, status, problems };
  }
  const ticket = answer.headers.get('location')?.split('/').at(-1) ?? null;
  const { problems, code } = answer.json<{ problems?: Problem[]; code?: Problem['code'] }>();
  const said = error(code ?? 'REQUEST_INVALID', refusal(answer));
  const status = ticket === null ? null : 'Rejected';
  return { file, http, ticket, status, problems: problems ?? [said] };
}

function mediaTypeOf(bytes: Uint8Array): string {
  const kind = packageKind(bytes, null);
  if (kind === 'zip') return 'application/zip';
  // A multipart file begins with its own header, which names its boundary: the server reads that.
  if (kind === 'multipart') return 'application/octet-stream';
  if (looksLikeJson(bytes)) return 'application/json';
  const parsed = parseXml(bytes);
  const xml = parsed.ok ? kindOf(parsed.value) : parsed;
  return xml.ok ? `application/vnd.cip4-${xml.value}+xml` : 'application/xml';
}
