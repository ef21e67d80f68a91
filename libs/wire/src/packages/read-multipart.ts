import { done, type Result } from '#libs/kernel';
import { type MediaType, readMediaType } from './media-type.js';
import { readContentId, readFileName, readHeader } from './multipart-header.js';
import {
  type Package,
  type PackageLimits,
  type PackagePart,
  packageLimits,
  refuseBroken,
  refuseLimit,
} from './package.js';
import { checkOrder, rootFirst } from './part-order.js';
import { splitBody } from './split-body.js';
import { decodePart } from './transfer-encoding.js';

/**
 * Reads a multipart/related package (RFC 2046 section 5.1, RFC 2387; part rules: JDF specification, "MIME packaging").
 * `contentType` is the HTTP header; null when the bytes are a file that begins with its own header (.mjm, .mjd).
 * Refusals: PACKAGE_BROKEN, PACKAGE_LIMIT, each with the part's label as its path.
 */
export function readMultipart(
  bytes: Uint8Array,
  contentType: string | null,
  limits: PackageLimits = packageLimits,
): Result<Package> {
  if (bytes.length > limits.maxBytes * 2)
    return refuseLimit(`The package is larger than ${limits.maxBytes * 2} bytes.`);
  const outer =
    contentType === null ? readFileHeader(bytes, limits) : done({ header: contentType, body: bytes });
  if (!outer.ok) return outer;
  const type = readMediaType(outer.value.header);
  if (type === null || type.essence !== 'multipart/related') {
    return refuseBroken('The package is not of the type multipart/related.');
  }
  const boundary = type.parameters.get('boundary') ?? '';
  // RFC 2046 section 5.1.1: 1 to 70 of these characters, the last no space.
  if (!/^[0-9A-Za-z'()+_,./:=? -]{0,69}[0-9A-Za-z'()+_,./:=?-]$/.test(boundary)) {
    return refuseBroken('The package names no boundary, or one that is not allowed.');
  }
  const bodies = splitBody(outer.value.body, boundary, limits.maxParts);
  if (!bodies.ok) return bodies;
  return readParts(bodies.value, type, limits);
}

function readParts(bodies: readonly Uint8Array[], type: MediaType, limits: PackageLimits): Result<Package> {
  const parts: PackagePart[] = [];
  const ids = new Set<string>();
  let total = 0;
  for (const [index, body] of bodies.entries()) {
    const part = readPart(body, `part ${index + 1}`, limits);
    if (!part.ok) return part;
    total += part.value.bytes.length;
    if (total > limits.maxBytes) {
      return refuseLimit(`The package unpacks to more than ${limits.maxBytes} bytes.`, part.value.name);
    }
    const id = part.value.contentId?.toLowerCase();
    if (id !== undefined && ids.has(id)) {
      return refuseBroken(`Two parts have the Content-ID <${part.value.contentId}>.`, part.value.name);
    }
    if (id !== undefined) ids.add(id);
    parts.push(part.value);
  }
  const ordered = rootFirst(parts, type.parameters.get('start'));
  return ordered.ok ? checkOrder({ container: 'multipart', parts: ordered.value }) : ordered;
}

function readPart(body: Uint8Array, label: string, limits: PackageLimits): Result<PackagePart> {
  const end = headerEnd(body);
  const headerBytes = end === null ? body.length : end.header;
  if (headerBytes > limits.maxHeaderBytes) {
    return refuseLimit(`The header of ${label} is longer than ${limits.maxHeaderBytes} bytes.`, label);
  }
  if (end === null) return refuseBroken(`The header of ${label} has no end.`, label);
  const fields = readHeader(body.subarray(0, end.header));
  if (fields === null) return refuseBroken(`The header of ${label} is malformed.`, label);
  const written = fields.get('content-type');
  const type = written === undefined ? null : readMediaType(written);
  if (type === null) return refuseBroken(`The header of ${label} has no readable Content-Type.`, label);
  if (type.essence.startsWith('multipart/') || type.essence.startsWith('message/')) {
    return refuseLimit(`The ${label} is itself a package; packages are not nested here.`, label);
  }
  const contentId = readContentId(fields.get('content-id'));
  if (fields.has('content-id') && contentId === null) {
    return refuseBroken(`The Content-ID of ${label} is not of the form <id@host>.`, label);
  }
  const encoding = fields.get('content-transfer-encoding') ?? '';
  const bytes = decodePart(body.subarray(end.body), encoding);
  if (bytes === null)
    return refuseBroken(`The bytes of ${label} are not the "${encoding}" they claim.`, label);
  const name =
    readFileName(fields.get('content-disposition'), type.parameters.get('name')) ?? contentId ?? label;
  return done({ name, contentId, mediaType: type.essence, bytes });
}

/** Where the empty line lies that ends a header, with LF or CRLF; a body that begins with it has no header. */
function headerEnd(bytes: Uint8Array): { header: number; body: number } | null {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (buffer[0] === 0x0a) return { header: 0, body: 1 };
  if (buffer[0] === 0x0d && buffer[1] === 0x0a) return { header: 0, body: 2 };
  for (let at = buffer.indexOf(0x0a); at >= 0; at = buffer.indexOf(0x0a, at + 1)) {
    if (buffer[at + 1] === 0x0a) return { header: at + 1, body: at + 2 };
    if (buffer[at + 1] === 0x0d && buffer[at + 2] === 0x0a) return { header: at + 1, body: at + 3 };
  }
  return null;
}

function readFileHeader(
  bytes: Uint8Array,
  limits: PackageLimits,
): Result<{ header: string; body: Uint8Array }> {
  const end = headerEnd(bytes.subarray(0, limits.maxHeaderBytes));
  const fields = end === null ? null : readHeader(bytes.subarray(0, end.header));
  const header = fields?.get('content-type');
  if (end === null || header === undefined) {
    return refuseBroken('The file does not begin with the header of a package (MIME-Version, Content-Type).');
  }
  return done({ header, body: bytes.subarray(end.body) });
}
