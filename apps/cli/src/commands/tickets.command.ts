import { asJson, atServer, type Command, EXIT, text } from '../command.js';
import { Client, refusal } from '../http-client.js';
import { bar, type TicketJson } from '../shapes.js';

export const tickets: Command = {
  name: 'tickets',
  usage: '[--status STATUS] [--q TEXT] [--json] [--server URL] [--token T]',
  summary: 'List the tickets of a server, newest first.',
  options: { ...asJson, ...atServer, status: { type: 'string' }, q: { type: 'string' } },
  takes: [0, 0],
  async run(call) {
    const query = new URLSearchParams({ limit: '1000' });
    for (const key of ['status', 'q']) {
      const value = text(call, key);
      if (value !== undefined) query.set(key, value);
    }
    const answer = await new Client(call).ask(`/api/v1/tickets?${query}`);
    if (answer.status >= 300) {
      call.err(refusal(answer));
      return EXIT.faults;
    }
    const list = answer.json<{ items: TicketJson[] }>();
    if (call.values.json) call.out(JSON.stringify(list, null, 2));
    else for (const ticket of list.items) call.out(lineOf(ticket));
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
