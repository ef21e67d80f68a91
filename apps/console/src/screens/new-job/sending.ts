import { signal } from '@preact/signals';
import { plant } from '../../live/index.js';
import { type AskOptions, ask } from '../../server/ask.js';
import type { Problem, Ticket } from '../../server/shapes.js';

export interface Outcome {
  /** Taken in, else null. */
  readonly ticket: Ticket | null;
  readonly title: string;
  readonly problems: readonly Problem[];
  /** Id under which a refused document is kept, when it is. */
  readonly keptId: string | null;
}

/** What the server said to the last document, whatever way it was brought. */
export const outcome = signal<Outcome | null>(null);
export const sending = signal(false);

/** Sends one document. The answer is shown and the reader is led to it. */
export async function sendDocument(options: AskOptions): Promise<void> {
  if (sending.value) return;
  sending.value = true;
  outcome.value = null;
  const answer = await ask<Ticket>('/api/v1/tickets', { ...options, method: 'POST' });
  sending.value = false;
  const keptId = answer.location?.split('/').at(-1) ?? null;
  if (answer.ok) {
    plant().take(answer.value);
    outcome.value = { ticket: answer.value, title: '', problems: answer.value.problems, keptId };
    return;
  }
  const { problem } = answer;
  const alone: Problem = {
    severity: 'error',
    code: problem.code as Problem['code'],
    line: null,
    path: null,
    message: problem.detail,
    hint: problem.remedy ?? null,
  };
  outcome.value = { ticket: null, title: problem.title, problems: problem.problems ?? [alone], keptId };
}
