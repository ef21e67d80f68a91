#!/usr/bin/env node
// The command line from the build; builds first only in a checkout that has no build yet.
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = dirname(dirname(fileURLToPath(import.meta.url)));
const main = join(top, 'dist', 'apps', 'cli', 'src', 'main.js');
if (!existsSync(main)) {
  console.error('Building once …');
  const { build } = await import('./build.mjs');
  build();
}
await import(pathToFileURL(main).href);
