import type { Instant, Problem } from '#libs/kernel';
import type { Notification } from '../elements/notification.js';
import type { Subscription } from '../elements/subscription.js';
import type { MessageBody, MessageKind } from '../messages/index.js';
import type { XmlElement } from '../xml/index.js';

export const families = ['Query', 'Command', 'Signal', 'Response', 'Acknowledge', 'Registration'] as const;
export type Family = (typeof families)[number];

/** What messages of all types may say. Which of it has a meaning depends on the family. */
export interface MessageHead {
  readonly id: string;
  /** The message that this one answers, or the query whose subscription it serves. */
  readonly refId?: string;
  readonly time?: Instant;
  readonly senderId?: string;
  /** Query, Registration. */
  readonly subscription?: Subscription;
  /** Query, Command. */
  readonly acknowledgeUrl?: string;
  /** Signal. */
  readonly channelMode?: 'FireAndForget' | 'Reliable';
  readonly lastRepeat?: boolean;
  /** Response, Acknowledge: 0 where left out. */
  readonly returnCode?: number;
  readonly subscribed?: boolean;
  readonly acknowledged?: boolean;
  /** Response, Acknowledge: the reason in words. */
  readonly notification?: Notification;
}

/** Where a message was found, and what is wrong with it. */
interface Found {
  readonly family: Family;
  readonly type: string;
  readonly element: XmlElement;
  readonly line: number;
  readonly path: string;
  readonly problems: readonly Problem[];
}

/** A message that could be read; its `kind` tells the type of its `body`. An Acknowledge has the kind of a Response. */
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
}

export interface Jmf extends Envelope {
  readonly version: string;
  readonly messages: readonly Message[];
}

export interface NewJmf extends Envelope {
  readonly version?: string;
  readonly messages: readonly (NewMessage | NewOtherMessage)[];
}
