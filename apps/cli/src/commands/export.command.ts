import { resolve } from 'node:path';
import { atServer, text } from '../args.js';
import { type Command, EXIT, WrongUse } from '../command.js';
import { asMultipartFile } from '../convert/pack.js';
import { type Answer, Client, refusal } from '../http-client.js';
import { writeTo } from '../write-to.js';

/** What can be asked for, and by which media type. */
const FORMS: Readonly<Record<string, string>> = {
  jdf: 'application/vnd.cip4-jdf+xml',
  xjdf: 'application/vnd.cip4-xjdf+xml',
  package: 'multipart/related',
};

export const exportCommand: Command = {
  name: 'export',
  usage: 'TICKET [--as jdf|xjdf|package] [--out FILE] [--server URL] [--token T]',
  summary: 'The ticket as it leaves: as it came, with its steps, amounts and audits.',
  options: { ...atServer, as: { type: 'string' }, out: { type: 'string' } },
  takes: [1, 1],
  async run(call) {
    const as = text(call, 'as') ?? 'jdf';
    const accept = FORMS[as];
    if (accept === undefined) {
      throw new WrongUse(`Tickets leave this version --as ${Object.keys(FORMS).join(', ')}, not as ${as}.`);
    }
    const path = `/api/v1/tickets/${encodeURIComponent(call.args[0]!)}/document`;
    const answer = await new Client(call).ask(path, { headers: { accept } });
    if (answer.status >= 300) {
      call.err(refusal(answer));
      return EXIT.faults;
    }
    const out = text(call, 'out');
    const content = as === 'package' ? asFile(answer) : answer.bytes;
    if (out === undefined) call.raw(content);
    else writeTo(resolve(call.folder, out), content);
    return EXIT.done;
  },
};

function asFile({ bytes, headers }: Answer): Uint8Array {
  const type = headers.get('content-type') ?? '';
  return type.startsWith('multipart/') ? asMultipartFile(type, bytes) : bytes;
}
