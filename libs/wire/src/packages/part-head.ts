import { done, type Problem, type Result } from '#libs/kernel';
import { readFileName } from './file-name.js';
import { type MediaType, readMediaType } from './media-type.js';
import { readContentId, readHeader } from './multipart-header.js';
import { loose, refuseBroken } from './package.js';
import { PLAIN_ENCODINGS } from './transfer-encoding.js';

/** What the header of a part says, before anything of its body was read. */
export interface PartHead {
  /** `part 2`, within a package inside `part 2.1`: the place of a part without a name. */
  readonly label: string;
  /** The sender's name for it, else its Content-ID, else the label. */
  readonly name: string;
  readonly contentId: string | null;
  readonly mediaType: string;
  /** Content-Transfer-Encoding in lower case; empty when not stated. */
  readonly encoding: string;
}

export interface ReadHead {
  readonly head: PartHead;
  readonly type: MediaType;
}

/**
 * Reads the header of a part. A part without Content-Type is plain text (RFC 2046 section 5.1), with a warning, for the
 * JDF specification wants one. Refusal: PACKAGE_BROKEN.
 */
export function readPartHead(bytes: Uint8Array, label: string): Result<ReadHead> {
  const fields = readHeader(bytes);
  if (fields === null) return refuseBroken(`The header of ${label} is malformed.`, label);
  const warnings: Problem[] = [];
  const written = fields.get('content-type');
  if (written === undefined) {
    warnings.push(loose(`The header of ${label} has no Content-Type: it was taken for plain text.`, label));
  }
  const type = readMediaType(written ?? 'text/plain');
  if (type === null) return refuseBroken(`The header of ${label} has no readable Content-Type.`, label);
  if (type.essence.startsWith('message/')) {
    return refuseBroken(
      `The ${label} is a message of mail (${type.essence}), which is no content here.`,
      label,
    );
  }
  const contentId = readContentId(fields.get('content-id'));
  if (fields.has('content-id') && contentId === null) {
    return refuseBroken(`The Content-ID of ${label} is not of the form <id@host>.`, label);
  }
  const encoding = (fields.get('content-transfer-encoding') ?? '').trim().toLowerCase();
  if (type.essence.startsWith('multipart/') && !PLAIN_ENCODINGS.has(encoding)) {
    // RFC 2045 section 6.4: what is encoded are the parts inside, never a package as a whole.
    return refuseBroken(`The ${label} is a package that is itself in ${encoding}.`, label);
  }
  const name = readFileName(fields.get('content-disposition'), written) ?? contentId ?? label;
  return done({ head: { label, name, contentId, mediaType: type.essence, encoding }, type }, warnings);
}

/** The boundary that a package's type names, if it is one (RFC 2046 section 5.1.1: 1 to 70 of these, the last no space). */
export function boundaryOf(type: MediaType): string | null {
  const boundary = type.parameters.get('boundary') ?? '';
  return /^[0-9A-Za-z'()+_,./:=? -]{0,69}[0-9A-Za-z'()+_,./:=?-]$/.test(boundary) ? boundary : null;
}
