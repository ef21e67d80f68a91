import { run } from './run.js';

// Whoever reads no further (`| head`) has what was wanted; writing on would end in a trace.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code === 'EPIPE') process.exit();
  throw cause;
});

process.exitCode = await run(process.argv.slice(2), {
  env: process.env,
  // npm changes the folder before it runs a script, and keeps the caller's here.
  folder: process.env.INIT_CWD ?? process.cwd(),
  out: (text) => process.stdout.write(`${text}\n`),
  err: (text) => process.stderr.write(`${text}\n`),
  raw: (data) => process.stdout.write(data),
  isTerminal: process.stdout.isTTY === true,
});
