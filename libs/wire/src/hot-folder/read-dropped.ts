import { createHash } from 'node:crypto';
import { constants, type Stats } from 'node:fs';
import { open } from 'node:fs/promises';

export interface DroppedFile {
  /** As dropped; a label, never a path. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** The same for the same name and content, so that a repeat after a crash is recognised. */
  readonly key: string;
}

/** What shows that a file is still being written: any difference between two looks. */
export function looks(stat: Stats): string {
  return `${stat.dev}:${stat.ino}:${stat.size}:${stat.mtimeMs}`;
}

/** `changed`: look again later. `tooLarge`: no amount of waiting helps. */
export type ReadDropped = DroppedFile | 'changed' | 'tooLarge';

/** Reads a file that looked finished; opened without following a link, and checked to be the same before and after. */
export async function readDropped(
  path: string,
  name: string,
  seen: string,
  maxBytes: number,
): Promise<ReadDropped> {
  const handle = await open(path, constants.O_RDONLY | constants.O_NOFOLLOW | constants.O_NONBLOCK).catch(
    (cause: NodeJS.ErrnoException) => {
      // ENOENT: taken away; ELOOP: turned into a link. The next look judges what is there then.
      if (cause.code === 'ENOENT' || cause.code === 'ELOOP') return null;
      throw cause;
    },
  );
  if (handle === null) return 'changed';
  try {
    const before = await handle.stat();
    if (!before.isFile() || looks(before) !== seen) return 'changed';
    if (before.size > maxBytes) return 'tooLarge';
    const bytes = await handle.readFile();
    if (looks(await handle.stat()) !== seen || bytes.length !== before.size) return 'changed';
    const key = createHash('sha256').update(name).update('\0').update(bytes).digest('hex');
    return { name, bytes, key };
  } finally {
    await handle.close();
  }
}
