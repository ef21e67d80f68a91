import type { Problem } from '#libs/kernel';

/** A problem as one or two lines for people: what, where, how to mend it. */
export function sayProblem(file: string, problem: Problem): string {
  const place = [file, problem.line].filter((part) => part !== null).join(':');
  const path = problem.path === null || problem.path === '' ? '' : ` ${problem.path}`;
  const hint = problem.hint === null ? '' : `\n    ${problem.hint}`;
  return `${place}: ${problem.severity} ${problem.code}${path}\n    ${problem.message}${hint}`;
}
