import { StateMark } from '../../parts/state-mark.js';
import { jobAddress } from '../../route.js';
import type { Device } from '../../server/shapes.js';
import { BeadsDrawing } from '../../strip/beads-drawing.js';
import type { Strip } from '../../strip/lay-strips.js';
import { words } from '../../words/index.js';
import { ticketStatus } from '../../words/steps.js';
import { currentWork, dueWords } from './current-work.js';

/** A strip for a phone: the same facts in a column, the steps as beads instead of on the time line. */
export function JobCard({
  strip,
  devices,
  nowMs,
}: {
  strip: Strip;
  devices: readonly Device[];
  nowMs: number;
}) {
  const { ticket } = strip;
  const work = currentWork(strip, devices, nowMs);
  return (
    <li class="card" data-ticket={ticket.id} data-late={strip.lateS > 0}>
      <a class="card-name" href={jobAddress(ticket.id)}>
        {ticket.name}
      </a>
      <p class="card-state">
        <StateMark status={ticketStatus(ticket)} of="step" />
        <span class="quiet">{words.board.pctDone(ticket.progressPct)}</span>
      </p>
      {ticket.steps.length > 0 && <BeadsDrawing ticket={ticket} />}
      {work.where !== '' && (
        <p class="card-where">
          <strong>{work.where}</strong>
          {work.detail !== '' && <span>, {work.detail},</span>}
          <span> {work.since}</span>
          {work.source !== '' && <span class="quiet">, {work.source}</span>}
        </p>
      )}
      {work.waits !== '' && <p class="card-waits">{work.waits}</p>}
      <p class="card-due">
        <span class={strip.lateS > 0 ? 'late-flag' : undefined}>{dueWords(strip, nowMs)}</span>
        <span class="quiet">
          {ticket.jobId}, {words.board.copies(ticket.quantity)}
        </span>
      </p>
    </li>
  );
}
