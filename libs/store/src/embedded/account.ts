import { spawnSync } from 'node:child_process';
import { chownSync, statSync } from 'node:fs';
import { userInfo } from 'node:os';
import { dirname } from 'node:path';
import { Fault } from '#libs/kernel';

/** The account that runs the database; empty for whoever runs us. */
export interface Account {
  readonly uid?: number;
  readonly gid?: number;
}

function idOf(flag: '-u' | '-g'): number | undefined {
  const { status, stdout } = spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' });
  return status === 0 ? Number(stdout) : undefined;
}

/** PostgreSQL refuses to run as root: root lends it the account `postgres`, which is made when there is none. */
export function databaseAccount(): Account {
  if (process.platform === 'win32' || userInfo().uid !== 0) return {};
  if (idOf('-u') === undefined) spawnSync('useradd', ['--system', '--user-group', 'postgres']);
  const [uid, gid] = [idOf('-u'), idOf('-g')];
  if (uid !== undefined && gid !== undefined) return { uid, gid };
  throw new Fault(
    'DATABASE',
    'PostgreSQL does not run as root, and no account "postgres" could be made. Start Sidelay as an ordinary user, or name a server in SIDELAY_DATABASE_URL.',
  );
}

/** Whether any account may pass through a folder and all above it: root's home usually may not be entered. */
export function isOpenToAll(folder: string): boolean {
  for (let at = folder; ; at = dirname(at)) {
    if ((statSync(at).mode & 0o001) === 0) return false;
    if (at === dirname(at)) return true;
  }
}

/** Gives a file or folder to the account. */
export function handOver(path: string, account: Account): void {
  if (account.uid !== undefined && account.gid !== undefined) chownSync(path, account.uid, account.gid);
}
