import { oncePer } from '#libs/kernel';
import {
  attributeOf,
  childElements,
  element,
  firstChild,
  isElement,
  withAttributes,
  type XmlElement,
} from '../xml/index.js';
import type { ElementCodec, Field, Fields, ValueOf, Written } from './field.js';
import type { Findings } from './findings.js';
import { addChild, likeIn, replaceChild, replaceChildren } from './in-place.js';
import { editedChildren, setField } from './set-field.js';
import type { ValueType } from './value-type.js';

export type * from './field.js';

/** An attribute that must be there; a finding where it is not. */
export function required<T>(name: string, type: ValueType<T>): Field<T, true> {
  return {
    ...attribute(name, type),
    required: true,
    read(el, findings) {
      const value = attributeOf(el, name);
      if (value !== undefined) return readValue(el, name, value, type, findings);
      findings.missing(el, `attribute ${name}`);
      return undefined;
    },
  };
}

/** An attribute that may be there; undefined where it is not. */
export function optional<T>(name: string, type: ValueType<T>): Field<T, false> {
  return {
    ...attribute(name, type),
    required: false,
    read(el, findings) {
      const value = attributeOf(el, name);
      return value === undefined ? undefined : readValue(el, name, value, type, findings);
    },
  };
}

function attribute<T>(name: string, type: ValueType<T>): Pick<Field<T>, 'place' | 'write' | 'set'> {
  return {
    place: { kind: 'attribute', name, type },
    write: (value) => ({ attributes: { [name]: type.write(value) } }),
    set: (el, value) => withAttributes(el, { [name]: value === undefined ? undefined : type.write(value) }),
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
    ...oneChild(codec),
    required: false,
    read(el, findings) {
      const found = firstChild(el, codec.name);
      return found === undefined ? undefined : codec.read(found, findings);
    },
  };
}

/** A child element that must be there. */
export function requiredChild<T>(codec: ElementCodec<T>): Field<T, true> {
  return {
    ...oneChild(codec),
    required: true,
    read(el, findings) {
      const found = firstChild(el, codec.name);
      if (found !== undefined) return codec.read(found, findings);
      findings.missing(el, codec.name);
      return undefined;
    },
  };
}

function oneChild<T>(codec: ElementCodec<T>): Pick<Field<T>, 'place' | 'write' | 'set'> {
  return {
    place: { kind: 'child', codec, many: false },
    write: (value) => ({ children: [codec.write(value)] }),
    set(el, value, findings) {
      const found = firstChild(el, codec.name);
      if (value === undefined) return found === undefined ? el : replaceChild(el, found, null);
      if (found === undefined) return addChild(el, likeIn(el, codec.write(value)));
      return replaceChild(el, found, codec.edit?.(found, value, findings) ?? likeIn(el, codec.write(value)));
    },
  };
}

/** All child elements of a kind that can be read; left out where there is none. */
export function children<T>(codec: ElementCodec<T>): Field<readonly T[], false> {
  return {
    required: false,
    place: { kind: 'child', codec, many: true },
    read(el, findings) {
      // Most elements have none of most kinds: nothing is made for those.
      let values: T[] | undefined;
      for (const found of el.children) {
        if (!isElement(found, codec.name, el.uri)) continue;
        const value = codec.read(found, findings);
        if (value === undefined) continue;
        values ??= [];
        values.push(value);
      }
      return values;
    },
    write: (values) => ({ children: values.map(codec.write) }),
    set(el, values = [], findings) {
      // Children that cannot be read are not the field's to change.
      const places = childElements(el, codec.name).filter(
        (found) => codec.read(found, findings) !== undefined,
      );
      return replaceChildren(el, places, editedChildren(codec, el, places, values, findings));
    },
  };
}

/** A field found further in: `inside(wrapper, field)` is that field of the first child element named wrapper. */
export function inside<T>(wrapper: string, field: Field<T>): Field<T, false> {
  return {
    required: false,
    place: { kind: 'inside', wrapper, field },
    read(el, findings) {
      const found = firstChild(el, wrapper);
      return found === undefined ? undefined : field.read(found, findings);
    },
    write(value) {
      const written = field.write(value);
      return { children: [element(wrapper, written.attributes, written.children)] };
    },
    set(el, value, findings) {
      const found = firstChild(el, wrapper);
      if (found !== undefined) return replaceChild(el, found, setField(field, found, value, findings));
      return value === undefined ? el : addChild(el, likeIn(el, this.write(value).children![0]!));
    },
  };
}

const entriesOf = oncePer((fields: Fields) => Object.entries(fields));

/** Reads all fields of an element; undefined when a required one is missing or any is wrong. */
export function readFields<F>(fields: F, el: XmlElement, findings: Findings): ValueOf<F> | undefined {
  const before = findings.problems.length;
  const value: Record<string, unknown> = {};
  for (const [key, field] of entriesOf(fields as Fields)) {
    const read = field.read(el, findings);
    if (read !== undefined) value[key] = read;
  }
  return findings.problems.length > before || findings.full ? undefined : (value as ValueOf<F>);
}

/** The attributes and children that say a value, in the order of its fields. */
export function writeFields<F>(fields: F, value: ValueOf<F>): Required<Written> {
  const attributes: Record<string, string> = {};
  const made: XmlElement[] = [];
  for (const [key, field] of Object.entries(fields as Fields)) {
    const given = (value as Readonly<Record<string, unknown>>)[key];
    if (given === undefined) continue;
    const written = field.write(given);
    Object.assign(attributes, written.attributes);
    made.push(...(written.children ?? []));
  }
  return { attributes, children: made };
}

/** A codec by fields; `fixed` are attributes that are the same in every such element. */
export function elementCodec<F>(
  name: string,
  fields: F,
  fixed: Readonly<Record<string, string>> = {},
): ElementCodec<ValueOf<F>> {
  return {
    name,
    fields: fields as Fields,
    read: (el, findings) => readFields(fields, el, findings),
    write(value) {
      const written = writeFields(fields, value);
      return element(name, { ...fixed, ...written.attributes }, written.children);
    },
    edit: (el, value, findings) => editFields(fields, el, value, findings),
  };
}

/** The element with every field as the value has it; what is equal already, and what no field knows, stays as it is. */
export function editFields<F>(fields: F, el: XmlElement, value: ValueOf<F>, findings: Findings): XmlElement {
  let edited = el;
  for (const [key, field] of Object.entries(fields as Fields)) {
    edited = setField(field, edited, (value as Readonly<Record<string, unknown>>)[key], findings);
  }
  return edited;
}
