import { open, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join, parse } from 'node:path';

const TRIES = 10_000;

/** A second file that belongs beside the moved one, written before the move: no file lies there unexplained. */
export interface Companion {
  readonly suffix: string;
  readonly text: string;
}

/**
 * Moves `from` into `folder` under `name`, or `name-2`, `name-3` … when that is taken, and returns the name. The name is
 * claimed by an empty file first and the rename replaces that, so two movers never overwrite each other's file; after a
 * crash in between, an empty file is the worst that is left. Null when `from` is gone: somebody else moved it.
 */
export async function moveInto(
  from: string,
  folder: string,
  name: string,
  companion: Companion | null = null,
): Promise<string | null> {
  const { name: stem, ext } = parse(name);
  for (let n = 1; n <= TRIES; n++) {
    const wanted = n === 1 ? name : `${stem}-${n}${ext}`;
    const path = join(folder, wanted);
    const second = companion === null ? null : `${path}${companion.suffix}`;
    if (second !== null && (await exists(second))) continue;
    if (!(await claim(path))) continue;
    try {
      if (second !== null) await writeFile(second, companion!.text);
      await rename(from, path);
      return wanted;
    } catch (cause) {
      await rm(path, { force: true });
      if (second !== null) await rm(second, { force: true });
      if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return null;
      throw cause;
    }
  }
  throw new Error(`${folder} holds ${TRIES} files of that name`);
}

async function claim(path: string): Promise<boolean> {
  try {
    await (await open(path, 'wx')).close();
    return true;
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw cause;
  }
}

async function exists(path: string): Promise<boolean> {
  return (await stat(path).catch(() => null)) !== null;
}
