import {
  type ElementCodec,
  editedChildren,
  type Field,
  type Findings,
  likeIn,
  replaceChildren,
} from '../../codec/index.js';
import { subElements } from '../../partition/index.js';
import { childElements, withChildren, type XmlElement } from '../../xml/index.js';

/**
 * Sub-elements that may stand inline or as references to resources (MediaRef); both read the same, with what a part
 * inherits. Written inline. Changing one that is a reference puts an inline element in its place: the resource belongs to
 * others too.
 */
export function referables<T>(codec: ElementCodec<T>): Field<readonly T[], false> {
  const either = throughReference(codec);
  const read = (el: XmlElement, findings: Findings): readonly T[] =>
    placesOf(el, codec.name).flatMap((place) => either.read(place, findings) ?? []);
  return {
    required: false,
    place: { kind: 'child', codec, many: true },
    read(el, findings) {
      const values = read(el, findings);
      return values.length === 0 ? undefined : values;
    },
    write: (values) => ({ children: values.map(codec.write) }),
    set(el, values = [], findings) {
      const places = placesOf(el, codec.name).filter((one) => either.read(one, findings) !== undefined);
      return replaceChildren(el, places, editedChildren(either, el, places, values, findings));
    },
  };
}

/** The same of a sub-element of which there is one: the first. */
export function referable<T>(codec: ElementCodec<T>): Field<T, false> {
  const all = referables(codec);
  return {
    required: false,
    place: { kind: 'child', codec, many: false },
    read: (el, findings) => all.read(el, findings)?.[0],
    write: (value) => all.write([value]),
    set: (el, value, findings) => all.set!(el, value === undefined ? undefined : [value], findings),
  };
}

function placesOf(el: XmlElement, name: string): XmlElement[] {
  return childElements(el).filter(({ local }) => local === name || local === `${name}Ref`);
}

function throughReference<T>(codec: ElementCodec<T>): ElementCodec<T> {
  return {
    name: codec.name,
    read(el, findings) {
      if (el.local === codec.name) return codec.read(el, findings);
      const [target] = subElements(findings.doc, withChildren(el, [el]), codec.name);
      return target && codec.read(target, findings);
    },
    write: codec.write,
    edit(el, value, findings) {
      const inline = el.local === codec.name ? codec.edit?.(el, value, findings) : undefined;
      return inline ?? likeIn(el, codec.write(value));
    },
  };
}
