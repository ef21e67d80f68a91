import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Page, type TicketFile, ticketView } from '#libs/flow';
import type { Result } from '#libs/kernel';
import { HttpProblem } from './problem.js';

const MOST_ROWS = 1000;

/** The value, or the refusal as a problem answer. */
export function okOr<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw HttpProblem.from(result.problems);
}

/** A ticket with its revision as the quoted ETag. */
export function withTag(reply: FastifyReply, file: TicketFile): Record<string, unknown> {
  reply.header('etag', `"${file.ticket.revision}"`);
  return ticketView(file);
}

/** The revision of If-Match; null when not given or `*`. A tag that is no revision of ours can't match. */
export function ifMatch(request: FastifyRequest): number | null {
  const tag = request.headers['if-match'];
  if (tag === undefined || tag === '*') return null;
  const revision = /^(?:W\/)?"(\d+)"$/.exec(tag)?.[1];
  return revision === undefined ? -1 : Number(revision);
}

/** How many rows are asked for, 1 to 1,000; `standard` where nothing is said. Throws HttpProblem REQUEST_INVALID. */
export function limitOf(text: string | undefined, standard = 100): number {
  if (text === undefined) return standard;
  const limit = Number(text);
  if (Number.isInteger(limit) && limit >= 1 && limit <= MOST_ROWS) return limit;
  throw new HttpProblem('REQUEST_INVALID', `limit must be a whole number from 1 to ${MOST_ROWS}.`);
}

/** A time in a query; null when left out. */
export function timeOf(name: string, text: string | undefined): number | null {
  if (text === undefined) return null;
  const at = Date.parse(text);
  if (!Number.isNaN(at)) return at;
  throw new HttpProblem(
    'REQUEST_INVALID',
    `${name} must be a time as in RFC 3339, e.g. 2026-01-31T08:00:00Z.`,
  );
}

/** A page as lists answer: items as the outside sees them, and the cursor of the next page or null. */
export function cursorPage<T, V>(page: Page<T>, view: (row: T) => V): { items: V[]; next: string | null } {
  return { items: page.items.map(view), next: page.next };
}

/** The JSON body; an empty body is an empty object. */
export function parseJsonBody(request: FastifyRequest): unknown {
  const bytes = request.body as Buffer | undefined | null;
  if (bytes == null || bytes.length === 0) return {};
  try {
    return JSON.parse(bytes.toString('utf8'));
  } catch (cause) {
    throw new HttpProblem(
      'REQUEST_INVALID',
      `The body is not JSON: ${cause instanceof Error ? cause.message : 'unreadable'}`,
    );
  }
}
