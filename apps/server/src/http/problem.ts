import { type Code, codes, type Problem } from '#libs/kernel';

/** An answer in the form of RFC 9457. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance: string;
  readonly code: Code;
  readonly remedy: string;
  readonly problems?: readonly Problem[];
}

/** Media type of RFC 9457. */
export const PROBLEM_TYPE = 'application/problem+json';

/** Thrown by a controller to answer with a problem; the filter writes it. */
export class HttpProblem extends Error {
  constructor(
    readonly code: Code,
    readonly detail: string,
    readonly problems: readonly Problem[] = [],
    readonly status: number = codes[code].http,
    readonly headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
    this.name = 'HttpProblem';
  }

  /** The first error among the problems gives the answer its code and its status. */
  static from(problems: readonly Problem[], status?: number): HttpProblem {
    const first = problems.find((p) => p.severity === 'error') ?? problems[0]!;
    return new HttpProblem(first.code, first.message, problems, status ?? codes[first.code].http);
  }
}

/** The body of a problem answer (RFC 9457); `instance` is the path that was asked for. */
export function problemDocument(problem: HttpProblem, instance: string): ProblemDocument {
  const row = codes[problem.code];
  return {
    type: `https://sidelay.invalid/errors#${problem.code}`,
    title: row.title,
    status: problem.status,
    detail: problem.detail,
    instance,
    code: problem.code,
    remedy: row.remedy,
    ...(problem.problems.length > 0 ? { problems: problem.problems } : {}),
  };
}
