import { hasControl } from './file-name.js';

/** Header fields of a part by lower-case name, or null when the block is malformed or names a field twice. */
export function readHeader(bytes: Uint8Array): Map<string, string> | null {
  const text = Buffer.from(bytes).toString('utf8');
  const fields = new Map<string, string>();
  // Folded lines begin with white space and continue the field before (RFC 5322 section 2.2.3).
  const lines = text.replace(/\r?\n(?=[ \t])/g, '').split(/\r?\n/);
  for (const line of lines) {
    if (line === '') continue;
    const field = /^([!-9;-~]+):[ \t]*(.*)$/s.exec(line);
    const name = field?.[1]?.toLowerCase();
    if (name === undefined || fields.has(name) || hasControl(field![2]!)) return null;
    fields.set(name, field![2]!.trimEnd());
  }
  return fields;
}

/** `<id@host>` without its brackets; null when there is none or it is malformed. */
export function readContentId(value: string | undefined): string | null {
  const inside = value === undefined ? undefined : /^<([^<>\s]+)>$/.exec(value.trim())?.[1];
  return inside ?? null;
}

/**
 * The form in which Content-IDs and `cid:` addresses are compared: JDF specification, "MIME packaging": without regard to
 * case and %-escapes, angle brackets stand in the header only.
 */
export function canonicalId(id: string): string {
  return unescaped(id).toLowerCase();
}

/** Text without its %-escapes; as it is where they are malformed. */
export function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** Where the empty line lies that ends a header, with LF or CRLF; a body that begins with it has no header. */
export function headerEnd(bytes: Uint8Array): { header: number; body: number } | null {
  if (bytes[0] === 0x0a) return { header: 0, body: 1 };
  if (bytes[0] === 0x0d && bytes[1] === 0x0a) return { header: 0, body: 2 };
  for (let at = bytes.indexOf(0x0a); at >= 0; at = bytes.indexOf(0x0a, at + 1)) {
    if (bytes[at + 1] === 0x0a) return { header: at + 1, body: at + 2 };
    if (bytes[at + 1] === 0x0d && bytes[at + 2] === 0x0a) return { header: at + 1, body: at + 3 };
  }
  return null;
}
