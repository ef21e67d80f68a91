import type { Problem } from '../server/shapes.js';
import { words } from '../words/index.js';

/** Findings as a list: what is wrong, where, and how to mend it. `linkOf` may lead to the field that is meant. */
export function ProblemList({
  problems,
  linkOf,
}: {
  problems: readonly Problem[];
  linkOf?: (problem: Problem) => { text: string; target: string } | null;
}) {
  const t = words.order;
  return (
    <ol class="problems">
      {problems.map((problem, at) => {
        const link = linkOf?.(problem) ?? null;
        const place = [problem.path, problem.line === null ? null : t.line(problem.line)].filter(Boolean);
        return (
          <li key={at} data-severity={problem.severity}>
            <p class="problem-what">{problem.message}</p>
            <p class="problem-where">
              <span class="quiet">{t.where}: </span>
              {link !== null && (
                <button
                  type="button"
                  class="linklike"
                  onClick={() => document.getElementById(link.target)?.focus()}
                >
                  {link.text}
                </button>
              )}
              {link !== null && place.length > 0 && ' '}
              {place.length > 0 ? <code>{place.join(', ')}</code> : link === null && t.whole}
            </p>
            {problem.hint !== null && (
              <p class="problem-hint">
                <span class="quiet">{t.mend}: </span>
                {problem.hint}
              </p>
            )}
          </li>
        );
      })}
    </ol>
  );
}
