import { asJson, atServer, type Call, type Command, EXIT, NoServer } from '../command.js';
import { readEvents, type SseEvent } from '../event-stream.js';
import { Client, refusal } from '../http-client.js';
import { bar, stepPct, type TicketJson } from '../shapes.js';

interface CloudEvent {
  readonly id: string;
  readonly type: string;
  readonly time: string;
  readonly data: Readonly<Record<string, unknown>> & {
    readonly ticket: string | null;
    readonly step: string | null;
    readonly device: string | null;
  };
}

export const watch: Command = {
  name: 'watch',
  usage: '[TICKET] [--json] [--server URL] [--token T]',
  summary: 'Follow what happens, live; with a ticket until that ticket ends.',
  options: { ...asJson, ...atServer },
  takes: [0, 1],
  async run(call) {
    const client = new Client(call);
    const ticketId = call.args[0] ?? null;
    if (ticketId !== null) {
      const known = await client.ask(`/api/v1/tickets/${encodeURIComponent(ticketId)}`);
      if (known.status >= 300) {
        call.err(refusal(known));
        return EXIT.faults;
      }
      const ended = endOf(known.json<TicketJson>());
      if (!call.values.json) draw(call, known.json<TicketJson>());
      if (ended !== null) return ended;
    }
    const query = ticketId === null ? '' : `?ticket=${encodeURIComponent(ticketId)}`;
    for await (const event of readEvents(client, `/api/v1/events${query}`)) {
      const end = await show(call, client, event, ticketId);
      if (end !== null) return end;
    }
    throw new NoServer('The server is gone.');
  },
};

async function show(
  call: Call,
  client: Client,
  event: SseEvent,
  ticketId: string | null,
): Promise<number | null> {
  if (call.values.json) call.out(event.data);
  const { type, time, data } = JSON.parse(event.data) as CloudEvent;
  if (!call.values.json && type !== 'stock.moved' && !(ticketId !== null && type === 'step.counted')) {
    call.out(
      `${time.slice(11, 19)}  ${type.padEnd(22)} ${[data.ticket?.slice(0, 8), data.step, data.device].filter(Boolean).join(' ')} ${factsOf(data)}`,
    );
  }
  if (ticketId === null || (type !== 'ticket.statusChanged' && type !== 'step.counted')) return null;
  const ticket = (await client.ask(`/api/v1/tickets/${encodeURIComponent(ticketId)}`)).json<TicketJson>();
  if (!call.values.json) draw(call, ticket);
  return endOf(ticket);
}

function factsOf(data: CloudEvent['data']): string {
  const told = ['to', 'statusDetails', 'good', 'waste', 'reason', 'text', 'name'] as const;
  return told.flatMap((key) => (data[key] == null ? [] : [`${key}=${String(data[key])}`])).join(' ');
}

/** Progress bars, one for each step that has begun; on a terminal in place of the last ones. */
function draw(call: Call, ticket: TicketJson): void {
  const live = ticket.steps.filter((step) => step.status !== 'Waiting' && step.status !== 'Completed');
  const lines = [
    `${bar(ticket.progressPct)} ${String(ticket.progressPct).padStart(5)} %  ${ticket.name}: ${ticket.status}`,
  ];
  for (const step of live)
    lines.push(`  ${bar(stepPct(step))} ${step.id} ${step.status} ${step.good}/${step.planned} ${step.unit}`);
  call.out(lines.join('\n'));
}

function endOf({ status }: TicketJson): number | null {
  if (status === 'Completed') return EXIT.done;
  return status === 'Aborted' || status === 'Rejected' ? EXIT.faults : null;
}
