import type { Stats } from 'node:fs';
import { lstat, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { error, isoTime, type Problem } from '#libs/kernel';
import { moveInto } from './claim-name.js';
import { looks, readDropped } from './read-dropped.js';
import type { HotFolderSettings } from './settings.js';

/** What each file looked like last, and how often in a row. */
export type Glances = Map<string, { readonly looks: string; readonly times: number }>;

/** A file without content may be one whose writer has only just opened it: it is given so much longer. */
const EMPTY_PATIENCE = 10;

/** One look at the folder, file after file in the order of their names. Never throws. */
export async function lookOnce(settings: HotFolderSettings, glances: Glances): Promise<void> {
  let names: string[];
  try {
    names = (await readdir(settings.folder)).filter(isForUs).sort();
  } catch (cause) {
    settings.onTrouble('', cause);
    return;
  }
  const present = new Set(names);
  for (const name of glances.keys()) if (!present.has(name)) glances.delete(name);
  for (const name of names) {
    try {
      await judge(settings, glances, name);
    } catch (cause) {
      settings.onTrouble(name, cause);
    }
  }
}

function isForUs(name: string): boolean {
  return !name.startsWith('.') && !/\.(tmp|part)$/i.test(name);
}

async function judge(settings: HotFolderSettings, glances: Glances, name: string): Promise<void> {
  const path = join(settings.folder, name);
  const stat = await lstat(path).catch(() => null);
  if (stat === null || stat.isDirectory()) return;
  const seen = looks(stat);
  if (!stat.isFile()) {
    const what = stat.isSymbolicLink() ? 'a link' : 'a pipe or a device';
    const why = error('KIND_UNKNOWN', `"${name}" is ${what}, not a file.`, { hint: 'Drop the file itself.' });
    return putAway(settings, name, seen, [why]);
  }
  if (!isStable(glances, name, stat, seen, settings.stableChecks ?? 2)) return;
  const file = await readDropped(path, name, seen, settings.maxBytes);
  if (file === 'changed') {
    glances.delete(name);
    return;
  }
  if (file === 'tooLarge') {
    const why = error('BODY_TOO_LARGE', `"${name}" is larger than ${settings.maxBytes} bytes.`);
    return putAway(settings, name, seen, [why]);
  }
  const answer = await settings.onFile(file);
  await putAway(settings, name, seen, 'rejected' in answer ? answer.rejected : null);
  glances.delete(name);
}

function isStable(glances: Glances, name: string, stat: Stats, seen: string, checks: number): boolean {
  const before = glances.get(name);
  const times = before?.looks === seen ? before.times + 1 : 0;
  glances.set(name, { looks: seen, times });
  return times >= (stat.size === 0 ? checks * EMPTY_PATIENCE : checks);
}

/** Moves a judged file out of the way; `problems` null means accepted. */
async function putAway(
  settings: HotFolderSettings,
  name: string,
  seen: string,
  problems: readonly Problem[] | null,
): Promise<void> {
  const folder = join(settings.folder, problems === null ? 'accepted' : 'rejected');
  const companion =
    problems === null
      ? null
      : { suffix: '.reasons.json', text: reasonsOf(name, isoTime(settings.clock.now()), problems) };
  const moved = await moveInto(join(settings.folder, name), folder, name, companion);
  if (moved === null) return;
  // Somebody may have dropped another file under this name since it was judged: that one goes back and is judged too.
  const now = join(folder, moved);
  if (looks(await lstat(now)) !== seen) await moveInto(now, settings.folder, name);
}

function reasonsOf(file: string, time: string, problems: readonly Problem[]): string {
  return `${JSON.stringify({ file, time, problems }, null, 2)}\n`;
}
