/** One body part. `contentId` is without angle brackets. */
export interface Part {
  readonly contentType: string;
  readonly contentId: string | null;
  readonly bytes: Uint8Array;
}

/** Value of a parameter of a header field, with or without quotes (RFC 2045, section 5.1). */
function parameter(header: string, name: string): string | null {
  const match = new RegExp(`;\\s*${name}\\s*=\\s*(?:"([^"]*)"|([^;\\s]+))`, 'i').exec(header);
  return match?.[1] ?? match?.[2] ?? null;
}

export function isMultipart(contentType: string): boolean {
  return /^\s*multipart\/related\b/i.test(contentType);
}

/**
 * Parts of a multipart/related body in order (RFC 2046, section 5.1.1, RFC 2387); null when it is malformed. Encodings
 * base64, 8bit, binary and 7bit, as the JDF specification asks of a reader.
 */
export function readMultipart(body: Uint8Array, contentType: string): Part[] | null {
  const boundary = parameter(contentType, 'boundary');
  if (boundary === null || boundary === '') return null;
  const text = `\r\n${Buffer.from(body).toString('latin1')}`;
  const delimiter = `\r\n--${boundary}`;
  const pieces = text.split(delimiter);
  const last = pieces.at(-1);
  if (pieces.length < 3 || last === undefined || !last.startsWith('--')) return null;
  const parts = pieces.slice(1, -1).map(readPart);
  return parts.every((part) => part !== null) ? parts : null;
}

function readPart(piece: string): Part | null {
  const blank = piece.indexOf('\r\n\r\n');
  if (blank < 0) return null;
  const fields = new Map(
    piece
      .slice(0, blank)
      .replace(/\r\n[ \t]+/g, ' ')
      .split('\r\n')
      .map((line): [string, string] => {
        const colon = line.indexOf(':');
        return [line.slice(0, Math.max(0, colon)).trim().toLowerCase(), line.slice(colon + 1).trim()];
      }),
  );
  const content = piece.slice(blank + 4);
  const encoding = fields.get('content-transfer-encoding')?.toLowerCase() ?? '7bit';
  if (!['base64', '7bit', '8bit', 'binary'].includes(encoding)) return null;
  return {
    contentType: fields.get('content-type') ?? 'text/plain',
    contentId: /^<(.+)>$/.exec(fields.get('content-id') ?? '')?.[1] ?? null,
    bytes: Buffer.from(content, encoding === 'base64' ? 'base64' : 'latin1'),
  };
}

/** The part that a cid: address names, compared without case and %-escapes (JDF specification, MIME packaging). */
export function partOf(parts: readonly Part[], url: string): Part | null {
  const wanted = plain(url.slice('cid:'.length));
  return parts.find(({ contentId }) => contentId !== null && plain(contentId) === wanted) ?? null;
}

function plain(id: string): string {
  try {
    return decodeURIComponent(id).toLowerCase();
  } catch {
    return id.toLowerCase();
  }
}

/** A multipart/related body as text: every part in base64, so that no boundary can occur in it. */
export function writeMultipart(
  parts: readonly Part[],
  boundary: string,
): { readonly contentType: string; readonly body: string } {
  const pieces = parts.map(({ contentType, contentId, bytes }) => {
    const id = contentId === null ? '' : `Content-ID: <${contentId}>\r\n`;
    const lines =
      Buffer.from(bytes)
        .toString('base64')
        .match(/.{1,76}/g) ?? [];
    return `--${boundary}\r\nContent-Type: ${contentType}\r\nContent-Transfer-Encoding: base64\r\n${id}\r\n${lines.join('\r\n')}\r\n`;
  });
  const type = parts[0]?.contentType ?? 'text/plain';
  return {
    contentType: `multipart/related; type="${type}"; boundary="${boundary}"`,
    body: `${pieces.join('')}--${boundary}--\r\n`,
  };
}
