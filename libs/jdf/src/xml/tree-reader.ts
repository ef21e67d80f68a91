import { SaxesParser, type SaxesTagNS } from 'saxes';
import { type Code, error, type Problem } from '#libs/kernel';
import type { XmlLimits } from './limits.js';
import { XINCLUDE_NAMESPACE, XMLNS_NAMESPACE } from './namespaces.js';
import type { LeafSource, TagSource, XmlAttribute, XmlElement, XmlNode } from './node.js';

/** Carries the first problem out of the parser, which would otherwise read on. Never leaves this folder. */
export class ReadingStopped extends Error {
  constructor(readonly problem: Problem) {
    super(problem.message);
  }
}

interface OpenElement extends XmlElement {
  readonly attributes: XmlAttribute[];
  readonly children: XmlNode[];
  source?: TagSource;
}

export interface ReadTree {
  readonly declaration: string;
  readonly before: readonly XmlNode[];
  readonly root: XmlElement;
  readonly after: readonly XmlNode[];
}

/**
 * Builds the tree from the parser's events and cuts off inside them: the parser itself takes quadratic time on deep
 * nesting, so nothing may wait until it comes back.
 */
export class TreeReader {
  readonly #text: string;
  readonly #limits: XmlLimits;
  readonly #parser = new SaxesParser({ xmlns: true, defaultXMLVersion: '1.0', forceXMLVersion: true });
  readonly #stack: OpenElement[] = [];
  readonly #before: XmlNode[] = [];
  readonly #after: XmlNode[] = [];
  #declaration = '';
  #root: XmlElement | undefined;
  /** Up to here the text has become nodes. */
  #read = 0;
  #line = 1;
  #attributes = 0;
  #elements = 0;
  #nodes = 0;
  #references = 0;

