import { createServer } from 'node:net';
import { pathToFileURL } from 'node:url';

// Linux hands out 32768 and up to outgoing connections: a port there can be taken between the look and the use.
const FIRST = 20_000;
const COUNT = 12_000;

const isFree = (port) =>
  new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
  });

/** A port of 127.0.0.1 below 32768 on which nothing listens now. */
export async function freePort() {
  for (let attempt = 0; attempt < 100; attempt++) {
    const port = FIRST + Math.floor(Math.random() * COUNT);
    if (await isFree(port)) return port;
  }
  throw new Error('no free port found between 20000 and 32000');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.stdout.write(`${await freePort()}\n`);
}
