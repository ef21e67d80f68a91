import { resolve } from 'node:path';
import { atServer, text } from '../args.js';
import { type Command, EXIT, WrongUse } from '../command.js';
import { Client, refusal } from '../http-client.js';
import { writeTo } from '../write-to.js';

export const exportCommand: Command = {
  name: 'export',
  usage: 'TICKET [--as jdf] [--out FILE] [--server URL] [--token T]',
  summary: 'The ticket as it leaves: as it came, with its steps, amounts and audits.',
  options: { ...atServer, as: { type: 'string' }, out: { type: 'string' } },
  takes: [1, 1],
  async run(call) {
    const as = text(call, 'as') ?? 'jdf';
    if (as !== 'jdf') throw new WrongUse(`Tickets leave this version --as jdf only, not as ${as}.`);
    const path = `/api/v1/tickets/${encodeURIComponent(call.args[0]!)}/document`;
    const answer = await new Client(call).ask(path, { headers: { accept: 'application/vnd.cip4-jdf+xml' } });
    if (answer.status >= 300) {
      call.err(refusal(answer));
      return EXIT.faults;
    }
    const out = text(call, 'out');
    if (out === undefined) call.raw(answer.bytes);
    else writeTo(resolve(call.folder, out), answer.bytes);
    return EXIT.done;
  },
};
