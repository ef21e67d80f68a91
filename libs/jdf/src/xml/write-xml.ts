import { declaredEncoding, isNameOf, renamed } from './encodings.js';
import { escapeText, referring, writable } from './escape.js';
import type { LeafSource, XmlDocument, XmlElement, XmlEncoding, XmlNode } from './node.js';
import { endTag, startTag } from './tag-text.js';

/**
 * The document as text, to be encoded as UTF-8: whatever was read and not changed comes out exactly as it was. Of a
 * document read from another encoding the declaration is changed to say UTF-8.
 */
export function writeXml(doc: XmlDocument): string {
  const declaration = doc.encoding === 'utf-8' ? doc.declaration : renamed(doc.declaration, 'UTF-8');
  return declaration + bodyOf(doc, null);
}

/**
 * The document as bytes in the encoding it was read from, byte order mark included. In ISO-8859-1 and US-ASCII, what the
 * encoding lacks becomes a numeric reference in texts and attribute values. Where a name, comment, instruction or CDATA
 * section has such a character, no reference may stand, so the whole document is written as UTF-8 and its declaration
 * says so.
 */
export function encodeXml(doc: XmlDocument): Uint8Array {
  const { encoding } = doc;
  const declared = declaredEncoding(doc.declaration);
  if (encoding === 'utf-16le' || encoding === 'utf-16be') return inUtf16(doc, encoding);
  if (encoding !== 'utf-8' && declared !== undefined && isNameOf(declared, encoding)) {
    const text = fitting(doc, encoding);
    if (text !== null) return oneByteEach(text);
  }
  const honest = declared === undefined || isNameOf(declared, 'utf-8');
  const declaration = honest ? doc.declaration : renamed(doc.declaration, 'UTF-8');
  return new TextEncoder().encode((doc.bom ? '\ufeff' : '') + declaration + bodyOf(doc, null));
}

/** One element with all that is in it, as text. */
export function writeElement(element: XmlElement): string {
  const out: string[] = [];
  new Writer(out, null).write(element);
  return out.join('');
}

function inUtf16(doc: XmlDocument, encoding: 'utf-16le' | 'utf-16be'): Uint8Array {
  const text = `\ufeff${doc.declaration}${bodyOf(doc, null)}`;
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), encoding === 'utf-16le');
  return new Uint8Array(view.buffer);
}

function oneByteEach(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}

/** The document in a one-byte encoding; null if something in it cannot be written there. */
function fitting(doc: XmlDocument, encoding: XmlEncoding): string | null {
  const misfit = encoding === 'us-ascii' ? /[\u0080-\u{10ffff}]/gu : /[\u0100-\u{10ffff}]/gu;
  const text = doc.declaration + bodyOf(doc, misfit);
  // Where a reference may stand there is one now; what is left stands where none may.
  return text.search(misfit) < 0 ? text : null;
}

function bodyOf(doc: XmlDocument, misfit: RegExp | null): string {
  const out: string[] = [];
  const writer = new Writer(out, misfit);
  for (const node of doc.before) writer.write(node);
  writer.write(doc.root);
  for (const node of doc.after) writer.write(node);
  return out.join('');
}

class Writer {
  constructor(
    private readonly out: string[],
    /** The characters to be written as references where they may be. */
    private readonly misfit: RegExp | null,
  ) {}

  write(node: XmlNode): void {
    const { out } = this;
    switch (node.kind) {
      case 'element':
        out.push(this.tag(node));
        for (const child of node.children) this.write(child);
        out.push(endTag(node));
        return;
      case 'text':
        out.push(this.referring(unchanged(node) ?? escapeText(node.value)));
        return;
      case 'cdata':
        out.push(unchanged(node) ?? cdata(writable(node.value)));
        return;
      case 'comment':
        out.push(unchanged(node) ?? comment(writable(node.value)));
        return;
      case 'instruction':
        out.push(unchanged(node) ?? instruction(node.target, writable(node.value)));
    }
  }

  private tag(element: XmlElement): string {
    const tag = startTag(element);
    const { misfit } = this;
    if (misfit === null || tag.search(misfit) < 0) return tag;
    const names = [element.name, ...element.attributes.map(({ name }) => name)];
    return names.some((name) => name.search(misfit) >= 0) ? tag : this.referring(tag);
  }

  private referring(text: string): string {
    return this.misfit === null ? text : referring(text, this.misfit);
  }
}

function unchanged(node: { readonly value: string; readonly source?: LeafSource }): string | undefined {
  return node.source?.value === node.value ? node.source.raw : undefined;
}

const cdata = (value: string): string => `<![CDATA[${value.replaceAll(']]>', ']]]]><![CDATA[>')}]]>`;
const comment = (value: string): string => `<!--${value.replaceAll('--', '- -').replace(/-$/, '- ')}-->`;
const instruction = (target: string, value: string): string =>
  `<?${target}${value === '' ? '' : ' '}${value.replaceAll('?>', '? >')}?>`;
