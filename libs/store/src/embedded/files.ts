import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Account, handOver, isOpenToAll } from './account.js';

/** Where things lie below the home of an embedded database. */
export interface Places {
  readonly home: string;
  readonly data: string;
  readonly log: string;
}

/**
 * The home of the database: the folder asked for; or, where the database's own account could not reach it (below root's
 * home), one under /var/lib that a file in the folder asked for names. Making it hands it to that account.
 */
export function openPlaces(dataDir: string, account: Account, log: (text: string) => void): Places {
  mkdirSync(dataDir, { recursive: true, mode: 0o755 });
  let home = dataDir;
  if (account.uid !== undefined && !isOpenToAll(dataDir)) {
    const elsewhere = join(dataDir, 'kept-at');
    if (!existsSync(elsewhere)) {
      writeFileSync(elsewhere, `/var/lib/sidelay-${randomBytes(6).toString('hex')}`);
      log(`PostgreSQL can't reach ${dataDir} as its own account; the database is kept in ${read(elsewhere)}`);
    }
    home = read(elsewhere)!;
    mkdirSync(home, { recursive: true, mode: 0o755 });
  }
  handOver(home, account);
  return { home, data: join(home, 'data'), log: join(home, 'server.log') };
}

/** A random password, made once and readable by us alone. */
export function password(home: string): string {
  const path = join(home, 'password');
  const known = read(path);
  if (known !== null) return known;
  const made = randomBytes(24).toString('base64url');
  replace(path, made);
  return made;
}

/** First line of a small file, or null when there is none. */
export function read(path: string): string | null {
  if (!existsSync(path)) return null;
  const text = readFileSync(path, 'utf8').trim();
  return text === '' ? null : text;
}

/** Writes a small file as a whole or not at all. */
export function replace(path: string, text: string): void {
  writeFileSync(`${path}.part`, `${text}\n`, { mode: 0o600 });
  renameSync(`${path}.part`, path);
}

export function forget(path: string): void {
  rmSync(path, { force: true });
}
