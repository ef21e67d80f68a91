import { signal } from '@preact/signals';
import { words } from '../words/index.js';
import type { ProblemAnswer } from './shapes.js';

export interface Answered<T> {
  readonly ok: true;
  readonly status: number;
  readonly value: T;
  readonly location: string | null;
}

export interface Denied {
  readonly ok: false;
  /** 0 when no server answered. */
  readonly status: number;
  readonly problem: ProblemAnswer;
  readonly location: string | null;
}

export type Answer<T> = Answered<T> | Denied;
export type Ask = <T>(path: string, options?: AskOptions) => Promise<Answer<T>>;

export interface AskOptions {
  readonly method?: 'GET' | 'POST' | 'DELETE';
  /** Sent as JSON. */
  readonly json?: unknown;
  /** Sent as it is, with this media type. */
  readonly body?: BodyInit;
  readonly mediaType?: string;
}

/** Set by the first answer that wants a token, cleared by a sign-in. */
export const signInWanted = signal(false);

/** Asks the server. Never throws: a refusal, a silent server and an unreadable answer are all values. */
export const ask: Ask = async <T>(path: string, options: AskOptions = {}) => {
  const headers: Record<string, string> = { accept: 'application/json, application/problem+json' };
  let body = options.body;
  if (options.json !== undefined) {
    headers['content-type'] = 'application/json';
    body = JSON.stringify(options.json);
  } else if (options.mediaType !== undefined) headers['content-type'] = options.mediaType;
  try {
    const response = await fetch(path, {
      method: options.method ?? 'GET',
      headers,
      body,
      credentials: 'same-origin',
      cache: 'no-store',
    });
    return await read<T>(path, response);
  } catch {
    return denied(0, null);
  }
};

async function read<T>(path: string, response: Response): Promise<Answer<T>> {
  const { status } = response;
  const location = response.headers.get('location');
  const text = await response.text();
  if (status === 401 && path !== '/api/v1/session') signInWanted.value = true;
  if (response.ok) return { ok: true, status, value: parsed(text) as T, location };
  const problem = parsed(text) as ProblemAnswer | null;
  return { ...denied(status, problem), location };
}

function parsed(text: string): unknown {
  if (text === '') return null;
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function denied(status: number, problem: ProblemAnswer | null): Denied {
  const made = { title: words.link.noAnswer, status, detail: words.link.noAnswerDetail(status), code: '' };
  return { ok: false, status, problem: problem ?? made, location: null };
}
