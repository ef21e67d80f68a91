import type { LeafSource, XmlAttribute, XmlDocument, XmlElement, XmlNode } from './node.js';

/**
 * The document as text, to be encoded as UTF-8: whatever was read and not changed comes out exactly as it was. Of a
 * document read from UTF-16 the declaration is changed to say UTF-8.
 */
export function writeXml(doc: XmlDocument): string {
  const declaration =
    doc.encoding === 'utf-8'
      ? doc.declaration
      : doc.declaration.replace(/(encoding\s*=\s*["'])[^"']*/, '$1UTF-8');
  return declaration + body(doc);
}

/** The document as bytes in the encoding it was read from, byte order mark included. */
export function encodeXml(doc: XmlDocument): Uint8Array {
  const text = (doc.bom ? '\ufeff' : '') + doc.declaration + body(doc);
  if (doc.encoding === 'utf-8') return new TextEncoder().encode(text);
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < text.length; i++) {
    view.setUint16(i * 2, text.charCodeAt(i), doc.encoding === 'utf-16le');
  }
  return bytes;
}

function body(doc: XmlDocument): string {
  const out: string[] = [];
  for (const node of doc.before) write(node, out);
  write(doc.root, out);
  for (const node of doc.after) write(node, out);
  return out.join('');
}

/** One element with all that is in it, as text. */
export function writeElement(element: XmlElement): string {
  const out: string[] = [];
  write(element, out);
  return out.join('');
}

function write(node: XmlNode, out: string[]): void {
  switch (node.kind) {
    case 'element':
      writeTags(node, out);
      return;
    case 'text':
      out.push(unchanged(node) ?? escapeText(node.value));
      return;
    case 'cdata':
      out.push(unchanged(node) ?? `<![CDATA[${node.value.replaceAll(']]>', ']]]]><![CDATA[>')}]]>`);
      return;
    case 'comment':
      out.push(unchanged(node) ?? `<!--${node.value.replaceAll('--', '- -').replace(/-$/, '- ')}-->`);
      return;
    case 'instruction':
      out.push(unchanged(node) ?? `<?${node.target} ${node.value.replaceAll('?>', '? >')}?>`);
  }
}

function unchanged(node: { readonly value: string; readonly source?: LeafSource }): string | undefined {
  return node.source?.value === node.value ? node.source.raw : undefined;
}

function writeTags(element: XmlElement, out: string[]): void {
  const { name, attributes, children, source } = element;
  const kept = source !== undefined && source.name === name && source.attributes === attributes;
  const open = kept
    ? source.open
    : `<${name}${attributes.map(writeAttribute).join('')}${children.length ? '' : '/'}>`;
  if (children.length === 0) {
    out.push(open, kept ? source.close : '');
    return;
  }
  // An element read as empty that has got children keeps its start tag, less the slash.
  out.push(open.endsWith('/>') ? `${open.slice(0, -2)}>` : open);
  for (const child of children) write(child, out);
  out.push(kept && source.close !== '' ? source.close : `</${name}>`);
}

function writeAttribute(attribute: XmlAttribute): string {
  return ` ${attribute.name}="${escapeAttribute(attribute.value)}"`;
}

const ENTITIES: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\n': '&#10;',
  '\r': '&#13;',
  '\t': '&#9;',
};

// A reader turns unescaped line ends and tabs in an attribute into blanks (XML 1.0 section 3.3.3).
function escapeAttribute(value: string): string {
  return value.replace(/[&<"\n\r\t]/g, (c) => ENTITIES[c]!);
}

function escapeText(value: string): string {
  return value.replace(/[&<>\r]/g, (c) => ENTITIES[c]!);
}
