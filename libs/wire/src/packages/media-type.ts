export interface MediaType {
  /** `type/subtype` in lower case. */
  readonly essence: string;
  /** Parameter names in lower case. */
  readonly parameters: ReadonlyMap<string, string>;
}

const TOKEN = /^[!#$%&'*+.^_`|~0-9a-z-]+$/i;

/**
 * A header value of the form `value; name=token; name="quoted text"` (RFC 2045 section 5.1, RFC 2183 section 2), or null
 * when it is malformed or names a parameter twice: two readings of one header are how packages are smuggled.
 */
export function readParameters(value: string): { main: string; parameters: Map<string, string> } | null {
  const [main = '', ...rest] = splitOutsideQuotes(value);
  const parameters = new Map<string, string>();
  for (const piece of rest) {
    if (piece.trim() === '') continue;
    const at = piece.indexOf('=');
    if (at < 0) return null;
    const name = piece.slice(0, at).trim().toLowerCase();
    const text = piece.slice(at + 1).trim();
    const quoted = /^"((?:[^"\\]|\\.)*)"$/s.exec(text);
    if (!TOKEN.test(name) || parameters.has(name) || (quoted === null && /["\s]/.test(text))) return null;
    parameters.set(name, quoted === null ? text : quoted[1]!.replace(/\\(.)/gs, '$1'));
  }
  return { main: main.trim(), parameters };
}

/** Null when it is no media type. */
export function readMediaType(value: string): MediaType | null {
  const read = readParameters(value);
  if (read === null) return null;
  const [type = '', subtype = '', more] = read.main.split('/');
  if (more !== undefined || !TOKEN.test(type) || !TOKEN.test(subtype)) return null;
  return { essence: read.main.toLowerCase(), parameters: read.parameters };
}

function splitOutsideQuotes(value: string): string[] {
  const pieces: string[] = [];
  let piece = '';
  let quoted = false;
  for (let i = 0; i < value.length; i++) {
    const c = value[i]!;
    if (quoted && c === '\\') {
      piece += c + (value[++i] ?? '');
    } else if (c === ';' && !quoted) {
      pieces.push(piece);
      piece = '';
    } else {
      if (c === '"') quoted = !quoted;
      piece += c;
    }
  }
  pieces.push(piece);
  return pieces;
}
