import type { XmlEncoding } from './node.js';

/**
 * The names that an XML declaration may give an encoding, in lower case.
 * Source: IANA character set registry, names and aliases of ISO_8859-1:1987 and US-ASCII that XML can write; UTF-8 and
 * UTF-16 by RFC 3629 and RFC 2781, and "utf8", which is often written.
 */
const names: Readonly<Record<XmlEncoding, readonly string[]>> = {
  'utf-8': ['utf-8', 'utf8'],
  'utf-16le': ['utf-16', 'utf-16le'],
  'utf-16be': ['utf-16', 'utf-16be'],
  'iso-8859-1': [
    ...['iso-8859-1', 'iso_8859-1', 'iso8859-1', 'latin1', 'l1'],
    ...['iso-ir-100', 'ibm819', 'cp819', 'csisolatin1'],
  ],
  'us-ascii': [
    ...['us-ascii', 'ascii', 'us', 'iso646-us', 'ansi_x3.4-1968', 'ansi_x3.4-1986'],
    ...['iso-ir-6', 'ibm367', 'cp367', 'csascii'],
  ],
};

// XML 1.0 productions 23 to 26, 80 and 81; more blanks than this are nobody's declaration.
const DECLARED =
  /^<\?xml\s[^>]{0,1000}?encoding[ \t\r\n]{0,100}=[ \t\r\n]{0,100}["']([A-Za-z][A-Za-z0-9._-]*)["']/;

/** The encoding that an XML declaration at the beginning of `text` names, as written. */
export function declaredEncoding(text: string): string | undefined {
  return DECLARED.exec(text)?.[1];
}

/** Whether a declaration may call this encoding so. */
export function isNameOf(declared: string, encoding: XmlEncoding): boolean {
  return names[encoding].includes(declared.toLowerCase());
}

/** The one-byte encoding of this name, if it is the name of one. */
export function byteEncodingOf(declared: string): 'iso-8859-1' | 'us-ascii' | undefined {
  return (['iso-8859-1', 'us-ascii'] as const).find((encoding) => isNameOf(declared, encoding));
}

/** An XML declaration that names another encoding; '' stays ''. */
export function renamed(declaration: string, encoding: string): string {
  return declaration.replace(/(encoding\s*=\s*["'])[^"']*/, `$1${encoding}`);
}
