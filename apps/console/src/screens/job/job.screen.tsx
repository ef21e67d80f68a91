import { useEffect, useState } from 'preact/hooks';
import { plant, plantNow } from '../../live/index.js';
import { ProblemList } from '../../parts/problem-list.js';
import type { Ticket } from '../../server/shapes.js';
import { instantOf, timeWords } from '../../time/phrases.js';
import { words } from '../../words/index.js';
import { isOver } from '../../words/steps.js';
import type { Screen } from '../screen.js';
import { ConsumptionTable } from './consumption-table.js';
import { Facts } from './facts.js';
import { Sheets } from './sheets.js';
import { StepList } from './step-list.js';
import { Story } from './story.js';
import { Verbs } from './verbs.js';

function Job({ params }: { params: Readonly<Record<string, string>> }) {
  const id = params.id!;
  const { tickets, devices, watch } = plant();
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    setMissing(false);
    void watch(id).then((found) => setMissing(!found));
  }, [id, watch]);
  const ticket = tickets.value.get(id);
  useEffect(() => {
    document.title = `${ticket?.name ?? id} · ${words.product}`;
  }, [ticket?.name, id]);
  if (ticket === undefined) {
    return (
      <>
        <h1 tabIndex={-1}>{missing ? words.job.missing(id) : words.board.loading}</h1>
        <a href="#/">{words.job.back}</a>
      </>
    );
  }
  return <Told ticket={ticket} devices={devices.value} />;
}

function Told({
  ticket,
  devices,
}: {
  ticket: Ticket;
  devices: ReturnType<typeof plant>['devices']['value'];
}) {
  const t = words.job;
  const refused = ticket.status === 'Rejected';
  const came = instantOf(ticket.created);
  return (
    <article class="job" data-ticket={ticket.id}>
      <header class="job-head">
        <h1 tabIndex={-1}>{ticket.name || ticket.jobId}</h1>
        <Facts ticket={ticket} cameWords={timeWords(came, plantNow.value ?? came)} />
        {!refused && !isOver(ticket.status) && (
          <Verbs ticket={ticket} stepId={null} held={ticket.activation === 'Held'} what={t.theJob} />
        )}
      </header>
      {ticket.problems.length > 0 && (
        <section aria-labelledby="noted-title">
          <h2 id="noted-title">{refused ? t.refusals : t.warnings}</h2>
          <ProblemList problems={ticket.problems} />
        </section>
      )}
      {!refused && <StepList ticket={ticket} devices={devices} />}
      {!refused && <Sheets ticketId={ticket.id} />}
      {!refused && <ConsumptionTable ticketId={ticket.id} revision={ticket.revision} />}
      <Story ticketId={ticket.id} revision={ticket.revision} />
    </article>
  );
}

export const job: Screen = {
  name: 'job',
  match: (path) => {
    const id = /^\/jobs\/([^/]+)$/.exec(path)?.[1];
    return id === undefined ? null : { id: decodeURIComponent(id) };
  },
  Show: Job,
};
