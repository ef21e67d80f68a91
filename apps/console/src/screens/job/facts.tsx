import { plantNow } from '../../live/index.js';
import { StateMark } from '../../parts/state-mark.js';
import type { Ticket } from '../../server/shapes.js';
import { instantOf, timeWords } from '../../time/phrases.js';
import { words } from '../../words/index.js';
import { detailWords, ticketStatus } from '../../words/steps.js';

export function Facts({ ticket, cameWords }: { ticket: Ticket; cameWords: string }) {
  const t = words.job;
  const due = ticket.due === null ? null : instantOf(ticket.due);
  return (
    <dl class="facts" aria-label={t.facts}>
      <div>
        <dt>{t.status}</dt>
        <dd>
          <StateMark status={ticketStatus(ticket)} of="step" />
          {ticket.statusDetails !== null && <span class="quiet"> {detailWords(ticket.statusDetails)}</span>}
        </dd>
      </div>
      <div>
        <dt>{t.progress}</dt>
        <dd>{Math.round(ticket.progressPct)} %</dd>
      </div>
      <div>
        <dt>{t.copies}</dt>
        <dd>{words.count(ticket.quantity)}</dd>
      </div>
      <div>
        <dt>{t.due}</dt>
        <dd>{due === null ? words.board.noDue : timeWords(due, plantNow.value ?? due)}</dd>
      </div>
      {ticket.customer !== null && (
        <div>
          <dt>{t.customer}</dt>
          <dd>{ticket.customer}</dd>
        </div>
      )}
      <div>
        <dt>{t.cameIn}</dt>
        <dd>
          {cameWords} <span class="quiet">{ticket.intake}</span>
        </dd>
      </div>
      <div>
        <dt>{words.order.fields.jobId}</dt>
        <dd>
          {ticket.jobId} <span class="quiet">{t.revision(ticket.revision)}</span>
        </dd>
      </div>
    </dl>
  );
}
