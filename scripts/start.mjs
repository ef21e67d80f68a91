// `npm start`: builds, then runs the server with the simulated plant until Ctrl-C.
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from './build.mjs';

const top = dirname(dirname(fileURLToPath(import.meta.url)));
console.log('Building …');
build();
process.env.SIDELAY_DEMO ??= '1';
process.argv.splice(2, 0, 'start');
await import(pathToFileURL(join(top, 'dist', 'apps', 'cli', 'src', 'main.js')).href);
