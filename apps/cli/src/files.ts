import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadPlant, projectPath } from '#apps/server';
import type { Plant } from '#libs/craft';
import { error, type Problem } from '#libs/kernel';
import { text } from './args.js';
import { type Call, WrongUse } from './command.js';

export interface ReadFile {
  /** As the caller wrote it. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

export interface UnreadFile {
  readonly file: string;
  readonly problem: Problem;
}

export interface FilesRead {
  readonly files: readonly ReadFile[];
  readonly unread: readonly UnreadFile[];
}

/** All files that can be read, and those that cannot, said on stderr. None at all ends with the status of wrong use. */
export function readFiles(call: Call): FilesRead {
  const files: ReadFile[] = [];
  const unread: UnreadFile[] = [];
  for (const file of call.args) {
    try {
      files.push({ file, bytes: readFileSync(resolve(call.folder, file)) });
    } catch (cause) {
      const message = `The file can't be read: ${reason(cause)}.`;
      unread.push({ file, problem: error('FILE_UNREADABLE', message) });
      call.err(`${file}: ${message}`);
    }
  }
  return { files, unread };
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is none of this name',
  EISDIR: 'it is a folder',
  EACCES: 'you may not read it',
};

function reason(cause: unknown): string {
  const code = (cause as NodeJS.ErrnoException).code ?? 'unknown cause';
  return REASONS[code] ?? code;
}

/** Whether the first character that is neither blank nor a byte order mark begins a JSON object or list. */
export function looksLikeJson(bytes: Uint8Array): boolean {
  const first = bytes.subarray(0, 1024).find((byte) => byte > 0x20 && byte < 0x80);
  return first === 0x7b || first === 0x5b;
}

/** The plant definition that --plant names, else the environment's, else the demo's. */
export function plantOf(call: Call): Plant {
  const named = text(call, 'plant') ?? call.env.SIDELAY_PLANT;
  const path = named === undefined ? projectPath('demo-data', 'plant.yaml') : resolve(call.folder, named);
  const plant = loadPlant(path);
  if (plant.ok) return plant.value;
  const lines = plant.problems.map(({ line, path: at, message }) =>
    ['  ', line === null ? '' : `line ${line}: `, at === null || at === '' ? '' : `${at}: `, message].join(
      '',
    ),
  );
  throw new WrongUse([`The plant definition ${named ?? path} has faults:`, ...lines].join('\n'));
}
