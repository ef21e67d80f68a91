import {
  child,
  type ElementCodec,
  type Fields,
  type Findings,
  readFields,
  requiredChild,
  type ValueOf,
  writeFields,
} from '../codec/index.js';
import { notification } from '../elements/notification.js';
import { queueFilter } from '../elements/queue.js';
import { firstChild, type XmlElement } from '../xml/index.js';

/** What a message of one family and type carries. */
export interface Content<B> {
  /** What is in the message element beside its head. */
  readonly fields: Fields;
  /** Undefined when something required is missing or wrong; the findings say what. */
  read(message: XmlElement, findings: Findings): B | undefined;
  /** For a receiver of this version of the standard. */
  write(body: B, version?: string): readonly XmlElement[];
}

export type BodyOf<C> = C extends Content<infer B> ? B : never;

/** Child elements of the message, each a field of the body. */
export function content<F>(fields: F): Content<ValueOf<F>> {
  return {
    fields: fields as Fields,
    read: (message, findings) => readFields(fields, message, findings),
    write: (body) => writeFields(fields, body).children,
  };
}

/** The body is one child element that must be there. */
export function only<T>(codec: ElementCodec<T>): Content<T> {
  const field = requiredChild(codec);
  return {
    fields: { params: field },
    read: (message, findings) => field.read(message, findings),
    write: (body) => [codec.write(body)],
  };
}

/** The body is one child element that may be left out: then its fields are all absent. */
export function perhaps<T>(codec: ElementCodec<T>, absent: T): Content<T> {
  return {
    fields: { params: child(codec) },
    read(message, findings) {
      const found = firstChild(message, codec.name);
      return found === undefined ? absent : codec.read(found, findings);
    },
    write: (body) => [codec.write(body)],
  };
}

/** The body is one child element that must be there, with fields beside it in the message. */
export function together<T, F>(codec: ElementCodec<T>, fields: F): Content<T & ValueOf<F>> {
  const field = requiredChild(codec);
  return {
    fields: { params: field, ...fields },
    read(message, findings) {
      const params = field.read(message, findings);
      const beside = readFields(fields, message, findings);
      return params && beside && { ...params, ...beside };
    },
    write: (body) => [codec.write(body), ...writeFields(fields, body).children],
  };
}

/** Signals may carry the event that caused them. */
export function signal<F>(fields: F): Content<ValueOf<F & typeof cause>> {
  return content<F & typeof cause>({ ...fields, ...cause });
}

const cause = { notification: child(notification) };

/** How much of the queue the answer shall tell. Until 1.4; later versions leave it to the receiver. */
export const answerFilter = { answerFilter: child(queueFilter) };

/** A message that carries nothing. */
export const nothing: Content<Readonly<Record<string, never>>> = {
  fields: {},
  read: () => ({}),
  write: () => [],
};
