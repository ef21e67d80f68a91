import { ticketStatuses } from '#libs/flow';
import { asJson, atServer, text } from '../args.js';
import { type Command, EXIT, WrongUse } from '../command.js';
import { Client, refusal } from '../http-client.js';
import { sayJson } from '../output.js';
import { bar, type TicketJson } from '../shapes.js';

export const tickets: Command = {
  name: 'tickets',
  usage: '[--status STATUS] [--q TEXT] [--json] [--server URL] [--token T]',
  summary: 'List the tickets of a server, newest first.',
  options: { ...asJson, ...atServer, status: { type: 'string' }, q: { type: 'string' } },
  takes: [0, 0],
  async run(call) {
    const status = text(call, 'status');
    if (status !== undefined && !ticketStatuses.some((known) => known === status)) {
      throw new WrongUse(`There is no status ${status}: ${ticketStatuses.join(', ')}.`);
    }
    const client = new Client(call);
    const query = new URLSearchParams({ limit: '200' });
    for (const key of ['status', 'q']) {
      const value = text(call, key);
      if (value !== undefined) query.set(key, value);
    }
    const items: TicketJson[] = [];
    for (let next: string | null = ''; next !== null; ) {
      if (next !== '') query.set('cursor', next);
      const answer = await client.ask(`/api/v1/tickets?${query}`);
      if (answer.status >= 300) {
        call.err(refusal(answer));
        return EXIT.faults;
      }
      const page: { items: TicketJson[]; next: string | null } = answer.json();
      if (!call.values.json) for (const ticket of page.items) call.out(lineOf(ticket));
      items.push(...page.items);
      next = page.next;
    }
    if (call.values.json) sayJson(call, { items, next: null });
    return EXIT.done;
  },
};

function lineOf({ id, jobId, name, status, progressPct, quantity, problems }: TicketJson): string {
  const first =
    status === 'Rejected'
      ? `  ${problems.find((problem) => problem.severity === 'error')?.message ?? ''}`
      : '';
  return `${id}  ${bar(progressPct, 10)} ${status.padEnd(10)} ${jobId.padEnd(8)} ${quantity} × ${name}${first}`;
}
