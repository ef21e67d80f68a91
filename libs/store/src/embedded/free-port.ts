import { randomInt } from 'node:crypto';
import { once } from 'node:events';
import { createServer } from 'node:net';

/** Ports from here up are given to outgoing connections by themselves, and may be taken at any moment. */
const FIRST = 20_000;
const BELOW = 32_768;

export async function isFree(port: number): Promise<boolean> {
  const probe = createServer();
  const free = await new Promise<boolean>((settle) => {
    probe.once('error', () => settle(false));
    probe.listen(port, '127.0.0.1', () => settle(true));
  });
  if (free) {
    probe.close();
    await once(probe, 'close');
  }
  return free;
}

export async function freePort(): Promise<number> {
  for (;;) {
    const port = randomInt(FIRST, BELOW);
    if (await isFree(port)) return port;
  }
}
