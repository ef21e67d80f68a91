import type { XmlElement } from '../xml/index.js';
import type { Findings } from './findings.js';
import type { ValueType } from './value-type.js';

/** Where in the document a field is: an attribute, child elements of a codec, something further in, or elements kept as they are. */
export type Place =
  | { readonly kind: 'attribute'; readonly name: string; readonly type: ValueType<unknown> }
  | { readonly kind: 'child'; readonly codec: ElementCodec<unknown>; readonly many: boolean }
  | { readonly kind: 'inside'; readonly wrapper: string; readonly field: Field<unknown> }
  | { readonly kind: 'kept'; readonly fits: (local: string) => boolean };

/** What one field of a typed view is in the document. */
export interface Field<T, Required extends boolean = boolean> {
  readonly required: Required;
  /** Left out by a field that reads in a way of its own. */
  readonly place?: Place;
  /** Undefined when absent or faulty; faults go to the findings. */
  read(el: XmlElement, findings: Findings): T | undefined;
  write(value: T): Written;
  /**
   * The element with this field changed to a value (undefined: taken out) and all else as it was, also content that the
   * field does not know. Without it, what `write` makes takes the place of what it made of the old value.
   */
  set?(el: XmlElement, value: T | undefined, findings: Findings): XmlElement;
}

export interface Written {
  readonly attributes?: Readonly<Record<string, string>>;
  readonly children?: readonly XmlElement[];
}

/** Fields by the name they have in the typed view. */
export type Fields = Readonly<Record<string, Field<unknown>>>;

type FieldValue<F> = F extends Field<infer T> ? T : never;
type RequiredKey<F> = { [K in keyof F]: F[K] extends { required: true } ? K : never }[keyof F];

/** The typed view that a set of fields describes: required ones always there, the others optional. */
export type ValueOf<F> = { readonly [K in RequiredKey<F>]: FieldValue<F[K]> } & {
  readonly [K in Exclude<keyof F, RequiredKey<F>>]?: FieldValue<F[K]>;
};

/** Reads and writes one kind of element. */
export interface ElementCodec<T> {
  readonly name: string;
  /** Left out where the element is read in a way of its own. */
  readonly fields?: Fields;
  /** Undefined when something required is missing or wrong. */
  read(el: XmlElement, findings: Findings): T | undefined;
  write(value: T): XmlElement;
  /** The element changed to a value, with all that the view does not know. Without it, a new one takes its place. */
  edit?(el: XmlElement, value: T, findings: Findings): XmlElement;
}

/** The typed view of an element codec. */
export type Of<C> = C extends ElementCodec<infer T> ? T : never;
