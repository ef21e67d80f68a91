import { type EventType, eventTypes, type LoggedEvent, sentenceOf } from '#libs/flow';
import { asJson, atServer } from '../args.js';
import { type Call, type Command, EXIT } from '../command.js';
import { readEvents } from '../event-stream.js';
import { Client, refusal } from '../http-client.js';
import { LiveView } from '../live-view.js';
import type { TicketJson } from '../shapes.js';
import { askOfTicket } from '../ticket-named.js';

/** An event in its envelope (CloudEvents 1.0). */
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
    const [named] = call.args;
    const found = named === undefined ? undefined : await askOfTicket(call, client, named);
    if (found === null) return EXIT.faults;
    if (found !== undefined && found.status >= 300) {
      call.err(refusal(found));
      return EXIT.faults;
    }
    const ticketId = found?.json<TicketJson>().id ?? null;
    const view = new LiveView(call);
    const query = ticketId === null ? '' : `?ticket=${encodeURIComponent(ticketId)}`;
    for await (const heard of readEvents(client, `/api/v1/events${query}`)) {
      const end =
        heard.kind === 'event'
          ? said(call, view, heard.data, ticketId)
          : ticketId === null
            ? null
            : await look(call, client, view, ticketId);
      if (end !== null) return end;
    }
    return EXIT.noServer;
  },
};

/** How the ticket stands once its events flow: it may have ended before, or while the line was cut. */
async function look(call: Call, client: Client, view: LiveView, ticketId: string): Promise<number | null> {
  const answer = await client.ask(`/api/v1/tickets/${encodeURIComponent(ticketId)}`);
  if (answer.status >= 300) {
    call.err(refusal(answer));
    return EXIT.faults;
  }
  const ticket = answer.json<TicketJson>();
  for (const { id, status, good, planned, unit } of ticket.steps) {
    const key = keyOf(ticketId, id);
    if (isLive(status)) view.step(key, { name: id, status, good, planned, unit });
    else view.drop(key);
  }
  if (!call.values.json) view.line(`${ticket.name}: ${ticket.status}, ${ticket.progressPct} %`);
  return endOf(ticket.status);
}

function said(call: Call, view: LiveView, data: string, ticketId: string | null): number | null {
  const event = JSON.parse(data) as CloudEvent;
  if (call.values.json) call.raw(`${JSON.stringify(event)}\n`);
  else {
    follow(view, event);
    const onlyMovesABar = event.type === 'step.counted' && call.isTerminal;
    view.line(onlyMovesABar ? null : lineOf(event));
  }
  const ends = event.type === 'ticket.statusChanged' && ticketId !== null && event.data.ticket === ticketId;
  return ends ? endOf(String(event.data.to)) : null;
}

const keyOf = (ticket: string | null, step: string): string => `${ticket} ${step}`;

const isLive = (status: string): boolean => !['Waiting', 'Ready', 'Completed', 'Aborted'].includes(status);

/** Keeps the bars by what the event says; only counts carry what is planned. */
function follow(view: LiveView, { type, data }: CloudEvent): void {
  if (data.step === null) return;
  const key = keyOf(data.ticket, data.step);
  if (type === 'step.counted') {
    const [good, planned] = [Number(data.good ?? 0), Number(data.planned ?? 0)];
    view.step(key, { name: nameOf(data), good, planned, unit: String(data.unit ?? '') });
  }
  if (type !== 'step.statusChanged') return;
  const status = String(data.to);
  if (isLive(status)) view.step(key, { name: nameOf(data), status });
  else view.drop(key);
}

const nameOf = ({ step, device }: CloudEvent['data']): string => [device, step].filter(Boolean).join(' ');

function lineOf(event: CloudEvent): string {
  const { type, time, data } = event;
  const { ticket, step, device, ...facts } = data;
  const logged: LoggedEvent = {
    position: Number(event.id),
    type: type as EventType,
    time: Date.parse(time),
    ticketId: ticket,
    stepId: step,
    deviceId: device,
    data: facts,
  };
  // A newer server may tell of what this version has no sentence for.
  const sentence = Object.hasOwn(eventTypes, type) ? sentenceOf(logged) : `${type} ${JSON.stringify(facts)}`;
  return `${time.slice(11, 19)}  ${ticket === null ? '' : `${ticket.slice(-6)}  `}${sentence}`;
}

function endOf(status: string): number | null {
  if (status === 'Completed') return EXIT.done;
  return status === 'Aborted' || status === 'Rejected' ? EXIT.faults : null;
}
