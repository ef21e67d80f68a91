import { splitTokens } from '../codec/index.js';
import type { PartKeys } from '../elements/part.js';
import { attributeOf, childElements, type XmlElement, type XmlNode } from '../xml/index.js';

/** The keys of a partitioned resource, outermost first. */
export function partitionKeysOf(resource: XmlElement): readonly string[] {
  return splitTokens(attributeOf(resource, 'PartIDKeys') ?? '');
}

/** The parts directly below a resource or part. */
export function partsOf(el: XmlElement): XmlElement[] {
  return childElements(el, el.local);
}

/** A part of a resource: the elements from the root down to it, and the keys that lead there. */
export interface Partition {
  readonly chain: readonly XmlElement[];
  readonly keys: PartKeys;
}

/** All leaves of a resource; one that is not partitioned is its own leaf. */
export function partitionLeaves(resource: XmlElement): Partition[] {
  return leavesBelow({ chain: [resource], keys: {} }, partitionKeysOf(resource));
}

function leavesBelow(from: Partition, names: readonly string[]): Partition[] {
  const name = names[from.chain.length - 1];
  const parts = name === undefined ? [] : partsOf(from.chain.at(-1)!);
  if (name === undefined || parts.length === 0) return [from];
  return parts.flatMap((part) => {
    const value = attributeOf(part, name);
    const keys = value === undefined ? from.keys : { ...from.keys, [name]: value };
    return leavesBelow({ chain: [...from.chain, part], keys }, names);
  });
}

// A ticket may select from thousands of parts thousands of times; elements never change, so each is indexed once.
const indexes = new WeakMap<XmlElement, Map<string, ReadonlyMap<string, XmlElement>>>();

function partsBy(el: XmlElement, key: string): ReadonlyMap<string, XmlElement> {
  const known = indexes.get(el) ?? new Map<string, ReadonlyMap<string, XmlElement>>();
  indexes.set(el, known);
  const index = known.get(key);
  if (index !== undefined) return index;
  const made = new Map<string, XmlElement>();
  for (const part of partsOf(el)) {
    const value = attributeOf(part, key);
    if (value !== undefined && !made.has(value)) made.set(value, part);
  }
  known.set(key, made);
  return made;
}

/**
 * The deepest single part that a selection names, following the keys in order; keys that it leaves open end the walk.
 * Undefined when a value that it names has no part, unless PartUsage allows the nearest part that there is.
 */
export function selectPart(resource: XmlElement, selection: PartKeys): Partition | undefined {
  const chain = [resource];
  const keys: Record<string, string> = {};
  for (const name of partitionKeysOf(resource)) {
    const wanted = selection[name];
    if (wanted === undefined) break;
    const part = partsBy(chain.at(-1)!, name).get(wanted);
    if (part === undefined) {
      return (attributeOf(resource, 'PartUsage') ?? 'Explicit') === 'Explicit' ? undefined : { chain, keys };
    }
    keys[name] = wanted;
    chain.push(part);
  }
  return { chain, keys };
}

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

function ownChildren(el: XmlElement): readonly XmlNode[] {
  return el.children.filter(
    (node) => node.kind !== 'element' || node.local !== el.local || node.uri !== el.uri,
  );
}
