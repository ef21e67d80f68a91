import { Fault, type IdSource } from '#libs/kernel';
import type { PackagePart } from './package.js';
import { encodeBase64 } from './transfer-encoding.js';

export interface MultipartToSend {
  /** The first is the root. Each with a Content-ID if another part refers to it. */
  readonly parts: readonly PackagePart[];
  /** base64 must be understood by every receiver of the standard, binary should be. */
  readonly encoding: 'base64' | '8bit' | 'binary';
}

export interface WrittenPackage {
  /** Value of the Content-Type header. */
  readonly contentType: string;
  readonly body: Uint8Array;
}

/** Writes multipart/related (RFC 2046, RFC 2387). The boundary comes from `ids` and occurs in no part. */
export function writeMultipart(pack: MultipartToSend, ids: IdSource): WrittenPackage {
  const bodies = pack.parts.map(({ bytes }) => (pack.encoding === 'base64' ? encodeBase64(bytes) : bytes));
  let boundary = '';
  do boundary = `sidelay-${ids.next()}`;
  while (bodies.some((body) => Buffer.from(body).includes(boundary)));
  const pieces: Uint8Array[] = [];
  for (const [i, part] of pack.parts.entries()) {
    pieces.push(Buffer.from(`--${boundary}\r\n${headerOf(part, pack.encoding)}\r\n`, 'utf8'), bodies[i]!);
    pieces.push(Buffer.from('\r\n', 'latin1'));
  }
  pieces.push(Buffer.from(`--${boundary}--\r\n`, 'latin1'));
  const root = pack.parts[0];
  if (root === undefined) throw new Fault('BROKEN', 'a package without a part was to be written');
  return {
    contentType: `multipart/related; boundary="${boundary}"; type="${root.mediaType}"`,
    body: Buffer.concat(pieces),
  };
}

function headerOf(part: PackagePart, encoding: string): string {
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
