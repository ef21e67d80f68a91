import { readParameters } from './media-type.js';

/** Header fields of a part by lower-case name, or null when the block is malformed or names a field twice. */
export function readHeader(bytes: Uint8Array): Map<string, string> | null {
  const text = Buffer.from(bytes).toString('utf8');
  const fields = new Map<string, string>();
  // Folded lines begin with white space and continue the field before (RFC 5322 section 2.2.3).
  const lines = text.replace(/\r?\n[ \t]+/g, ' ').split(/\r?\n/);
  for (const line of lines) {
    if (line === '') continue;
    const field = /^([!-9;-~]+):[ \t]*(.*)$/.exec(line);
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

/** The file name that the sender shows (RFC 2183; `filename*` in UTF-8, RFC 2231), its folders cut off. */
export function readFileName(
  disposition: string | undefined,
  contentTypeName: string | undefined,
): string | null {
  const parameters = disposition === undefined ? undefined : readParameters(disposition)?.parameters;
  const extended = /^utf-8'[^']*'(.*)$/i.exec(parameters?.get('filename*') ?? '')?.[1];
  let name = parameters?.get('filename') ?? contentTypeName;
  if (extended !== undefined) {
    try {
      name = decodeURIComponent(extended);
    } catch {
      // A malformed extended name leaves the plain one, which every sender must give beside it.
    }
  }
  const last = name?.split(/[/\\]/).at(-1)?.trim();
  return last === undefined || last === '' || hasControl(last) ? null : last;
}

function hasControl(text: string): boolean {
  return [...text].some((c) => c.charCodeAt(0) < 0x20 && c !== '\t');
}
