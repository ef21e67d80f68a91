import { oncePer } from '#libs/kernel';
import { attributeOf, isElement, type XmlElement, type XmlNode } from '../xml/index.js';
import type { Partition } from './resolve.js';

/**
 * A part with what it inherits: attributes of all levels, the innermost winning, and sub-elements, where a level's own
 * of a name replace all inherited ones of that name. Sub-elements are the document's own, so they keep their place.
 */
export function effectivePart({ chain }: Partition): XmlElement {
  const [root, ...inner] = chain as [XmlElement, ...XmlElement[]];
  let attributes = root.attributes;
  let children = ownChildren(root);
  for (const level of inner) {
    const names = new Set(level.attributes.map(({ name }) => name));
    attributes = [...attributes.filter(({ name }) => !names.has(name)), ...level.attributes];
    const own = ownChildren(level);
    const replaced = new Set(own.flatMap((node) => (node.kind === 'element' ? [baseName(node)] : [])));
    children = [
      ...children.filter((node) => node.kind !== 'element' || !replaced.has(baseName(node))),
      ...own,
    ];
  }
  return { ...root, attributes, children };
}

/** An attribute of a part: its own, or that of the nearest level around it that states it. */
export function partAttribute({ chain }: Partition, name: string): string | undefined {
  for (let i = chain.length - 1; i >= 0; i--) {
    const value = attributeOf(chain[i]!, name);
    if (value !== undefined) return value;
  }
  return undefined;
}

/** Inline element and reference mean the same, so they replace one another. */
function baseName(el: XmlElement): string {
  return `${el.uri} ${el.local.replace(/Ref$/, '')}`;
}

// All parts inside a level inherit the same, and there may be thousands of them.
const ownChildren = oncePer((level: XmlElement): readonly XmlNode[] =>
  level.children.filter((node) => !isElement(node, level.local, level.uri)),
);