  constructor(text: string, limits: XmlLimits) {
    this.#text = text;
    this.#limits = limits;
    const parser = this.#parser;
    parser.on('error', (fault) => this.#stop('XML_NOT_WELL_FORMED', sentence(fault.message)));
    parser.on('xmldecl', () => {
      this.#declaration = this.#take(parser.position);
    });
    parser.on('doctype', () => this.#stop('XML_DOCTYPE', 'A document type declaration is not accepted.'));
    parser.on('text', (value) => this.#leaf('text', value, parser.position - 1));
    parser.on('cdata', (value) => this.#leaf('cdata', value, parser.position));
    // This event comes before the closing ">" is read.
    parser.on('comment', (value) => this.#leaf('comment', value, parser.position + 1));
    parser.on('processinginstruction', ({ target, body }) => {
      this.#leaf('instruction', body, parser.position, target);
    });
    parser.on('opentagstart', () => this.#begin());
    parser.on('attribute', ({ name, value }) => this.#attribute(name, value));
    parser.on('opentag', (tag) => this.#open(tag));
    parser.on('closetag', (tag) => this.#close(tag));
  }

  /** Throws ReadingStopped at the first fault. */
  read(): ReadTree {
    this.#parser.write(this.#text).close();
    if (this.#read < this.#text.length) {
      const raw = this.#take(this.#text.length);
      this.#after.push({ kind: 'text', value: raw, source: { raw, value: raw } });
    }
    // The parser refuses a document without a root before it comes here.
    const root = this.#root as XmlElement;
    return { declaration: this.#declaration, before: this.#before, root, after: this.#after };
  }

  #take(end: number): string {
    const raw = this.#text.slice(this.#read, end);
    this.#read = end;
    return raw;
  }

  #add(node: XmlNode): void {
    const { nodes } = this.#limits;
    if (++this.#nodes > nodes) this.#limit(`more than ${nodes} nodes`);
    const open = this.#stack.at(-1);
    if (open !== undefined) open.children.push(node);
    else if (this.#root === undefined && node.kind !== 'element') this.#before.push(node);
    else if (node.kind !== 'element') this.#after.push(node);
  }

  #leaf(kind: Exclude<XmlNode['kind'], 'element'>, value: string, end: number, target = ''): void {
    const raw = this.#take(end);
    const { textLength } = this.#limits;
    if (raw.length > textLength) this.#limit(`a ${kind} of more than ${textLength} characters`);
    if (kind === 'text') this.#countReferences(raw);
    const source: LeafSource = { raw, value };
    this.#add(kind === 'instruction' ? { kind, target, value, source } : { kind, value, source });
  }

  #begin(): void {
    const { depth, elements } = this.#limits;
    if (this.#stack.length >= depth) this.#limit(`more than ${depth} elements inside one another`);
    if (++this.#elements > elements) this.#limit(`more than ${elements} elements`);
    this.#attributes = 0;
    // The character after the name has been read already; it may be the end of the line.
    const last = this.#text[this.#parser.position - 1];
    this.#line = this.#parser.line - (last === '\n' || last === '\r' ? 1 : 0);
  }

  #attribute(name: string, value: string): void {
    const { attributesPerElement, attributeLength } = this.#limits;
    if (++this.#attributes > attributesPerElement)
      this.#limit(`more than ${attributesPerElement} attributes`);
    if (value.length > attributeLength) {
      this.#limit(`an attribute of more than ${attributeLength} characters (${name.slice(0, 40)})`);
    }
  }

  #open(tag: SaxesTagNS): void {
    const attributes: XmlAttribute[] = [];
    for (const key in tag.attributes) {
      const { name, prefix, local, uri, value } = tag.attributes[key]!;
      attributes.push({ name, prefix, local, uri, value });
      if (uri === XMLNS_NAMESPACE && value.trim() === XINCLUDE_NAMESPACE) this.#refuseInclusion();
    }
    if (tag.uri === XINCLUDE_NAMESPACE) this.#refuseInclusion();
    const open = this.#take(this.#parser.position);
    this.#countReferences(open);
    const { name, prefix, local, uri } = tag;
    const element: OpenElement = {
      kind: 'element',
      name,
      prefix,
      local,
      uri,
      attributes,
      children: [],
      line: this.#line,
      source: { open, close: '', name, attributes },
    };
    this.#add(element);
    if (this.#stack.length === 0) this.#root = element;
    this.#stack.push(element);
  }

  #close(tag: SaxesTagNS): void {
    const element = this.#stack.at(-1)!;
    if (!tag.isSelfClosing) {
      const close = this.#take(this.#parser.position);
      // The parser tells of a wrong name only after this event; here the open element is still known.
      if (close.slice(2, -1).trimEnd() !== element.name) {
        const opened = `<${element.name}> of line ${element.line}`;
        this.#stop('XML_NOT_WELL_FORMED', `The end tag ${close} does not close ${opened}.`);
      }
      element.source = { ...element.source!, close };
    }
    this.#stack.pop();
  }

  #countReferences(raw: string): void {
    const { references } = this.#limits;
    for (let at = raw.indexOf('&'); at >= 0; at = raw.indexOf('&', at + 1)) {
      if (++this.#references > references) this.#limit(`more than ${references} references (&…;)`);
    }
  }

  #refuseInclusion(): never {
    this.#stop('XML_INCLUDE', 'Inclusion of other files (XInclude) is not accepted.');
  }

  #limit(what: string): never {
    this.#stop('XML_LIMIT', `The document has ${what}.`);
  }

  #stop(code: Code, message: string): never {
    throw new ReadingStopped(error(code, message, { line: this.#parser.line, path: this.#path() }));
  }

  /** XPath of the innermost open element; a position only where an earlier sibling has the same name. */
  #path(): string | null {
    let path = '';
    let siblings: readonly XmlNode[] = [];
    for (const open of this.#stack) {
      const nth = siblings.filter((node) => node.kind === 'element' && node.name === open.name).length;
      path += `/${open.name}${nth > 1 ? `[${nth}]` : ''}`;
      siblings = open.children;
    }
    return path === '' ? null : path;
  }
}

/** The parser's "12:7: unclosed tag: b." as a sentence that keeps the column; the line has its own field. */
function sentence(message: string): string {
  const [, column, what] = /^\d+:(\d+): (.*)$/s.exec(message) ?? [null, null, message];
  return column === null ? String(what) : `Not well-formed at column ${column}: ${what}`;
}
