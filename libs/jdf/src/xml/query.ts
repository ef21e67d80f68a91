import type { XmlDocument, XmlElement } from './node.js';

/** The value of an attribute, by local name; without a namespace unless one is named. */
export function attributeOf(el: XmlElement, local: string, uri = ''): string | undefined {
  for (const attribute of el.attributes) {
    if (attribute.local === local && attribute.uri === uri) return attribute.value;
  }
  return undefined;
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
    if (child.kind === 'element' && child.local === local && child.uri === uri) return child;
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

interface DocumentIndex {
  readonly parents: ReadonlyMap<XmlElement, XmlElement | undefined>;
  readonly ids: ReadonlyMap<string, XmlElement>;
}

// Documents never change, so what was looked up once stays true; the index goes when its document goes.
const indexes = new WeakMap<XmlDocument, DocumentIndex>();

function indexOf(doc: XmlDocument): DocumentIndex {
  const known = indexes.get(doc);
  if (known !== undefined) return known;
  const parents = new Map<XmlElement, XmlElement | undefined>([[doc.root, undefined]]);
  const ids = new Map<string, XmlElement>();
  for (const el of descendants(doc.root)) {
    const id = attributeOf(el, 'ID');
    if (id !== undefined && !ids.has(id)) ids.set(id, el);
    for (const child of el.children) if (child.kind === 'element') parents.set(child, el);
  }
  const index = { parents, ids };
  indexes.set(doc, index);
  return index;
}

const positionsKnown = new WeakMap<XmlElement, ReadonlyMap<XmlElement, number>>();

/** The positions of child elements among those of the same name, where there are any. Asked for where something is told. */
function positionsIn(el: XmlElement): ReadonlyMap<XmlElement, number> {
  const known = positionsKnown.get(el);
  if (known !== undefined) return known;
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
  positionsKnown.set(el, positions);
  return positions;
}

/** The element around this one; undefined for the root and for an element of another document. */
export function parentOf(doc: XmlDocument, el: XmlElement): XmlElement | undefined {
  return indexOf(doc).parents.get(el);
}

/** The first element with this ID. */
export function findById(doc: XmlDocument, id: string): XmlElement | undefined {
  return indexOf(doc).ids.get(id);
}

/** XPath of an element, with a position wherever siblings share its name; '' for an element of another document. */
export function pathOf(doc: XmlDocument, el: XmlElement): string {
  const { parents } = indexOf(doc);
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
