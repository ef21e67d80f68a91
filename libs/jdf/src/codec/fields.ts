import { attributeOf, childElements, element, firstChild, type XmlElement } from '../xml/index.js';
import type { Findings } from './findings.js';
import type { ValueType } from './value-type.js';

/** What one field of a typed view is in the document: an attribute, child elements, or something of its own. */
export interface Field<T, Required extends boolean = boolean> {
  readonly required: Required;
  /** Undefined when absent or faulty; faults go to the findings. */
  read(el: XmlElement, findings: Findings): T | undefined;
  write(value: T): Written;
}

export interface Written {
  readonly attributes?: Readonly<Record<string, string>>;
  readonly children?: readonly XmlElement[];
}

type FieldValue<F> = F extends Field<infer T> ? T : never;
type RequiredKey<F> = { [K in keyof F]: F[K] extends { required: true } ? K : never }[keyof F];

/** The typed view that a set of fields describes: required ones always there, the others optional. */
export type ValueOf<F> = { readonly [K in RequiredKey<F>]: FieldValue<F[K]> } & {
  readonly [K in Exclude<keyof F, RequiredKey<F>>]?: FieldValue<F[K]>;
};

/** Reads and writes one kind of element. */
export interface ElementCodec<T> {
  readonly name: string;
  /** Undefined when something required is missing or wrong. */
  read(el: XmlElement, findings: Findings): T | undefined;
  write(value: T): XmlElement;
}

/** The typed view of an element codec. */
export type Of<C> = C extends ElementCodec<infer T> ? T : never;

export function required<T>(name: string, type: ValueType<T>): Field<T, true> {
  return {
    required: true,
    read(el, findings) {
      const value = attributeOf(el, name);
      if (value !== undefined) return readValue(el, name, value, type, findings);
      findings.missing(el, `attribute ${name}`);
      return undefined;
    },
    write: (value) => ({ attributes: { [name]: type.write(value) } }),
  };
}

export function optional<T>(name: string, type: ValueType<T>): Field<T, false> {
  return {
    required: false,
    read(el, findings) {
      const value = attributeOf(el, name);
      return value === undefined ? undefined : readValue(el, name, value, type, findings);
    },
    write: (value) => ({ attributes: { [name]: type.write(value) } }),
  };
}

function readValue<T>(
  el: XmlElement,
  name: string,
  value: string,
  type: ValueType<T>,
  findings: Findings,
): T | undefined {
  const read = type.read(value);
  if (read === undefined) findings.wrong(el, name, value, type.expects);
  return read;
}

/** The first child element of a kind. */
export function child<T>(codec: ElementCodec<T>): Field<T, false> {
  return {
    required: false,
    read(el, findings) {
      const found = firstChild(el, codec.name);
      return found === undefined ? undefined : codec.read(found, findings);
    },
    write: (value) => ({ children: [codec.write(value)] }),
  };
}

/** A child element that must be there. */
export function requiredChild<T>(codec: ElementCodec<T>): Field<T, true> {
  return {
    required: true,
    read(el, findings) {
      const found = firstChild(el, codec.name);
      if (found !== undefined) return codec.read(found, findings);
      findings.missing(el, codec.name);
      return undefined;
    },
    write: (value) => ({ children: [codec.write(value)] }),
  };
}

/** All child elements of a kind that can be read; left out where there is none. */
export function children<T>(codec: ElementCodec<T>): Field<readonly T[], false> {
  return {
    required: false,
    read(el, findings) {
      const values: T[] = [];
      for (const found of childElements(el, codec.name)) {
        const value = codec.read(found, findings);
        if (value !== undefined) values.push(value);
      }
      return values.length === 0 ? undefined : values;
    },
    write: (values) => ({ children: values.map(codec.write) }),
  };
}

/** A field found further in: `inside(wrapper, field)` is that field of the first child element named wrapper. */
export function inside<T>(wrapper: string, field: Field<T>): Field<T, false> {
  return {
    required: false,
    read(el, findings) {
      const found = firstChild(el, wrapper);
      return found === undefined ? undefined : field.read(found, findings);
    },
    write(value) {
      const written = field.write(value);
      return { children: [element(wrapper, written.attributes, written.children)] };
    },
  };
}

/** Reads all fields of an element; undefined when a required one is missing or any is wrong. */
export function readFields<F>(fields: F, el: XmlElement, findings: Findings): ValueOf<F> | undefined {
  const before = findings.problems.length;
  const value: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(fields as Record<string, Field<unknown>>)) {
    const read = field.read(el, findings);
    if (read !== undefined) value[key] = read;
  }
  return findings.problems.length > before || findings.full ? undefined : (value as ValueOf<F>);
}

export function writeFields<F>(fields: F, value: ValueOf<F>): Required<Written> {
  const attributes: Record<string, string> = {};
  const made: XmlElement[] = [];
  for (const [key, field] of Object.entries(fields as Record<string, Field<unknown>>)) {
    const given = (value as Readonly<Record<string, unknown>>)[key];
    if (given === undefined) continue;
    const written = field.write(given);
    Object.assign(attributes, written.attributes);
    made.push(...(written.children ?? []));
  }
  return { attributes, children: made };
}

export function elementCodec<F>(name: string, fields: F): ElementCodec<ValueOf<F>> {
  return {
    name,
    read: (el, findings) => readFields(fields, el, findings),
    write(value) {
      const written = writeFields(fields, value);
      return element(name, written.attributes, written.children);
    },
  };
}
