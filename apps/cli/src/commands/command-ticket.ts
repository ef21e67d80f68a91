import { asJson, atServer, text } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { Client, refusal } from '../http-client.js';
import { sayJson } from '../output.js';
import type { TicketJson } from '../shapes.js';
import { askOfTicket } from '../ticket-named.js';

/** hold, resume and abort are one command with three names. */
function ticketCommand(name: 'hold' | 'resume' | 'abort', summary: string): Command {
  return {
    name,
    usage: 'TICKET [--step ID] [--json] [--server URL] [--token T]',
    summary,
    options: { ...asJson, ...atServer, step: { type: 'string' } },
    takes: [1, 1],
    async run(call) {
      const step = text(call, 'step');
      const at = step === undefined ? '' : `/steps/${encodeURIComponent(step)}`;
      const init = { method: 'POST' };
      const answer = await askOfTicket(call, new Client(call), call.args[0]!, `${at}/${name}`, init);
      if (answer === null) return EXIT.faults;
      if (answer.status >= 300) {
        call.err(refusal(answer));
        return EXIT.faults;
      }
      const ticket = answer.json<TicketJson>();
      if (call.values.json) sayJson(call, ticket);
      else call.out(stateOf(ticket, step));
      return EXIT.done;
    },
  };
}

/** How what was commanded stands now: the step if one was named, else the ticket. */
function stateOf(ticket: TicketJson, stepId: string | undefined): string {
  const step = ticket.steps.find(({ id }) => id === stepId);
  const { status, activation } = step ?? ticket;
  const name = step === undefined ? ticket.name : `${ticket.name}, ${step.id}`;
  return `${name}: ${status}${activation === 'Held' ? ', held' : ''}`;
}

export const hold = ticketCommand(
  'hold',
  'Hold a ticket or a step: what has not begun waits; what runs, runs on.',
);
export const resume = ticketCommand('resume', 'Release what was held or refused.');
export const abort = ticketCommand('abort', 'End a ticket or a step for good.');
