import { childElements, element, firstChild, text, textOf, type XmlElement } from '../xml/index.js';
import type { Field } from './fields.js';
import { selfContained } from './self-contained.js';

/** All child elements that fit, as they stand in the document: content that has no typed view here. */
export function kept(fits: (local: string) => boolean): Field<readonly XmlElement[], false> {
  return {
    required: false,
    place: { kind: 'kept', fits },
    read(el) {
      const found = childElements(el).filter(({ local }) => fits(local));
      return found.length === 0 ? undefined : found;
    },
    write: (found) => ({ children: found.map(selfContained) }),
  };
}

/** The first child element that fits, as it stands. */
export function keptOne(fits: (local: string) => boolean): Field<XmlElement, false> {
  return {
    required: false,
    place: { kind: 'kept', fits },
    read: (el) => childElements(el).find(({ local }) => fits(local)),
    write: (found) => ({ children: [selfContained(found)] }),
  };
}

/** Names for `kept`: these. */
export function named(...names: readonly string[]): (local: string) => boolean {
  return (local) => names.includes(local);
}

/** Names for `kept`: all but these. */
export function notNamed(...names: readonly string[]): (local: string) => boolean {
  return (local) => !names.includes(local);
}

/** The text of the first child element of this name. */
export function textChild(name: string): Field<string, false> {
  return {
    required: false,
    place: { kind: 'kept', fits: (local) => local === name },
    read(el) {
      const found = firstChild(el, name);
      return found === undefined ? undefined : textOf(found);
    },
    write: (value) => ({ children: [element(name, {}, [text(value)])] }),
  };
}
