/** Runs the built server as a process for a bench. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';

const script = fileURLToPath(new URL('../../scripts/sidelay.mjs', import.meta.url));

async function freePort() {
  const probe = createServer().listen(20_000 + Math.floor(Math.random() * 12_000), '127.0.0.1');
  await once(probe, 'listening');
  const { port } = probe.address();
  probe.close();
  await once(probe, 'close');
  return port;
}

/** Starts it and resolves when it says it is ready. */
export async function startServer(env) {
  const child = spawn(process.execPath, [script, 'start'], {
    env: {
      PATH: process.env.PATH,
      SIDELAY_PORT: String(await freePort()),
      SIDELAY_LOG_LEVEL: 'error',
      ...env,
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  const url = await new Promise((settle, fail) => {
    child.stdout.on('data', (chunk) => {
      said += chunk;
      const ready = /Sidelay is ready at (\S+)/.exec(said);
      if (ready !== null) settle(ready[1]);
    });
    child.once('exit', () => fail(new Error('the server ended before it was ready')));
  });
  return {
    url,
    async stop() {
      const gone = once(child, 'exit');
      child.kill('SIGTERM');
      await gone;
    },
  };
}
