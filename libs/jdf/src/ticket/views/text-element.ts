import type { ElementCodec } from '../../codec/index.js';
import { element, text, textOf, withChildren } from '../../xml/index.js';

/** An element that only holds text. */
export function textElement(name: string): ElementCodec<string> {
  return {
    name,
    read: textOf,
    write: (value) => element(name, {}, [text(value)]),
    edit: (el, value) => withChildren(el, [text(value)]),
  };
}
