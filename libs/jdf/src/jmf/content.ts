import { type ElementCodec, type Findings, readFields, type ValueOf, writeFields } from '../codec/index.js';
import { firstChild, type XmlElement } from '../xml/index.js';

/** What a message of one family and type carries. */
export interface Content<B> {
  /** Undefined when something required is missing or wrong; the findings say what. */
  read(message: XmlElement, findings: Findings): B | undefined;
  write(body: B): readonly XmlElement[];
}

export type BodyOf<C> = C extends Content<infer B> ? B : never;

/** Child elements of the message, each a field of the body. */
export function content<F>(fields: F): Content<ValueOf<F>> {
  return {
    read: (message, findings) => readFields(fields, message, findings),
    write: (body) => writeFields(fields, body).children,
  };
}

/** The body is one child element that must be there. */
export function only<T>(codec: ElementCodec<T>): Content<T> {
  return {
    read(message, findings) {
      const found = firstChild(message, codec.name);
      if (found !== undefined) return codec.read(found, findings);
      findings.missing(message, codec.name);
      return undefined;
    },
    write: (body) => [codec.write(body)],
  };
}

/** The body is one child element that may be left out: then its fields are all absent. */
export function perhaps<T>(codec: ElementCodec<T>, absent: T): Content<T> {
  return {
    read(message, findings) {
      const found = firstChild(message, codec.name);
      return found === undefined ? absent : codec.read(found, findings);
    },
    write: (body) => [codec.write(body)],
  };
}

/** A message that carries nothing. */
export const nothing: Content<Readonly<Record<string, never>>> = { read: () => ({}), write: () => [] };
