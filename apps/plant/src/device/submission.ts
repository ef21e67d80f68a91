import type { QueueSubmission } from '#libs/jdf';
import type { IdSource, Instant } from '#libs/kernel';
import type { Disturbance } from '../behaviours/index.js';
import { type Part, partOf } from '../package/multipart.js';
import type { Profile } from '../profiles/index.js';
import { readWork } from '../ticket/read-work.js';
import type { Work } from '../ticket/work.js';
import { isLive, MOST_ENTRIES } from './queue.js';
import type { DeviceState, Entry } from './state.js';

/** Reads what an http address names; null when it cannot be read. */
export type FetchTicket = (url: string) => Promise<string | null>;

export interface SubmissionDesk {
  readonly state: DeviceState;
  readonly profile: Profile;
  readonly disturbance: Disturbance;
  readonly ids: IdSource;
  readonly fetchTicket: FetchTicket;
  /** Whether this device may send something to an address that a message names. */
  readonly mayReach: (url: string) => boolean;
}

export type Judged<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: number; readonly text: string };

/** Priority of an entry whose submission names none (JDF specification, QueueEntry). */
const LOWEST_PRIORITY = 1;

const no = (code: number, text: string): Judged<never> => ({ ok: false, code, text });

/**
 * Takes a job into the queue or says why not, with the standard's ReturnCode: 112 queue closed or full, 120 ticket cannot
 * be read, 3 not XML, 102 nothing to execute, 116 here already. Starts nothing.
 */
export function takeIn(
  desk: SubmissionDesk,
  submission: QueueSubmission,
  ticket: string | null,
  at: Instant,
): Judged<Entry> {
  const { state, disturbance } = desk;
  const number = ++state.submissions;
  if (state.closed) return no(112, 'The queue is closed.');
  if (state.entries.filter(isLive).length >= MOST_ENTRIES) return no(112, 'The queue is full.');
  const refusal = disturbance.refuses?.(number) ?? null;
  if (refusal !== null) return no(refusal.code, refusal.text);
  if (ticket === null) return no(120, `The ticket at ${submission.url} cannot be read.`);
  const target = submission.returnJmf ?? submission.returnUrl;
  if (target !== undefined && !desk.mayReach(target)) return no(6, `This device cannot reach ${target}.`);
  const work = workIn(desk, ticket, null);
  if (!work.ok) return work;
  const entry = newEntry(desk, submission, ticket, work.value, at);
  state.entries.push(entry);
  return { ok: true, value: entry };
}

/** The work in a ticket, unless another live entry has the same JobID and JobPartID. */
export function workIn(desk: SubmissionDesk, ticket: string, replaced: Entry | null): Judged<Work> {
  const read = readWork(ticket, desk.profile);
  if (!read.ok) return read;
  const { jobId, jobPartId } = read.work;
  const twin = desk.state.entries.find(
    (entry) =>
      entry !== replaced && isLive(entry) && entry.work.jobId === jobId && entry.work.jobPartId === jobPartId,
  );
  return twin === undefined
    ? { ok: true, value: read.work }
    : no(116, `Job ${jobId}, part ${jobPartId} is in the queue already as ${twin.id}.`);
}

function newEntry(
  { state, ids }: SubmissionDesk,
  submission: QueueSubmission,
  ticket: string,
  work: Work,
  at: Instant,
): Entry {
  return {
    id: ids.next(),
    status: submission.hold === true ? 'Held' : 'Waiting',
    priority: submission.priority ?? LOWEST_PRIORITY,
    order: state.orders++,
    submitted: at,
    start: null,
    end: null,
    returnJmf: submission.returnJmf ?? null,
    returnUrl: submission.returnUrl ?? null,
    ticket,
    work,
    run: null,
    endStatus: null,
  };
}

/** The text of the ticket that a URL names: a part of the same package, or something to be fetched. */
export async function ticketAt(
  desk: SubmissionDesk,
  url: string,
  parts: readonly Part[],
): Promise<string | null> {
  if (/^cid:/i.test(url)) {
    const part = partOf(parts, url);
    return part === null ? null : Buffer.from(part.bytes).toString('utf8');
  }
  return /^https?:/i.test(url) && desk.mayReach(url) ? desk.fetchTicket(url) : null;
}
