import type { Instant, Problem } from '#libs/kernel';
import type { Employee } from '../elements/device.js';
import type { MessageBody, MessageKind } from '../messages/index.js';
import type { XmlElement } from '../xml/index.js';
import type { Family } from './family.js';
import type { MessageHead } from './head.js';

export { type Family, families } from './family.js';
export type { MessageHead } from './head.js';

/** Where a message was found, and what is wrong with it. */
interface Found {
  readonly family: Family;
  readonly type: string;
  readonly element: XmlElement;
  readonly line: number;
  readonly path: string;
  /** Of a message that could be read only warnings: content that the standard does not know. */
  readonly problems: readonly Problem[];
}

/** A message that could be read; its `kind`, family and type in one word, tells the type of its `body`. */
export type MessageOf<K extends MessageKind> = {
  [P in K]: MessageHead & Found & { readonly kind: P; readonly body: MessageBody<P> };
}[K];

/** A message of a type that is not known, or with a fault in it: `problems` says which. */
export interface UnreadMessage extends MessageHead, Found {
  readonly kind: 'unread';
  readonly body: null;
}

export type Message = MessageOf<MessageKind> | UnreadMessage;

/** A message to be written. */
export type NewMessage<K extends MessageKind = MessageKind> = {
  [P in K]: MessageHead & { readonly kind: P; readonly body: MessageBody<P> };
}[K];

/** A message to be written whose type is not one of ours: the answer to a message nobody knows. */
export interface NewOtherMessage extends MessageHead {
  readonly kind: 'other';
  readonly family: Family;
  readonly type: string;
}

interface Envelope {
  readonly senderId: string;
  /** Whom it is for; left out: whoever gets it. */
  readonly deviceId?: string;
  readonly timeStamp: Instant;
  readonly maxVersion?: string;
  readonly responseUrl?: string;
  readonly agentName?: string;
  readonly agentVersion?: string;
  readonly icsVersions?: readonly string[];
  /** Who had it sent. */
  readonly employees?: readonly Employee[];
}

export interface Jmf extends Envelope {
  readonly version: string;
  readonly messages: readonly Message[];
}

export interface NewJmf extends Envelope {
  readonly version?: string;
  readonly messages: readonly (NewMessage | NewOtherMessage)[];
}
