import { text, withChildren, type XmlElement, type XmlNode } from '../xml/index.js';

const isSpace = (node: XmlNode | undefined): boolean => node?.kind === 'text' && node.value.trim() === '';

/** The element with more at its end, each on a line of its own, indented like what is there. */
export function withAdded(el: XmlElement, added: readonly XmlElement[], depth: number): XmlElement {
  if (added.length === 0) return el;
  const old = el.children;
  const last = old.at(-1);
  const first = old[0];
  const before =
    old.length > 1 && first?.kind === 'text' && isSpace(first)
      ? text(first.value)
      : text(`\n${'  '.repeat(depth + 1)}`);
  const lines = added.flatMap((child): XmlNode[] => [before, child]);
  if (old.length === 0) return withChildren(el, [...lines, text(`\n${'  '.repeat(depth)}`)]);
  return withChildren(el, isSpace(last) ? [...old.slice(0, -1), ...lines, last!] : [...old, ...lines]);
}

/** The element with a child at its beginning, on a line of its own. */
export function withFirst(el: XmlElement, child: XmlElement, depth: number): XmlElement {
  const space = text(`\n${'  '.repeat(depth + 1)}`);
  return withChildren(el, [space, child, ...el.children]);
}

/** The element without some of its child elements and the line breaks before them. */
export function withoutChildren(el: XmlElement, gone: (child: XmlElement) => boolean): XmlElement {
  const children: XmlNode[] = [];
  for (const child of el.children) {
    if (child.kind !== 'element' || !gone(child)) children.push(child);
    else if (isSpace(children.at(-1))) children.pop();
  }
  if (children.length === el.children.length) return el;
  return withChildren(el, children.length === 1 && isSpace(children[0]) ? [] : children);
}

/** The element with some of its child elements exchanged, in their places. */
export function withExchanged(el: XmlElement, exchange: (child: XmlElement) => XmlElement): XmlElement {
  let changed = false;
  const children = el.children.map((child) => {
    if (child.kind !== 'element') return child;
    const next = exchange(child);
    changed ||= next !== child;
    return next;
  });
  return changed ? withChildren(el, children) : el;
}
