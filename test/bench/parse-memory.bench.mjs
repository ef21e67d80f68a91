import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const name = 'parse-memory';
export const unit = 'bytes a byte';
export const better = 'lower';
export const target = 1.6;
export const note =
  'memory held by the tree of a ticket of 16 MB that came as a stream, against the objects of fast-xml-parser, which know neither namespace nor line nor how a tag was written';

const script = fileURLToPath(new URL('./parse-memory.mjs', import.meta.url));

function held(side) {
  const run = spawnSync(process.execPath, ['--expose-gc', '--max-old-space-size=4096', script, side], {
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return Number(run.stdout);
}

export const run = () => ({ ours: held('ours'), peer: held('peer') });
