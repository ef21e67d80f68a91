import type { Call } from './command.js';
import type { Answer, Client } from './http-client.js';
import type { TicketJson } from './shapes.js';

const pathOf = (id: string): string => `/api/v1/tickets/${encodeURIComponent(id)}`;

/**
 * Asks the server about a ticket that is named by its id, or by its JobID where only one ticket has that; `rest` follows in
 * the path. Null, with the list of them on stderr, where several have it. Where there is none, what the server answers.
 */
export async function askOfTicket(
  call: Pick<Call, 'err'>,
  client: Client,
  name: string,
  rest = '',
  init: RequestInit = {},
): Promise<Answer | null> {
  const answer = await client.ask(`${pathOf(name)}${rest}`, init);
  if (answer.status !== 404) return answer;
  const ofJob = await ticketsOfJob(client, name);
  if (ofJob.length === 0) return answer;
  if (ofJob.length === 1) return client.ask(`${pathOf(ofJob[0]!.id)}${rest}`, init);
  call.err(`${ofJob.length} tickets have the JobID ${name}. Name one by its id:`);
  for (const { id, status, name: title } of ofJob) call.err(`  ${id}  ${status.padEnd(10)} ${title}`);
  return null;
}

async function ticketsOfJob(client: Client, jobId: string): Promise<readonly TicketJson[]> {
  const found: TicketJson[] = [];
  const query = new URLSearchParams({ q: jobId, limit: '200' });
  for (let next: string | null = ''; next !== null; ) {
    if (next !== '') query.set('cursor', next);
    const answer = await client.ask(`/api/v1/tickets?${query}`);
    if (answer.status >= 300) return found;
    const page: { items: TicketJson[]; next: string | null } = answer.json();
    found.push(...page.items.filter((ticket) => ticket.jobId === jobId));
    next = page.next;
  }
  return found;
}
