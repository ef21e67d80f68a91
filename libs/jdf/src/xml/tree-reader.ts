import { type Code, codes, error } from '#libs/kernel';
import { greatestDepth, overLimit, type XmlLimits } from './limits.js';
import { XmlNames } from './names.js';
import { NamespaceScope } from './namespace-scope.js';
import { XINCLUDE_NAMESPACE, XMLNS_NAMESPACE } from './namespaces.js';
import type { LeafSource, TagSource, XmlAttribute, XmlElement, XmlNode } from './node.js';
import { makeParser } from './parser.js';
import { PendingText } from './pending-text.js';
import { ReadingStopped } from './reading-stopped.js';

type Writable<T> = { -readonly [K in keyof T]: T[K] };
type OpenElement = Omit<Writable<XmlElement>, 'source'> & { source: Writable<TagSource> };

export interface ReadTree {
  readonly declaration: string;
  readonly before: readonly XmlNode[];
  readonly root: XmlElement;
  readonly after: readonly XmlNode[];
}

// Shared by all elements that have none, and never written to.
const NO_ATTRIBUTES: readonly XmlAttribute[] = [];
const NO_CHILDREN: readonly XmlNode[] = [];

/**
 * Builds the tree from the parser's events and cuts off inside them. Namespaces are resolved here, for two reasons: the
 * parser would look for a prefix through every open element, which deep nesting makes quadratic; and names, of which a
 * ticket has few, need to be taken apart once only.
 */
export class TreeReader {
  readonly #limits: XmlLimits;
  readonly #parser = makeParser();
  readonly #pending = new PendingText();
  readonly #names = new XmlNames();
  readonly #scope = new NamespaceScope();
  readonly #stack: OpenElement[] = [];
  /** Where the children of each open element begin in `#nodes`, which holds those of all of them. */
  readonly #starts: number[] = [];
  readonly #nodes: XmlNode[] = [];
  #nodesInUse = 0;
  /** Blanks between elements are few and often met: one text for all that are alike. */
  readonly #blanks = new Map<string, string>();
  /** Those of the tag being read; neither list is ever made shorter, for it would have to grow again. */
  readonly #attributes: Writable<XmlAttribute>[] = [];
  #attributesInUse = 0;
  #prefixed = 0;
  #declares = false;
  #root: XmlElement | undefined;
  #rootAt = 0;
  #declaration = '';
  #line = 1;
  #elements = 0;
  #nodeCount = 0;
  #references = 0;
  /** References in the open text or tag, as far as they filled whole pieces. */
  #openReferences = 0;
  #ending = false;

