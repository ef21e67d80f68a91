import type { Result } from '#libs/kernel';
import { inStretches } from './byte-source.js';
import { readMediaType } from './media-type.js';
import { type Package, type PackageLimits, packageLimits } from './package.js';
import { readMultipart } from './read-multipart.js';
import { readZip } from './read-zip.js';

/** PK\3\4, or PK\5\6 for a ZIP without entries (APPNOTE 6.3, sections 4.3.7 and 4.3.16). */
function looksLikeZip(bytes: Uint8Array): boolean {
  return (
    bytes[0] === 0x50 &&
    bytes[1] === 0x4b &&
    ((bytes[2] === 3 && bytes[3] === 4) || (bytes[2] === 5 && bytes[3] === 6))
  );
}

/**
 * Which container the bytes are, or null for a plain document. `contentType` is the HTTP header if there was one; a file
 * shows it by its first bytes.
 */
export function packageKind(bytes: Uint8Array, contentType: string | null): 'multipart' | 'zip' | null {
  if (looksLikeZip(bytes)) return 'zip';
  const essence = contentType === null ? null : readMediaType(contentType)?.essence;
  if (essence?.startsWith('multipart/')) return 'multipart';
  const start = Buffer.from(bytes.subarray(0, 2000)).toString('latin1');
  return /^(?:[!-9;-~]+:[^\r\n]*\r?\n(?:[ \t][^\r\n]*\r?\n)*)*content-type:[ \t]*multipart\//i.test(start)
    ? 'multipart'
    : null;
}

/** Reads either container; the same order of parts comes out of both. Refusals: PACKAGE_BROKEN, PACKAGE_LIMIT. */
export async function readPackage(
  bytes: Uint8Array,
  contentType: string | null,
  limits: PackageLimits = packageLimits,
): Promise<Result<Package>> {
  if (looksLikeZip(bytes)) return readZip(bytes, limits);
  const essence = contentType === null ? undefined : readMediaType(contentType)?.essence;
  return readMultipart(inStretches(bytes), essence?.startsWith('multipart/') ? contentType : null, limits);
}
