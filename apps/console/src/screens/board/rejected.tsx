import { plantNow } from '../../live/index.js';
import { StateMark } from '../../parts/state-mark.js';
import { jobAddress } from '../../route.js';
import type { Ticket } from '../../server/shapes.js';
import { agoWords, instantOf } from '../../time/phrases.js';
import { words } from '../../words/index.js';

/** Documents that were refused, the newest first, each with its first reason. */
export function Rejected({ tickets }: { tickets: readonly Ticket[] }) {
  const t = words.board;
  if (tickets.length === 0) return null;
  const newest = [...tickets].sort((a, b) => (a.created < b.created ? 1 : -1));
  return (
    <section class="rejected" aria-labelledby="rejected-title">
      <h2 id="rejected-title">{t.rejected}</h2>
      <ul>
        {newest.map((ticket) => {
          const first = ticket.problems.find((problem) => problem.severity === 'error') ?? ticket.problems[0];
          const came = instantOf(ticket.created);
          return (
            <li key={ticket.id} data-ticket={ticket.id}>
              <p>
                <StateMark status="Rejected" of="step" />{' '}
                <a href={jobAddress(ticket.id)}>{ticket.name || ticket.jobId || ticket.id}</a>{' '}
                <span class="quiet">
                  {t.rejectedBy(ticket.intake, agoWords(came, plantNow.value ?? came))}
                </span>
              </p>
              <p class="rejected-why">
                {first?.message ?? t.noReason} {first?.path != null && <code>{first.path}</code>}
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
