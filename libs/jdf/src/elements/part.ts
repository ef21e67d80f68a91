import type { ElementCodec, Field } from '../codec/index.js';
import { childElements, element } from '../xml/index.js';

/** Which part of a partitioned resource is meant: partition keys with their values. */
export type PartKeys = Readonly<Record<string, string>>;

export const part: ElementCodec<PartKeys> = {
  name: 'Part',
  read: (el) =>
    Object.fromEntries(el.attributes.filter((a) => a.uri === '').map(({ local, value }) => [local, value])),
  write: (keys) => element('Part', keys),
};

/** Words for people: the texts of all Comment elements, one a line. */
export const comment: Field<string, false> = {
  required: false,
  read(el) {
    const texts = childElements(el, 'Comment').map(commentText);
    return texts.length === 0 ? undefined : texts.join('\n');
  },
  write: (words) => ({ children: [element('Comment', {}, [{ kind: 'text', value: words }])] }),
};

function commentText(el: ReturnType<typeof element>): string {
  return el.children
    .map((node) => (node.kind === 'text' || node.kind === 'cdata' ? node.value : ''))
    .join('')
    .trim();
}
