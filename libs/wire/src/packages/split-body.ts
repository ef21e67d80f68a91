import { done, type Result } from '#libs/kernel';
import { refuseBroken, refuseLimit } from './package.js';

const LF = 0x0a;
const CR = 0x0d;
const DASH = 0x2d;

/**
 * Cuts a multipart body at its boundary lines (RFC 2046 section 5.1.1) and returns header and content of each part,
 * without copying. A line counts only when it is the boundary to its end (white space may follow), so text that merely
 * begins like it stays text. What precedes the first and follows the last boundary is left out, as the RFC says.
 */
export function splitBody(bytes: Uint8Array, boundary: string, maxParts: number): Result<Uint8Array[]> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const delimiter = Buffer.from(`--${boundary}`, 'latin1');
  const parts: Uint8Array[] = [];
  let open = -1;
  for (let at = buffer.indexOf(delimiter); at >= 0; at = buffer.indexOf(delimiter, at + 1)) {
    if (at > 0 && buffer[at - 1] !== LF) continue;
    const line = readLine(buffer, at + delimiter.length);
    if (line === null) continue;
    if (open >= 0) {
      if (parts.length === maxParts) return refuseLimit(`The package has more than ${maxParts} parts.`);
      parts.push(buffer.subarray(open, Math.max(open, lineBreakBefore(buffer, at))));
    }
    if (line.closes) return parts.length > 0 ? done(parts) : refuseBroken('The package has no part.');
    open = line.next;
  }
  const inside = parts.length + 1;
  return open < 0
    ? refuseBroken('The package does not contain its boundary.')
    : refuseBroken(`The package breaks off: its closing boundary is missing.`, `part ${inside}`);
}

/** What follows the delimiter: `--` closes; then only blanks up to the line's end. Null: it is no boundary line. */
function readLine(buffer: Buffer, after: number): { closes: boolean; next: number } | null {
  const closes = buffer[after] === DASH && buffer[after + 1] === DASH;
  let at = closes ? after + 2 : after;
  while (buffer[at] === 0x20 || buffer[at] === 0x09) at++;
  if (at >= buffer.length) return closes ? { closes, next: at } : null;
  if (buffer[at] === CR && buffer[at + 1] === LF) return { closes, next: at + 2 };
  return buffer[at] === LF ? { closes, next: at + 1 } : null;
}

/** The line break before a boundary belongs to the boundary, not to the part. */
function lineBreakBefore(buffer: Buffer, at: number): number {
  return buffer[at - 2] === CR ? at - 2 : at - 1;
}
