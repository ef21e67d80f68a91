import { run } from './run.js';

process.exitCode = await run(process.argv.slice(2), {
  env: process.env,
  // npm changes the folder before it runs a script, and keeps the caller's here.
  folder: process.env.INIT_CWD ?? process.cwd(),
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`${text}\n`),
  isTerminal: process.stdout.isTTY === true,
});
