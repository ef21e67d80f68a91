import { StateMark } from '../../parts/state-mark.js';
import { jobAddress } from '../../route.js';
import type { Device } from '../../server/shapes.js';
import type { Strip } from '../../strip/lay-strips.js';
import { words } from '../../words/index.js';
import { ticketStatus } from '../../words/steps.js';
import { currentWork, dueWords } from './current-work.js';

/** The line above a strip: which job, where, since when, who said so, and how it stands to its due time. */
export function StripHead({
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
    <div class="strip-head">
      <p class="strip-name">
        <a href={jobAddress(ticket.id)}>{ticket.name}</a>
        <span class="quiet"> {ticket.jobId}</span>
      </p>
      <p class="strip-due">
        <span class={strip.lateS > 0 ? 'late-flag' : undefined}>{dueWords(strip, nowMs)}</span>
      </p>
      <p class="strip-where">
        <StateMark status={ticketStatus(ticket)} of="step" />
        {work.where !== '' && <strong>{work.where}</strong>}
        {work.detail !== '' && <span>, {work.detail},</span>}
        {work.since !== '' && <span> {work.since}</span>}
        {work.source !== '' && <span class="quiet">, {work.source}</span>}
      </p>
      <p class="strip-done quiet">
        {words.board.pctDone(ticket.progressPct)}, {words.board.copies(ticket.quantity)}
      </p>
    </div>
  );
}
