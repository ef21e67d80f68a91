import { Fault, type IdSource } from '#libs/kernel';
import type { PackagePart, PartToSend } from './package.js';
import { encodeBase64 } from './transfer-encoding.js';

export interface MultipartToSend {
  /** The first is the root. Each with a Content-ID if another part refers to it. */
  readonly parts: readonly PartToSend[];
  /** base64 must be understood by every receiver of the standard, binary should be. */
  readonly encoding: 'base64' | '8bit' | 'binary';
}

export interface WrittenPackage {
  /** Value of the Content-Type header. */
  readonly contentType: string;
  readonly body: AsyncIterable<Uint8Array>;
}

/**
 * Writes multipart/related (RFC 2046, RFC 2387) as a stream; nothing is held but what is being written. The boundary
 * comes from `ids` and occurs in no content that is in memory; base64 has no dash and can hold none. Of a stream in
 * another encoding it is only as unlikely as its random bits make it.
 */
export function writeMultipart({ parts, encoding }: MultipartToSend, ids: IdSource): WrittenPackage {
  const root = parts[0];
  if (root === undefined) throw new Fault('BROKEN', 'a package without a part was to be written');
  const heads = parts.map((part) => headerOf(part, encoding));
  let boundary = '';
  do boundary = `sidelay-${ids.next()}`;
  while (encoding !== 'base64' && parts.some((part) => holds(part, boundary)));
  return {
    contentType: `multipart/related; boundary="${boundary}"; type="${root.mediaType}"`,
    body: bodyOf(parts, heads, encoding, boundary),
  };
}

async function* bodyOf(
  parts: readonly PartToSend[],
  heads: readonly string[],
  encoding: MultipartToSend['encoding'],
  boundary: string,
): AsyncGenerator<Uint8Array> {
  for (const [i, { content }] of parts.entries()) {
    yield Buffer.from(`${i === 0 ? '' : '\r\n'}--${boundary}\r\n${heads[i]}\r\n`, 'utf8');
    const chunks = content instanceof Uint8Array ? [content] : content;
    yield* encoding === 'base64' ? encodeBase64(chunks) : chunks;
  }
  yield Buffer.from(`\r\n--${boundary}--\r\n`, 'latin1');
}

function holds({ content }: PartToSend, boundary: string): boolean {
  return content instanceof Uint8Array && Buffer.from(content).includes(boundary);
}

function headerOf(part: Omit<PackagePart, 'bytes'>, encoding: string): string {
  const lines = [`Content-Type: ${part.mediaType}`, `Content-Transfer-Encoding: ${encoding}`];
  if (part.contentId !== null) {
    if (!/^[!-;=?-~]+$/.test(part.contentId))
      throw new Fault('BROKEN', 'a Content-ID has characters it must not');
    lines.push(`Content-ID: <${part.contentId}>`);
  }
  const plain = part.name.replace(/[^ -~]|["\\/]/g, '_');
  const exact = plain === part.name ? '' : `; filename*=UTF-8''${percentEncoded(part.name)}`;
  lines.push(`Content-Disposition: attachment; filename="${plain}"${exact}`);
  return lines.map((line) => `${line}\r\n`).join('');
}

/** RFC 8187 section 3.2.1 allows fewer characters than encodeURIComponent leaves alone. */
function percentEncoded(text: string): string {
  return encodeURIComponent(text).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);
}
