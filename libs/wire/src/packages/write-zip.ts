import { type PassThrough, Readable } from 'node:stream';
import yazl from 'yazl';
import { Fault, type Instant } from '#libs/kernel';
import type { PartToSend } from './package.js';

/** Files of a ZIP are written for everybody to read and nobody to execute. */
const MODE = 0o100644;

/**
 * Writes a ZIP package as a stream; a part's name is its path inside. The first entry is the root: the message if there
 * is one, in the root folder (the standard's second generation, from memory). `now` is the time that the entries carry.
 * A name that climbs, is absolute or occurs twice is a fault of the caller.
 */
export function writeZip(parts: readonly PartToSend[], now: Instant): AsyncIterable<Uint8Array> {
  if (parts.length === 0) throw new Fault('BROKEN', 'a package without a part was to be written');
  const names = new Set(parts.map(({ name }) => name.toLowerCase()));
  if (names.size < parts.length) throw new Fault('BROKEN', 'two parts of a ZIP have the same name');
  const zip = new yazl.ZipFile();
  const options = { mtime: new Date(now), mode: MODE };
  const out = zip.outputStream as PassThrough;
  zip.on('error', (cause: Error) => out.destroy(cause));
  for (const { name, content } of parts) {
    try {
      if (content instanceof Uint8Array) zip.addBuffer(Buffer.from(content), name, options);
      else zip.addReadStream(guarded(content, out), name, options);
    } catch (cause) {
      throw new Fault('BROKEN', `"${name}" cannot be the name of a part of a ZIP`, { cause });
    }
  }
  zip.end();
  return out;
}

/** A stream that fails ends the ZIP with its own failure; the ZIP library would wait for ever. */
function guarded(content: AsyncIterable<Uint8Array>, out: PassThrough): Readable {
  return Readable.from(content, { objectMode: false }).on('error', (cause) => out.destroy(cause));
}
