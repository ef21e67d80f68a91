import { plantNow } from '../../live/index.js';
import { StateMark } from '../../parts/state-mark.js';
import type { Device, Step, Ticket } from '../../server/shapes.js';
import { instantOf, spanWords, timeWords, withTimes } from '../../time/phrases.js';
import { words } from '../../words/index.js';
import { detailWords, isOver, stepStatus, stepWords } from '../../words/steps.js';
import { Bench } from './bench.js';
import { Verbs } from './verbs.js';

export function StepList({ ticket, devices }: { ticket: Ticket; devices: readonly Device[] }) {
  return (
    <section aria-labelledby="steps-title">
      <h2 id="steps-title">{words.job.steps}</h2>
      <ol class="steps">
        {ticket.steps.map((step) => (
          <StepRow
            key={step.id}
            ticket={ticket}
            step={step}
            device={devices.find((device) => device.id === step.device)}
          />
        ))}
      </ol>
    </section>
  );
}

function StepRow({ ticket, step, device }: { ticket: Ticket; step: Step; device: Device | undefined }) {
  const t = words.job;
  const over = isOver(step.status);
  const caution = over ? undefined : words.caution[device?.kind ?? ''];
  return (
    <li class="step" data-step={step.id} data-state={step.status}>
      <h3>
        {words.board.on(stepWords(step), device?.name ?? step.device ?? '')}{' '}
        <span class="quiet">{step.id}</span>
      </h3>
      <p class="step-state">
        <StateMark status={stepStatus(step)} of="step" />
        {step.statusDetails !== null && <span> {detailWords(step.statusDetails)}</span>}
        <Since step={step} />
      </p>
      {step.waitsFor !== null && !over && (
        <p class="step-waits">{withTimes(step.waitsFor, plantNow.value ?? 0)}</p>
      )}
      <p class="step-counts">
        <span>
          <b>{words.count(step.good)}</b> {t.good}
        </span>
        <span>
          <b>{words.count(step.waste)}</b> {t.waste}
        </span>
        {step.samples > 0 && (
          <span>
            <b>{words.count(step.samples)}</b> {t.samples}
          </span>
        )}
        <span class="quiet">{t.of(step.planned, step.unit)}</span>
        <span class="quiet">{t.times(spanWords(step.setupS), spanWords(step.runS))}</span>
        {step.after.length > 0 && <span class="quiet">{t.after(step.after.join(', '))}</span>}
      </p>
      {caution !== undefined && <p class="caution">{caution}</p>}
      {!over && device?.driver === 'bench' && <Bench ticket={ticket} step={step} />}
      {!over && !isOver(ticket.status) && (
        <Verbs
          ticket={ticket}
          stepId={step.id}
          held={step.activation === 'Held'}
          what={t.stepNamed(step.id)}
        />
      )}
    </li>
  );
}

function Since({ step }: { step: Step }) {
  const at = step.end ?? step.since ?? step.start;
  if (at === null) return null;
  const now = plantNow.value ?? instantOf(at);
  const ms = instantOf(at);
  const told =
    step.end !== null
      ? words.board.done(timeWords(ms, now))
      : words.board.since(timeWords(ms, now), spanWords((now - ms) / 1000));
  return (
    <span class="quiet">
      , {told}
      {step.source !== null && `, ${words.source[step.source] ?? step.source}`}
    </span>
  );
}
