import type { Jmf, MessageBody, MessageKind, MessageOf } from '#libs/jdf';
import type { Code, Problem, Result } from '#libs/kernel';
import type { EnginePorts } from '../engine/ports.js';
import type { Incoming } from '../engine/take-in.js';

/** The document that a message points to, however it came. */
export type Fetched = Pick<Incoming, 'bytes' | 'sha256' | 'mediaType' | 'name' | 'ticket' | 'problems'>;

/** What a handler is given beside its message. */
export interface Reception {
  readonly ports: EnginePorts;
  readonly envelope: Omit<Jmf, 'messages'>;
  /** The DeviceID that the caller's token speaks for; null when the caller may speak for any. */
  readonly tokenDevice: string | null;
  /** Reads what a URL names: a part of the same package, or an address that the guard lets pass. */
  readonly fetch: (url: string) => Promise<Result<Fetched>>;
}

/** How a message is answered. The answer's body is that of `Response` + the message's type. */
export type Answer =
  | { readonly ok: true; readonly body?: unknown; readonly text?: string }
  | { readonly ok: false; readonly code: Code; readonly text: string; readonly body?: unknown };

export type Handler<K extends MessageKind = MessageKind> = (
  message: MessageOf<K>,
  reception: Reception,
) => Promise<Answer>;

/** A handler with the kind it serves, so that a registry line says which message it is for. */
export interface Registered {
  readonly kind: MessageKind;
  readonly handle: Handler;
}

/** Registers a handler for a kind of message. */
export function on<K extends MessageKind>(kind: K, handle: Handler<K>): Registered {
  return { kind, handle: handle as unknown as Handler };
}

/** The answer to a message of this type; the compiler checks the body against the standard's response. */
export function answer<K extends Extract<MessageKind, `Response${string}`>>(
  _kind: K,
  body: MessageBody<K>,
): Answer {
  return { ok: true, body };
}

export const ok: Answer = { ok: true };

/** A refusal with its code; the code table has the ReturnCode. */
export function no(code: Code, text: string): Answer {
  return { ok: false, code, text };
}

/** A refusal for problems: the code of the first error, the words of all. */
export function noBecause(problems: readonly Problem[]): Answer {
  const first = problems.find((problem) => problem.severity === 'error') ?? problems[0]!;
  return no(
    first.code,
    problems
      .filter((p) => p.severity === 'error')
      .map(inWords)
      .join(' '),
  );
}

function inWords(problem: Problem): string {
  const where = [problem.line === null ? '' : `line ${problem.line}`, problem.path ?? '']
    .filter((part) => part !== '')
    .join(', ');
  return where === '' ? problem.message : `${problem.message} (${where})`;
}

/** Who speaks: the device that the message names, else the sender. A token of one device can't speak for another. */
export function speaker(
  reception: Reception,
  deviceId: string | undefined,
): { readonly ok: true; readonly deviceId: string } | { readonly ok: false; readonly answer: Answer } {
  const name = deviceId ?? reception.envelope.senderId;
  if (reception.tokenDevice !== null && reception.tokenDevice !== name) {
    return {
      ok: false,
      answer: no('FORBIDDEN', `This token speaks for ${reception.tokenDevice}, not for ${name}.`),
    };
  }
  return { ok: true, deviceId: name };
}
