import { escapeAttribute } from './escape.js';
import type { XmlAttribute, XmlElement } from './node.js';

/** The text of an element's start tag; what was read and not changed in it stands as it was written. */
export function startTag(element: XmlElement): string {
  const { name, attributes, children, source } = element;
  if (source === undefined) {
    return `<${name}${attributes.map(freshAttribute).join('')}${children.length > 0 ? '' : '/'}>`;
  }
  const open =
    source.attributes === attributes && hasName(source.open, name) ? source.open : changed(element);
  // An element read as empty that has got children keeps its start tag, less the slash.
  return children.length > 0 && open.endsWith('/>') ? `${open.slice(0, -2)}>` : open;
}

/** The text of its end tag; '' for an element that is written as empty. */
export function endTag({ name, children, source }: XmlElement): string {
  if (source === undefined) return children.length > 0 ? `</${name}>` : '';
  if (source.close === '') return children.length > 0 ? `</${name}>` : '';
  return source.close.slice(2, -1).trimEnd() === name ? source.close : `</${name}>`;
}

const hasName = (open: string, name: string): boolean =>
  open.startsWith(name, 1) && ' \t\r\n/>'.includes(open[name.length + 1]!);

const freshAttribute = ({ name, value }: XmlAttribute): string => ` ${name}="${escapeAttribute(value)}"`;

// One attribute of a well-formed tag, with the blanks before it.
const WRITTEN = /[ \t\r\n]+[^ \t\r\n=]+[ \t\r\n]*=[ \t\r\n]*(?:"[^"]*"|'[^']*')/y;

/** The start tag as read, with the attributes that it has now: each that was there keeps its place among the blanks. */
function changed({ name, attributes, source }: XmlElement): string {
  const { open, attributes: before } = source!;
  const written: string[] = [];
  WRITTEN.lastIndex = /^<[^ \t\r\n/>]+/.exec(open)![0].length;
  let end = WRITTEN.lastIndex;
  for (let match = WRITTEN.exec(open); match !== null; match = WRITTEN.exec(open)) {
    written.push(match[0]);
    end = WRITTEN.lastIndex;
  }
  const now = attributes.map((attribute) => {
    const at = before.findIndex((old) => old.name === attribute.name);
    const old = written[at];
    if (old === undefined) return freshAttribute(attribute);
    return before[at]!.value === attribute.value ? old : withValue(old, attribute.value);
  });
  return `<${name}${now.join('')}${open.slice(end)}`;
}

function withValue(written: string, value: string): string {
  const quote = written.endsWith("'") ? "'" : '"';
  return written.slice(0, written.indexOf(quote) + 1) + escapeAttribute(value, quote) + quote;
}
