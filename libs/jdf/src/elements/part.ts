import type { ElementCodec, Field } from '../codec/index.js';
import { childElements, element, textOf, type XmlElement } from '../xml/index.js';

/** Which part of a partitioned resource is meant: partition keys with their values. */
export type PartKeys = Readonly<Record<string, string>>;

/** The partition keys of a Part with their values, as written. */
export function keysOf(el: XmlElement): PartKeys {
  const keys: Record<string, string> = {};
  for (const { local, uri, value } of el.attributes) if (uri === '') keys[local] = value;
  return keys;
}

/** A Part: which partition is meant, by its keys. */
export const part: ElementCodec<PartKeys> = {
  name: 'Part',
  read: keysOf,
  write: (keys) => element('Part', keys),
};

/** Words for people: the texts of all Comment elements, one a line. */
export const comment: Field<string, false> = {
  required: false,
  place: { kind: 'kept', fits: (local) => local === 'Comment' },
  read(el) {
    const texts = childElements(el, 'Comment').map((found) => textOf(found).trim());
    return texts.length === 0 ? undefined : texts.join('\n');
  },
  write: (words) => ({ children: [element('Comment', {}, [{ kind: 'text', value: words }])] }),
};
