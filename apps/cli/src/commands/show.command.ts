import { asJson, atServer } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { Client, refusal } from '../http-client.js';
import { sayJson } from '../output.js';
import { sayProblem } from '../say-problems.js';
import { bar, type StepJson, stepPct, type TicketJson } from '../shapes.js';
import { askOfTicket } from '../ticket-named.js';

export const show: Command = {
  name: 'show',
  usage: 'TICKET [--json] [--server URL] [--token T]',
  summary: 'One ticket with its steps: where it is, what is counted, what it waits for.',
  options: { ...asJson, ...atServer },
  takes: [1, 1],
  async run(call) {
    const answer = await askOfTicket(call, new Client(call), call.args[0]!);
    if (answer === null) return EXIT.faults;
    if (answer.status >= 300) {
      call.err(refusal(answer));
      return EXIT.faults;
    }
    const ticket = answer.json<TicketJson>();
    if (call.values.json) {
      sayJson(call, ticket);
      return EXIT.done;
    }
    const held = ticket.activation === 'Held' ? ', held' : '';
    call.out(
      `${ticket.name} (${ticket.jobId}), ${ticket.quantity} copies: ${ticket.status}${held}, ${ticket.progressPct} %`,
    );
    for (const step of ticket.steps) call.out(`  ${stepLine(step)}`);
    for (const problem of ticket.problems) call.out(`  ${sayProblem(ticket.name, problem)}`);
    return EXIT.done;
  },
};

function stepLine(step: StepJson): string {
  const details = step.statusDetails === null ? '' : ` (${step.statusDetails})`;
  const waits = step.waitsFor === null ? '' : `  ${step.waitsFor}`;
  const counts = `${step.good}/${step.planned} ${step.unit}, ${step.waste} waste`;
  return `${step.id.padEnd(10)} ${bar(stepPct(step), 10)} ${(step.device ?? '').padEnd(13)} ${`${step.status}${details}`.padEnd(24)} ${counts}${waits}`;
}
