import { useRef, useState } from 'preact/hooks';
import { plant } from '../../live/index.js';
import { ask } from '../../server/ask.js';
import type { Ticket } from '../../server/shapes.js';
import { words } from '../../words/index.js';

/** Posts a verb of a ticket or a step; the answered ticket is shown at once. Returns why not, or null. */
export async function sendVerb(
  ticketId: string,
  stepId: string | null,
  verb: string,
  body: unknown = {},
): Promise<string | null> {
  const place = stepId === null ? '' : `/steps/${encodeURIComponent(stepId)}`;
  const path = `/api/v1/tickets/${encodeURIComponent(ticketId)}${place}/${verb}`;
  const answer = await ask<Ticket>(path, { method: 'POST', json: body });
  if (!answer.ok) return [answer.problem.detail, answer.problem.remedy].filter(Boolean).join(' ');
  plant().take(answer.value);
  return null;
}

/** Hold or resume, and abort behind a question: what is aborted does not come back. */
export function Verbs({
  ticket,
  stepId,
  held,
  what,
}: {
  ticket: Ticket;
  stepId: string | null;
  held: boolean;
  what: string;
}) {
  const t = words.job;
  const [fault, setFault] = useState('');
  const question = useRef<HTMLDialogElement>(null);
  const send = async (verb: string): Promise<void> => {
    question.current?.close();
    setFault((await sendVerb(ticket.id, stepId, verb)) ?? '');
  };
  const first = held ? 'resume' : 'hold';
  const askId = `abort-${stepId ?? 'job'}`;
  return (
    <div class="verbs">
      <button
        type="button"
        class="act"
        aria-label={t.verbOf(t.verbs[first], what)}
        onClick={() => void send(first)}
      >
        {t.verbs[first]}
      </button>
      <button
        type="button"
        class="act act-grave"
        aria-label={t.verbOf(t.verbs.abort, what)}
        onClick={() => question.current?.showModal()}
      >
        {t.verbs.abort} …
      </button>
      <p class="fault" role="alert">
        {fault}
      </p>
      <dialog ref={question} class="question" aria-labelledby={askId}>
        <h2 id={askId}>{t.abortAsk(what)}</h2>
        <p>{t.abortTell}</p>
        <div class="verbs">
          <button type="button" class="act act-first" onClick={() => question.current?.close()}>
            {t.abortNo}
          </button>
          <button type="button" class="act act-grave" onClick={() => void send('abort')}>
            {t.abortYes}
          </button>
        </div>
      </dialog>
    </div>
  );
}
