import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import type { XmlAttribute, XmlElement } from '../xml/index.js';

/**
 * An element as the conversion reads it: its attributes and child elements, those that a partition inherits among them.
 * They are the document's own objects, so that the ledger knows each.
 */
export interface Source {
  readonly el: XmlElement;
  readonly attributes: readonly XmlAttribute[];
  readonly children: readonly XmlElement[];
}

/** An element as it stands, nothing inherited. */
export function sourceOf(el: XmlElement): Source {
  return { el, attributes: el.attributes, children: elementsIn(el) };
}

/** A partition with all it inherits: the innermost attribute wins, own sub-elements of a name replace inherited ones. */
export function effectiveSource(chain: readonly XmlElement[]): Source {
  const el = chain.at(-1)!;
  let attributes: readonly XmlAttribute[] = [];
  let children: readonly XmlElement[] = [];
  for (const level of chain) {
    const names = new Set(level.attributes.map(({ name }) => name));
    attributes = [...attributes.filter(({ name }) => !names.has(name)), ...level.attributes];
    const own = elementsOfLevel(level);
    const replaced = new Set(own.map(baseName));
    children = [...children.filter((child) => !replaced.has(baseName(child))), ...own];
  }
  return { el, attributes, children };
}

// All parts inside a level inherit the same, and there may be thousands of them.
const elementsOfLevel = oncePer((level: XmlElement): readonly XmlElement[] =>
  elementsIn(level).filter(({ local, uri }) => local !== level.local || uri !== level.uri),
);

/** Child elements of any name and namespace. */
export function elementsIn(el: XmlElement): XmlElement[] {
  return el.children.filter((node): node is XmlElement => node.kind === 'element');
}

/** The source without some of its children and attributes. */
export function without(
  source: Source,
  children: readonly XmlElement[],
  attributes: readonly string[] = [],
): Source {
  return {
    ...source,
    attributes: source.attributes.filter(({ local, uri }) => uri !== '' || !attributes.includes(local)),
    children: source.children.filter((child) => !children.includes(child)),
  };
}

/** Inline element and reference mean the same. */
export function baseName(el: XmlElement): string {
  return `${el.uri} ${el.local.replace(/Ref$/, '')}`;
}

/** What an element of the target could not hold itself and the one around it may. */
export interface Overflow {
  /** Elements of other namespaces, comments and identifiers, ready to be written. */
  readonly nodes: XmlElement[];
  /** Names that had to be changed, with what they were. */
  readonly originals: (readonly [name: string, original: string])[];
  /** What names were before they were changed, where the document says so. */
  readonly kept?: readonly Kept[];
  /** Said by a partition in the newer generation only. */
  readonly contactTypes?: readonly string[];
  readonly dropId?: string;
  /** The partition that is being written, for references to the like partition of another resource. */
  readonly keys: PartKeys;
}

/** A name as it was before it became a token, and the element that says so. */
export interface Kept {
  readonly name: string;
  readonly original: string;
  readonly by: XmlElement;
}

/** Nothing overflowing yet, for one partition. */
export function overflowFor(
  keys: PartKeys,
  kept: readonly Kept[] = [],
  said: Partial<Overflow> = {},
): Overflow {
  return { ...said, nodes: [], originals: [], keys, kept };
}
