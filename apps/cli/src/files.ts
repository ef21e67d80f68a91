import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadPlant, projectPath } from '#apps/server';
import type { Plant } from '#libs/craft';
import { type Call, text, WrongUse } from './command.js';

export interface ReadFile {
  /** As the caller wrote it. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** All files that can be read; the others are said on stderr. None at all is wrong use. */
export function readFiles(call: Call): { files: readonly ReadFile[]; unread: number } {
  const files: ReadFile[] = [];
  for (const file of call.args) {
    try {
      files.push({ file, bytes: readFileSync(resolve(call.folder, file)) });
    } catch (cause) {
      call.err(`${file}: can't be read (${(cause as NodeJS.ErrnoException).code ?? 'unknown'})`);
    }
  }
  if (files.length === 0) throw new WrongUse('No file could be read.');
  return { files, unread: call.args.length - files.length };
}

/** The plant definition that --plant names, else the environment's, else the demo's. */
export function plantOf(call: Call): Plant {
  const named = text(call, 'plant') ?? call.env.SIDELAY_PLANT;
  const path = named === undefined ? projectPath('demo-data', 'plant.yaml') : resolve(call.folder, named);
  const plant = loadPlant(path);
  if (plant.ok) return plant.value;
  throw new WrongUse(
    `${named ?? path}:\n${plant.problems.map((p) => `  ${p.line ?? ''} ${p.path ?? ''} ${p.message}`).join('\n')}`,
  );
}
