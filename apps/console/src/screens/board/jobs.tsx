import { signal } from '@preact/signals';
import { plantNow } from '../../live/index.js';
import { narrow, remPx, useWidth } from '../../look/width.js';
import type { Device, Ticket } from '../../server/shapes.js';
import { AxisDrawing } from '../../strip/axis-drawing.js';
import { layStrips, type Strip } from '../../strip/lay-strips.js';
import { StripDrawing } from '../../strip/strip-drawing.js';
import { type SpanChoice, spanChoices, windowFor } from '../../strip/time-axis.js';
import { words } from '../../words/index.js';
import { isOver } from '../../words/steps.js';
import { JobCard } from './job-card.js';
import { orderStrips } from './order-strips.js';
import { StripHead } from './strip-head.js';
import { StripKey } from './strip-key.js';

const choice = signal<SpanChoice>('fit');

/** Every live job as one strip on the common time line, the most pressing first; behind them what was done lately. */
export function Jobs({
  tickets,
  devices,
  loaded,
}: {
  tickets: readonly Ticket[];
  devices: readonly Device[];
  loaded: boolean;
}) {
  const t = words.board;
  const known = tickets.filter((ticket) => ticket.status !== 'Rejected');
  const now = plantNow.value;
  if (now === null) return <p class="quiet">{t.loading}</p>;
  const strips = orderStrips(layStrips(known, now));
  const live = strips.filter((strip) => !isOver(strip.ticket.status));
  return (
    <section class="jobs" aria-labelledby="jobs-title">
      <div class="jobs-top">
        <h2 id="jobs-title">{t.jobs}</h2>
        {!narrow.value && <SpanChooser />}
      </div>
      {live.length === 0 && (
        <p class="quiet">
          {loaded ? `${t.noJobs} ` : t.loading}
          {loaded && <a href="#/new">{t.noJobsHint}</a>}
        </p>
      )}
      {narrow.value ? (
        <ul class="cards">
          {strips.map((strip) => (
            <JobCard key={strip.ticket.id} strip={strip} devices={devices} nowMs={now} />
          ))}
        </ul>
      ) : (
        <TimeLine strips={strips} devices={devices} nowMs={now} />
      )}
      {!narrow.value && strips.length > 0 && <StripKey />}
    </section>
  );
}

function TimeLine({
  strips,
  devices,
  nowMs,
}: {
  strips: readonly Strip[];
  devices: readonly Device[];
  nowMs: number;
}) {
  const [place, width] = useWidth<HTMLDivElement>();
  const rem = remPx();
  const ends = strips.filter((strip) => !isOver(strip.ticket.status)).map((strip) => strip.endMs ?? nowMs);
  const window = windowFor(choice.value, nowMs, Math.max(nowMs, ...ends));
  return (
    <div class="time-line" ref={place}>
      {width > 0 && (
        <>
          <AxisDrawing window={window} width={width} rem={rem} nowMs={nowMs} />
          <ol class="strips">
            {strips.map((strip) => (
              <li
                key={strip.ticket.id}
                class="strip"
                data-ticket={strip.ticket.id}
                data-late={strip.lateS > 0}
              >
                <StripHead strip={strip} devices={devices} nowMs={nowMs} />
                <StripDrawing strip={strip} window={window} width={width} rem={rem} nowMs={nowMs} />
              </li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
}

function SpanChooser() {
  return (
    <fieldset class="choice">
      <legend>{words.board.span}</legend>
      {spanChoices.map((span) => (
        <label key={span}>
          <input
            type="radio"
            name="span"
            checked={choice.value === span}
            onChange={() => {
              choice.value = span;
            }}
          />
          <span>{words.board.spans[span]}</span>
        </label>
      ))}
    </fieldset>
  );
}