  /** `declared` hears the encoding that the XML declaration names. */
  constructor(limits: XmlLimits, declared: (encoding: string) => void) {
    this.#limits = { ...limits, depth: Math.min(limits.depth, greatestDepth) };
    const parser = this.#parser;
    parser.on('error', (fault) => this.#refuse(sentence(fault.message)));
    parser.on('xmldecl', ({ version, encoding }) => {
      if (version === '1.1')
        this.#stop('XML_NOT_WELL_FORMED', 'XML 1.1 is not read; tickets and messages are XML 1.0.');
      this.#declaration = this.#pending.take(parser.position);
      if (encoding !== undefined) declared(encoding);
    });
    parser.on('doctype', () => this.#refuseDoctype());
    parser.on('text', (value) => this.#text(value));
    parser.on('cdata', (value) => this.#marked('cdata', value, parser.position));
    // This event comes before the closing ">" is read.
    parser.on('comment', (value) => this.#marked('comment', value, parser.position + 1));
    parser.on('processinginstruction', ({ target, body }) => this.#instruction(target, body));
    parser.on('opentagstart', ({ name }) => this.#begin(name));
    parser.on('attribute', ({ name, value }) => this.#attribute(name, value));
    parser.on('opentag', ({ name }) => this.#open(name));
    parser.on('closetag', ({ isSelfClosing }) => this.#close(isSelfClosing));
  }

  /** The line that the next character is in. */
  get line(): number {
    return this.#parser.line;
  }

  /** Reads on. Throws ReadingStopped at the first fault. */
  write(piece: string): void {
    // The parser would pass over a second byte order mark; the first is gone by now.
    if (this.#pending.end === 0 && piece.startsWith('\ufeff'))
      this.#stop('XML_NOT_WELL_FORMED', 'Before the root there is a character U+FEFF.');
    const ready = this.#pending.add(piece);
    if (ready === '') return;
    this.#parser.write(ready);
    this.#checkPending(ready);
  }

  /** The tree, when all has been written. Throws ReadingStopped. */
  end(): ReadTree {
    const left = this.#pending.addLast();
    this.#ending = true;
    if (left !== '') this.#parser.write(left);
    this.#parser.close();
    // The parser refuses a document without a root before it comes here.
    const root = this.#root as XmlElement;
    const before = this.#nodes.slice(0, this.#rootAt);
    const after = this.#nodes.slice(this.#rootAt + 1, this.#nodesInUse);
    return { declaration: this.#declaration, before, root, after };
  }

  #add(node: XmlNode): void {
    const { nodes } = this.#limits;
    if (++this.#nodeCount > nodes) this.#limit('nodes', `more than ${nodes} nodes`);
    this.#nodes[this.#nodesInUse++] = node;
  }

  #text(value: string): void {
    // The event comes when the next "<" has been read, or when there is no more.
    const end = this.#ending ? this.#pending.end : this.#parser.position - 1;
    const raw = this.#pending.takeIf(value, end) ? value : this.#pending.take(end);
    this.#checkLength('text', raw);
    if (raw !== value) {
      this.#countReferences(raw);
      this.#add({ kind: 'text', value, source: { raw, value } });
    } else if (value.includes('>')) this.#add({ kind: 'text', value, source: { raw: value, value } });
    // Text that would be written just so needs no second one.
    else this.#add({ kind: 'text', value: value.length <= 64 ? this.#blank(value) : value });
  }

  #blank(value: string): string {
    const known = this.#blanks.get(value);
    if (known !== undefined) return known;
    if (this.#blanks.size < 256 && /^[ \t\n]*$/.test(value)) this.#blanks.set(value, value);
    return value;
  }

  /** The parser says nothing of blanks before the first tag, comment or instruction. */
  #blanksBefore(): void {
    if (this.#nodeCount > 0 || this.#declaration !== '') return;
    const raw = this.#pending.takeBlanks();
    const value = raw.replace(/\r\n?/g, '\n');
    if (raw !== '')
      this.#add(raw === value ? { kind: 'text', value } : { kind: 'text', value, source: { raw, value } });
  }

  #marked(kind: 'cdata' | 'comment', value: string, end: number): void {
    this.#blanksBefore();
    const raw = this.#pending.take(end);
    this.#checkLength(kind, raw);
    this.#add(raw.includes('\r') ? { kind, value, source: { raw, value } } : { kind, value });
  }

  #instruction(target: string, value: string): void {
    this.#blanksBefore();
    const raw = this.#pending.take(this.#parser.position);
    this.#checkLength('instruction', raw);
    if (target.includes(':'))
      this.#stop('XML_NOT_WELL_FORMED', 'An instruction may have no colon in its name.');
    const source: LeafSource = { raw, value };
    this.#add({ kind: 'instruction', target, value, source });
  }

  #begin(name: string): void {
    const { depth, elements } = this.#limits;
    if (this.#stack.length >= depth) this.#limit('depth', `more than ${depth} elements inside one another`);
    if (++this.#elements > elements) this.#limit('elements', `more than ${elements} elements`);
    this.#checkName(name);
    this.#blanksBefore();
    this.#prefixed = 0;
    this.#declares = false;
    // The character after the name has been read already; it may be the end of the line.
    const last = this.#pending.charBefore(this.#parser.position);
    this.#line = this.#parser.line - (last === '\n' || last === '\r' ? 1 : 0);
  }

  #attribute(written: string, value: string): void {
    const { attributesPerElement, attributeLength } = this.#limits;
    if (this.#attributesInUse >= attributesPerElement)
      this.#limit('attributesPerElement', `more than ${attributesPerElement} attributes`);
    if (value.length > attributeLength) {
      const which = `an attribute of more than ${attributeLength} characters (${written.slice(0, 40)})`;
      this.#limit('attributeLength', which);
    }
    this.#checkName(written);
    const { name, prefix, local, sound } = this.#names.of(written);
    if (!sound) this.#malformed(name);
    if (prefix !== '') this.#prefixed++;
    if (prefix === 'xmlns' || name === 'xmlns') this.#declares = true;
    this.#attributes[this.#attributesInUse++] = { name, prefix, local, uri: '', value };
  }

  #open(written: string): void {
    const open = this.#pending.take(this.#parser.position);
    if (this.#pending.mayRefer) this.#countReferences(open);
    const attributes =
      this.#attributesInUse === 0 ? NO_ATTRIBUTES : this.#attributes.slice(0, this.#attributesInUse);
    this.#attributesInUse = 0;
    if (this.#declares) this.#declare(attributes);
    else this.#scope.enter();
    if (this.#prefixed > 0) this.#resolve(attributes);
    const { name, prefix, local, sound } = this.#names.of(written);
    if (!sound) this.#malformed(name);
    const uri = this.#scope.uriOf(prefix) ?? this.#unbound(prefix);
    if (prefix === 'xmlns') this.#stop('XML_NOT_WELL_FORMED', 'An element may not have the prefix xmlns.');
    if (uri === XINCLUDE_NAMESPACE) this.#refuseInclusion();
    const element: OpenElement = {
      kind: 'element',
      name,
      prefix,
      local,
      uri,
      attributes,
      children: NO_CHILDREN,
      line: this.#line,
      source: { open, close: '', attributes },
    };
    if (this.#stack.length === 0) {
      this.#root = element;
      this.#rootAt = this.#nodesInUse;
    }
    this.#add(element);
    this.#stack.push(element);
    this.#starts.push(this.#nodesInUse);
  }

  #declare(attributes: readonly Writable<XmlAttribute>[]): void {
    const declarations = attributes.filter(({ prefix, name }) => prefix === 'xmlns' || name === 'xmlns');
    for (const declaration of declarations) {
      declaration.uri = XMLNS_NAMESPACE;
      if (declaration.value.trim() === XINCLUDE_NAMESPACE) this.#refuseInclusion();
    }
    const fault = this.#scope.enterWith(declarations);
    if (fault !== null) this.#stop('XML_NOT_WELL_FORMED', fault);
  }

  /** Gives prefixed attributes their namespace; two may not be the same by namespace and local name. */
  #resolve(attributes: readonly Writable<XmlAttribute>[]): void {
    const seen = this.#prefixed > 1 ? new Set<string>() : undefined;
    for (const attribute of attributes) {
      if (attribute.prefix === '') continue;
      attribute.uri = this.#scope.uriOf(attribute.prefix) ?? this.#unbound(attribute.prefix);
      const full = seen && `${attribute.uri} ${attribute.local}`;
      if (full !== undefined && seen?.has(full)) {
        this.#stop('XML_NOT_WELL_FORMED', `The attribute ${attribute.name} occurs twice, by its namespace.`);
      }
      if (full !== undefined) seen?.add(full);
    }
  }

  #close(isSelfClosing: boolean): void {
    const element = this.#stack.at(-1)!;
    if (!isSelfClosing) {
      element.source.close = this.#endTag(element);
      const start = this.#starts.at(-1)!;
      if (start < this.#nodesInUse) element.children = this.#nodes.slice(start, this.#nodesInUse);
      this.#nodesInUse = start;
    }
    this.#stack.pop();
    this.#starts.pop();
    this.#scope.leave();
  }

  /** The text of the end tag just read, which must be that of the innermost element. */
  #endTag({ name, line }: XmlElement): string {
    const { position } = this.#parser;
    const { end } = this.#names.of(name);
    if (this.#pending.takeIf(end, position)) return end;
    const close = this.#pending.take(position);
    // The parser tells of a wrong name only after this event; here the open element is still known.
    if (close.slice(2, -1).trimEnd() === name) return close;
    const opened = `<${name}> of line ${line}`;
    this.#stop('XML_NOT_WELL_FORMED', `The end tag ${close.slice(0, 80)} does not close ${opened}.`);
  }

  #checkName(name: string): void {
    const { nameLength } = this.#limits;
    if (name.length > nameLength) this.#limit('nameLength', `a name of more than ${nameLength} characters`);
  }

  #checkLength(kind: string, raw: string): void {
    const { textLength } = this.#limits;
    if (raw.length > textLength) this.#limit('textLength', `a ${kind} of more than ${textLength} characters`);
  }

  #countReferences(raw: string): void {
    const { references } = this.#limits;
    for (let at = raw.indexOf('&'); at >= 0; at = raw.indexOf('&', at + 1)) {
      if (++this.#references > references)
        this.#limit('references', `more than ${references} references (&…;)`);
    }
  }

  /** What has begun and not ended with this piece must not be too much already. */
  #checkPending(piece: string): void {
    const { begin, length } = this.#pending;
    if (begin.startsWith('<!DOCTYPE')) this.#refuseDoctype();
    const { textLength, references } = this.#limits;
    if (/^(<[!?]|[^<])/.test(begin) && length > textLength)
      this.#limit('textLength', `a text of more than ${textLength} characters`);
    if (length < piece.length) this.#openReferences = 0;
    if (length < piece.length || /^<[!?]/.test(begin) || !this.#pending.mayRefer) return;
    for (let at = piece.indexOf('&'); at >= 0; at = piece.indexOf('&', at + 1)) this.#openReferences++;
    if (this.#references + this.#openReferences > references)
      this.#limit('references', `more than ${references} references (&…;)`);
  }

  #malformed(name: string): never {
    this.#stop('XML_NOT_WELL_FORMED', `"${name}" is no name with a prefix: one colon, a name on each side.`);
  }

  #unbound(prefix: string): never {
    this.#stop('XML_NOT_WELL_FORMED', `The prefix ${prefix} is bound to no namespace here.`);
  }

  #refuseInclusion(): never {
    this.#stop('XML_INCLUDE', 'Inclusion of other files (XInclude) is not accepted.');
  }

  #refuseDoctype(): never {
    const line = this.#parser.line - this.#pending.lineEndsUntil(this.#parser.position);
    throw new ReadingStopped(error('XML_DOCTYPE', 'A document type declaration is not accepted.', { line }));
  }

  #limit(name: keyof XmlLimits, what: string): never {
    this.#stop('XML_LIMIT', ...overLimit(this.#limits, name, what));
  }

  /** What the parser found wrong, told where the cause is if that is known better. */
  #refuse(message: string): never {
    const lines = this.#pending.linesSinceBareAmpersand(this.#parser.position);
    if (lines === undefined) this.#malformedMarkup(message);
    const where = { line: this.#parser.line - lines, path: this.#path() };
    const hint = 'Write &amp; for the sign itself.';
    throw new ReadingStopped(
      error('XML_NOT_WELL_FORMED', 'A "&" stands here that begins no reference.', { ...where, hint }),
    );
  }

  /** What the parser found wrong with the markup, where it begins, in words that say how to mend it. */
  #malformedMarkup(message: string): never {
    const open = this.#stack.at(-1);
    if (this.#nodeCount === 0 && this.#pending.isBlank && this.#declaration === '') {
      this.#stop('XML_NOT_WELL_FORMED', 'The document is empty.', 'Send the whole file.');
    }
    if (/unclosed|unexpected end/.test(message) && open !== undefined) {
      const unclosed = `The document ends before <${open.name}> of line ${open.line} is closed.`;
      this.#stop('XML_NOT_WELL_FORMED', unclosed, `The file was cut off, or </${open.name}> is missing.`);
    }
    if (message.includes('outside of root') && this.#root === undefined) {
      const line = this.#parser.line - this.#pending.linesSinceText(this.#parser.position);
      const hint = 'A ticket or message is an XML file: it begins with "<".';
      throw new ReadingStopped(
        error('XML_NOT_WELL_FORMED', 'Text stands before the root element.', { line, hint }),
      );
    }
    this.#stop('XML_NOT_WELL_FORMED', message);
  }

  #stop(code: Code, message: string, hint: string | null = codes[code].remedy): never {
    // Whatever is wrong inside a document type declaration, it is the declaration that is not accepted.
    if (code === 'XML_NOT_WELL_FORMED' && this.#pending.begin.startsWith('<!DOCTYPE')) this.#refuseDoctype();
    throw new ReadingStopped(error(code, message, { line: this.#parser.line, path: this.#path(), hint }));
  }

  /** XPath of the innermost open element; a position only where an earlier sibling has the same name. */
  #path(): string | null {
    let path = '';
    this.#stack.forEach((open, i) => {
      const siblings = this.#nodes.slice(this.#starts[i - 1] ?? 0, this.#starts[i]);
      const nth = siblings.filter((node) => node.kind === 'element' && node.name === open.name).length;
      path += `/${open.name}${nth > 1 ? `[${nth}]` : ''}`;
    });
    return path === '' ? null : path;
  }
}

/** The parser's "12:7: unclosed tag: b." as a sentence that keeps the column; the line has its own field. */
function sentence(message: string): string {
  const [, column, what] = /^\d+:(\d+): (.*)$/s.exec(message) ?? [null, null, message];
  return column === null ? String(what) : `Not well-formed at column ${column}: ${what}`;
}
