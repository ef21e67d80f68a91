import { resolve } from 'node:path';
import { atServer, text } from '../args.js';
import { type Command, EXIT, WrongUse } from '../command.js';
import { asMultipartFile } from '../convert/pack.js';
import { type Answer, Client, refusal } from '../http-client.js';
import { askOfTicket } from '../ticket-named.js';
import { writeTo } from '../write-to.js';

/** What can be asked for, and by which media type. */
const FORMS: Readonly<Record<string, string>> = {
  jdf: 'application/vnd.cip4-jdf+xml',
  xjdf: 'application/vnd.cip4-xjdf+xml',
  package: 'multipart/related',
  'jdf-zip': 'application/zip, application/vnd.cip4-jdf+xml',
  'xjdf-zip': 'application/zip, application/vnd.cip4-xjdf+xml',
};
/** What is wanted where nothing is said: JDF, or a refused document as it came. */
const USUAL = `${FORMS.jdf}, */*;q=0.1`;

export const exportCommand: Command = {
  name: 'export',
  usage: 'TICKET [--as jdf|xjdf|package|jdf-zip|xjdf-zip] [--out FILE] [--server URL] [--token T]',
  summary:
    'The ticket as it leaves: as it came, with its steps, amounts and audits; package (multipart) and zip: with its files.',
  options: { ...atServer, as: { type: 'string' }, out: { type: 'string' } },
  takes: [1, 1],
  async run(call) {
    const as = text(call, 'as');
    const accept = as === undefined ? USUAL : FORMS[as];
    if (accept === undefined) {
      throw new WrongUse(`Tickets leave this version --as ${Object.keys(FORMS).join(', ')}, not as ${as}.`);
    }
    const init = { headers: { accept } };
    const answer = await askOfTicket(call, new Client(call), call.args[0]!, '/document', init);
    if (answer === null) return EXIT.faults;
    if (answer.status >= 300) {
      call.err(refusal(answer));
      return EXIT.faults;
    }
    const out = text(call, 'out');
    const content = asFile(answer);
    if (out === undefined) call.raw(content);
    else writeTo(resolve(call.folder, out), content);
    return EXIT.done;
  },
};

function asFile({ bytes, headers }: Answer): Uint8Array {
  const type = headers.get('content-type') ?? '';
  return type.startsWith('multipart/') ? asMultipartFile(type, bytes) : bytes;
}
