import { useEffect, useRef } from 'preact/hooks';
import { fieldOf } from '../../order/order-draft.js';
import { ProblemList } from '../../parts/problem-list.js';
import { jobAddress } from '../../route.js';
import { words } from '../../words/index.js';
import { outcome } from './sending.js';

/** What came of the last document: the job it became, or all that stands in its way. */
export function Outcome() {
  const t = words.order;
  const place = useRef<HTMLDivElement>(null);
  const shown = outcome.value;
  useEffect(() => {
    if (shown !== null) place.current?.focus();
  }, [shown]);
  if (shown === null) return null;
  const errors = shown.problems.filter((problem) => problem.severity === 'error').length;
  return (
    <section
      class="outcome"
      ref={place}
      tabIndex={-1}
      aria-labelledby="outcome-title"
      data-ok={shown.ticket !== null}
    >
      <h2 id="outcome-title">{shown.ticket === null ? t.problems(errors) : t.taken}</h2>
      {shown.ticket !== null && (
        <p>
          <a class="act act-first" href={jobAddress(shown.ticket.id)}>
            {t.open(shown.ticket.jobId)}
          </a>
        </p>
      )}
      {shown.problems.length > 0 && (
        <ProblemList
          problems={shown.problems}
          linkOf={(problem) => {
            const field = fieldOf(problem);
            return field === null ? null : { text: t.fields[field], target: fieldId(field) };
          }}
        />
      )}
      {shown.ticket === null && shown.keptId !== null && (
        <p>
          <a href={jobAddress(shown.keptId)}>{t.kept}</a>
        </p>
      )}
    </section>
  );
}

export const fieldId = (name: string): string => `order-${name}`;
