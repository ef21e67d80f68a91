import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { WrongUse } from './command.js';

/** Writes a file where the caller wants it, with the folders above it. A place that cannot be written is wrong use. */
export function writeTo(path: string, content: string | Uint8Array): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  } catch (cause) {
    throw new WrongUse(`${path} can't be written (${(cause as NodeJS.ErrnoException).code ?? 'unknown'}).`);
  }
}
