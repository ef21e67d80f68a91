// Builds server, command line, simulated plant and console into dist/. Says nothing when all is well.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = dirname(dirname(fileURLToPath(import.meta.url)));

/** Throws when a part does not build; the compiler's own words have been printed by then. */
export function build() {
  run('ts7/bin/tsc', ['-p', 'tsconfig.build.json']);
  run('vite/bin/vite.js', ['build', '--config', 'apps/console/vite.config.mjs', '--logLevel', 'warn']);
}

function run(tool, args) {
  const { status } = spawnSync(process.execPath, [join(top, 'node_modules', tool), ...args], {
    cwd: top,
    stdio: ['ignore', 2, 2],
  });
  if (status !== 0) throw new Error(`${tool} did not build`);
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    build();
  } catch (cause) {
    console.error(cause.message);
    process.exit(1);
  }
}
