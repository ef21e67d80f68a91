import { oncePer } from '#libs/kernel';
import type { XmlDocument, XmlElement, XmlNode } from './node.js';

/** The value of an attribute, by local name; without a namespace unless one is named. */
export function attributeOf(el: XmlElement, local: string, uri = ''): string | undefined {
  for (const attribute of el.attributes) {
    if (attribute.local === local && attribute.uri === uri) return attribute.value;
  }
  return undefined;
}

/** Whether a node is an element of this name and namespace. */
export function isElement(node: XmlNode, local: string, uri: string): node is XmlElement {
  return node.kind === 'element' && node.local === local && node.uri === uri;
}

/** Child elements in order, all of them or those of a local name; by default in the namespace of their parent. */
export function childElements(el: XmlElement, local?: string, uri: string = el.uri): XmlElement[] {
  const found: XmlElement[] = [];
  for (const child of el.children) {
    if (child.kind === 'element' && child.uri === uri && (local === undefined || child.local === local)) {
      found.push(child);
    }
  }
  return found;
}

/** The first child element of a name, in the namespace of its parent unless told another. */
export function firstChild(el: XmlElement, local: string, uri: string = el.uri): XmlElement | undefined {
  for (const child of el.children) {
    if (isElement(child, local, uri)) return child;
  }
  return undefined;
}

/** Follows a path of local names, first child each time. */
export function childAt(el: XmlElement, ...locals: readonly string[]): XmlElement | undefined {
  let at: XmlElement | undefined = el;
  for (const local of locals) at = at && firstChild(at, local);
  return at;
}

/** The element and all below it in document order, of any namespace. */
export function* descendants(el: XmlElement): Generator<XmlElement> {
  // One generator with a stack of its own: a generator an element made this the dearest part of every check.
  const waiting = [el];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    yield at;
    for (let i = at.children.length - 1; i >= 0; i--) {
      const child = at.children[i]!;
      if (child.kind === 'element') waiting.push(child);
    }
  }
}

/** Text and CDATA of an element, joined, without what is in its child elements. */
export function textOf(el: XmlElement): string {
  let value = '';
  for (const child of el.children) {
    if (child.kind === 'text' || child.kind === 'cdata') value += child.value;
  }
  return value;
}

// Documents and elements never change, so what was looked up once stays true; it goes when they go.
const parentsOf = oncePer(({ root }: XmlDocument): ReadonlyMap<XmlElement, XmlElement | undefined> => {
  const parents = new Map<XmlElement, XmlElement | undefined>([[root, undefined]]);
  for (const el of descendants(root)) {
    for (const child of el.children) if (child.kind === 'element') parents.set(child, el);
  }
  return parents;
});

/** The elements of a document that have an ID, in its order. */
export const identified = oncePer(({ root }: XmlDocument): readonly Identified[] => {
  const found: Identified[] = [];
  for (const element of descendants(root)) {
    const id = attributeOf(element, 'ID');
    if (id !== undefined) found.push({ id, element });
  }
  return found;
});

/** An element with its ID. */
export interface Identified {
  readonly id: string;
  readonly element: XmlElement;
}

const byId = oncePer((doc: XmlDocument): ReadonlyMap<string, XmlElement> => firstOfEach(identified(doc)));

/** Elements by their ID; of several with one ID the first. */
export function firstOfEach(those: readonly Identified[]): ReadonlyMap<string, XmlElement> {
  // A later entry of a map takes the place of an earlier one.
  return new Map(those.toReversed().map(({ id, element }) => [id, element]));
}

/** The positions of child elements among those of the same name, where there are any. Asked for where something is told. */
const positionsIn = oncePer((el: XmlElement): ReadonlyMap<XmlElement, number> => {
  const alike = new Map<string, XmlElement[]>();
  for (const child of el.children) {
    if (child.kind !== 'element') continue;
    const same = alike.get(child.name);
    if (same === undefined) alike.set(child.name, [child]);
    else same.push(child);
  }
  const positions = new Map<XmlElement, number>();
  for (const same of alike.values()) {
    if (same.length > 1) same.forEach((child, i) => void positions.set(child, i + 1));
  }
  return positions;
});

/** The element around this one; undefined for the root and for an element of another document. */
export function parentOf(doc: XmlDocument, el: XmlElement): XmlElement | undefined {
  // Of the root it is known without looking.
  return el === doc.root ? undefined : parentsOf(doc).get(el);
}

/** The first element with this ID. */
export function findById(doc: XmlDocument, id: string): XmlElement | undefined {
  return byId(doc).get(id);
}

/** XPath of an element, with a position wherever siblings share its name; '' for an element of another document. */
export function pathOf(doc: XmlDocument, el: XmlElement): string {
  const parents = parentsOf(doc);
  if (!parents.has(el)) return '';
  let path = '';
  for (let at: XmlElement | undefined = el; at !== undefined; at = parents.get(at)) {
    const around = parents.get(at);
    const position = around === undefined ? undefined : positionsIn(around).get(at);
    path = `/${at.name}${position === undefined ? '' : `[${position}]`}${path}`;
  }
  return path;
}

/** The line that an attribute stands on, as far as the text of its start tag is known; else that of the element. */
export function lineOfAttribute(el: XmlElement, name: string): number {
  const tag = el.source?.open ?? '';
  // Values cannot hold a bare "<", so the first name after white space and before "=" outside quotes is the attribute.
  const names = /[ \t\r\n]([^\s=]+)[ \t\r\n]*=[ \t\r\n]*(?:"[^"]*"|'[^']*')/g;
  for (let match = names.exec(tag); match !== null; match = names.exec(tag)) {
    if (match[1] === name) return el.line + tag.slice(0, match.index + 1).split(/\r\n|\r|\n/).length - 1;
  }
  return el.line;
}
