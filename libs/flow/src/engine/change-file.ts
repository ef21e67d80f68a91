import { type Code, done, error, type Problem, type Result, refuse } from '#libs/kernel';
import { FileDraft } from '../decide/draft.js';
import type { Decision } from '../ports.js';
import type { TicketFile } from '../state/ticket.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';

/**
 * The usual change: one ticket's file, with the stock it uses, decided on as a whole. `decide` returns a problem to
 * change nothing. A precondition on the revision is checked under the lock.
 */
export async function changeFile(
  ports: EnginePorts,
  ticketId: string,
  decide: (draft: FileDraft) => Problem | null,
  options: { revision?: number | null; lockStock?: boolean } = {},
): Promise<Result<TicketFile>> {
  const known = await ports.store.ticketFile(ticketId);
  if (known === null) return refuse(notFound('NOT_FOUND', ticketId));
  const stock = options.lockStock === false ? [] : [...new Set(known.uses.map((use) => use.item))];
  const { result, work } = await ports.store.change(
    { tickets: [ticketId], stock },
    (slice): Decision<Problem | null> => {
      const file = slice.tickets.get(ticketId);
      if (file === undefined) return { result: notFound('NOT_FOUND', ticketId) };
      if (options.revision != null && options.revision !== file.ticket.revision) {
        return {
          result: error(
            'REVISION_STALE',
            `The ticket is at revision ${file.ticket.revision}, not ${options.revision}.`,
          ),
        };
      }
      const draft = new FileDraft(file, contextOf(ports), slice.balances);
      const problem = decide(draft);
      return problem === null ? { ...draft.change(), result: null } : { result: problem };
    },
  );
  await offerWork(ports, work);
  if (result !== null) return refuse(result);
  return done((await ports.store.ticketFile(ticketId))!);
}

function notFound(code: Code, ticketId: string): Problem {
  return error(code, `There is no ticket ${ticketId}.`, { hint: 'GET /api/v1/tickets lists what there is.' });
}
