import { crc32 } from 'node:zlib';
import yauzl from 'yauzl';
import { done, type Result } from '#libs/kernel';
import {
  type Package,
  type PackageLimits,
  type PackagePart,
  packageLimits,
  refuseBroken,
  refuseLimit,
} from './package.js';
import { kindOfPart, mediaTypeByName } from './part-kind.js';
import { checkOrder } from './part-order.js';

/**
 * Reads a ZIP package. Everything is judged from the directory before a byte is unpacked: count, sizes, ratio, names,
 * overlaps; the names stay labels and never become paths. Refusals: PACKAGE_BROKEN, PACKAGE_LIMIT.
 */
export async function readZip(
  bytes: Uint8Array,
  limits: PackageLimits = packageLimits,
): Promise<Result<Package>> {
  let zip: yauzl.ZipFile;
  try {
    zip = await yauzl.fromBufferPromise(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), {
      lazyEntries: true,
      strictFileNames: true,
    });
  } catch (cause) {
    return refuseBroken(`The ZIP cannot be opened: ${inWords(cause)}.`);
  }
  try {
    const entries = await judgeDirectory(zip, bytes.length, limits);
    if (!entries.ok) return entries;
    const parts: PackagePart[] = [];
    for (const entry of entries.value) {
      const part = await unpack(zip, entry);
      if (!part.ok) return part;
      parts.push(part.value);
    }
    return checkOrder({ container: 'zip', parts: inOrder(parts) });
  } catch (cause) {
    return refuseBroken(`The ZIP cannot be read: ${inWords(cause)}.`);
  } finally {
    zip.close();
  }
}

/** Entries that hold files, once the directory as a whole has passed. */
async function judgeDirectory(
  zip: yauzl.ZipFile,
  packedBytes: number,
  limits: PackageLimits,
): Promise<Result<yauzl.Entry[]>> {
  const files: yauzl.Entry[] = [];
  const names = new Set<string>();
  const spans: { from: number; to: number; name: string }[] = [];
  let total = 0;
  if (zip.entryCount > limits.maxParts)
    return refuseLimit(`The ZIP has more than ${limits.maxParts} entries.`);
  for await (const entry of zip.eachEntry()) {
    const name = entry.fileName;
    const fault = faultOf(entry, names);
    if (fault !== null) return refuseBroken(`The ZIP entry ${JSON.stringify(name)} ${fault}.`, name);
    names.add(name.toLowerCase());
    const { fileDataStart } = await zip.readLocalFileHeaderPromise(entry, { minimal: true });
    spans.push({ from: entry.relativeOffsetOfLocalHeader, to: fileDataStart + entry.compressedSize, name });
    total += entry.uncompressedSize;
    if (entry.uncompressedSize > limits.maxPartBytes)
      return refuseLimit(`The ZIP entry unpacks to more than ${limits.maxPartBytes} bytes.`, name);
    if (total > limits.maxBytes)
      return refuseLimit(`The ZIP unpacks to more than ${limits.maxBytes} bytes.`, name);
    if (total > limits.ratioFreeBytes && total > packedBytes * limits.maxRatio) {
      return refuseLimit(`The ZIP unpacks to more than ${limits.maxRatio} times its size.`, name);
    }
    if (!name.endsWith('/')) files.push(entry);
  }
  spans.sort((a, b) => a.from - b.from);
  const clash = spans.find((span, i) => i > 0 && span.from < spans[i - 1]!.to);
  if (clash !== undefined) {
    return refuseBroken(`The ZIP entry ${JSON.stringify(clash.name)} overlaps another.`, clash.name);
  }
  return done(files);
}

const STORED = 0;
const DEFLATED = 8;
/** Unix file type in the upper half of the external attributes (APPNOTE 6.3, "version made by" 3). */
const TYPE_MASK = 0o170000;
const PLAIN_TYPES: ReadonlySet<number> = new Set([0, 0o100000, 0o040000]);

function faultOf(entry: yauzl.Entry, names: ReadonlySet<string>): string | null {
  if (names.has(entry.fileName.toLowerCase())) return 'occurs twice';
  if ([...entry.fileName].some((c) => c.charCodeAt(0) < 0x20)) return 'has a control character in its name';
  if (entry.isEncrypted()) return 'is encrypted';
  if (entry.compressionMethod !== STORED && entry.compressionMethod !== DEFLATED)
    return 'is packed in an unknown way';
  const unix = entry.versionMadeBy >> 8 === 3;
  if (unix && !PLAIN_TYPES.has((entry.externalFileAttributes >>> 16) & TYPE_MASK))
    return 'is a link or a device';
  return null;
}

/** yauzl checks that a stream gives exactly the size that the directory announced; the sum is checked here. */
async function unpack(zip: yauzl.ZipFile, entry: yauzl.Entry): Promise<Result<PackagePart>> {
  const name = entry.fileName;
  try {
    const chunks: Buffer[] = [];
    for await (const chunk of await zip.openReadStreamPromise(entry)) chunks.push(chunk as Buffer);
    const bytes = Buffer.concat(chunks);
    if (crc32(bytes) !== entry.crc32)
      return refuseBroken(`The ZIP entry ${JSON.stringify(name)} is damaged.`, name);
    return done({ name, contentId: null, mediaType: mediaTypeByName(name), bytes });
  } catch (cause) {
    return refuseBroken(`The ZIP entry ${JSON.stringify(name)} cannot be unpacked: ${inWords(cause)}.`, name);
  }
}

/** A ZIP has no order of its own: message, then tickets, then content; those in the root folder first (from memory). */
function inOrder(parts: readonly PackagePart[]): PackagePart[] {
  const rank = (part: PackagePart): number => {
    const kind = kindOfPart(part);
    if (kind === 'content') return 4;
    return (kind === 'message' ? 0 : 2) + (part.name.includes('/') ? 1 : 0);
  };
  return parts
    .map((part) => ({ part, at: rank(part) }))
    .sort((a, b) => a.at - b.at)
    .map(({ part }) => part);
}

function inWords(cause: unknown): string {
  return cause instanceof Error ? cause.message : 'unknown cause';
}
