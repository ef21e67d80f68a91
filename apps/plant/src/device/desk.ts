import type { Message, MessageBody, MessageKind } from '#libs/jdf';
import type { Instant } from '#libs/kernel';
import type { Part } from '../package/multipart.js';
import type { Machine } from './machine.js';
import type { Speech } from './speech.js';
import type { DeviceState } from './state.js';
import type { SubmissionDesk } from './submission.js';

/** What a device has at hand when it answers. */
export interface Desk extends SubmissionDesk {
  readonly id: string;
  readonly name: string;
  readonly state: DeviceState;
  readonly machine: Machine;
  readonly speech: Speech;
  /** Own JMF address, if it is known. */
  readonly url: string | null;
  readonly now: () => Instant;
}

export interface Asked {
  readonly message: Message;
  /** Parts that came in the same package. */
  readonly parts: readonly Part[];
}

export interface Answer {
  readonly code: number;
  readonly text?: string;
  readonly body?: unknown;
  /** The query opened a channel. */
  readonly subscribed?: boolean;
}

export type Handler = (desk: Desk, asked: Asked) => Answer | Promise<Answer>;

/** The body of a message whose kind the registry has looked up. */
export function bodyOf<K extends MessageKind>(asked: Asked, _kind: K): MessageBody<K> {
  return asked.message.body as unknown as MessageBody<K>;
}
