/**
 * What tests may find on a machine: named by an environment variable, else looked for at its usual place.
 * A service answers `{ value }` or `{ why }`; what was found is given to the tests under the variable's name.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createConnection } from 'node:net';
import { userInfo } from 'node:os';
import { isAbsolute, resolve } from 'node:path';
import pg from 'pg';
import { startTestDatabase } from './test-database.mjs';

const PATIENCE_MS = 2000;

const withoutPassword = (url) => url.replace(/\/\/[^@/]*@/, '//…@');

/** Why nothing answers at the address of a URL, or undefined when something does. */
function unreachable(url, usualPort) {
  return new Promise((done) => {
    const { hostname, port } = new URL(url);
    const socket = createConnection({ host: hostname, port: Number(port || usualPort) });
    const end = (why) => {
      socket.destroy();
      done(why);
    };
    socket.setTimeout(PATIENCE_MS, () => end('no answer'));
    socket.once('connect', () => end(undefined));
    socket.once('error', (cause) => end(cause.code ?? cause.message));
  });
}

/** PostgreSQL asks who is there: a server that does not let us in is of no use, so the look includes signing in. */
async function cannotSignIn(url) {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: PATIENCE_MS });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return undefined;
  } catch (cause) {
    return cause.message || cause.code;
  } finally {
    await client.end().catch(() => undefined);
  }
}

async function server(what, env, usual, look) {
  const urls = process.env[env] ? [process.env[env]] : usual;
  const reasons = [];
  for (const url of urls) {
    const why = await look(url);
    if (why === undefined) return { value: url };
    reasons.push(`${withoutPassword(url)}: ${why}`);
  }
  return { why: `no ${what} (${reasons.join('; ')}); ${env} names another` };
}

function place(what, env, usual = []) {
  const named = process.env[env];
  if (!named && usual.length === 0) return { why: `${env} is not set (${what})` };
  const found = (named ? [named] : usual).find((path) => existsSync(path));
  if (found) return { value: isAbsolute(found) ? found : resolve(found) };
  return { why: `no ${what} at ${named ?? usual.join(', ')}; ${env} names another place` };
}

const stops = [];

const localUser = () => encodeURIComponent(userInfo().username);

export const services = {
  redis: {
    env: 'SIDELAY_TEST_REDIS_URL',
    find: () =>
      server('Redis', 'SIDELAY_TEST_REDIS_URL', ['redis://127.0.0.1:6379'], (url) => unreachable(url, 6379)),
  },
  postgres: {
    env: 'SIDELAY_TEST_DATABASE_URL',
    find: () =>
      server(
        'PostgreSQL server',
        'SIDELAY_TEST_DATABASE_URL',
        [`postgres://${localUser()}@127.0.0.1:5432/test`, 'postgres://postgres@127.0.0.1:5432/test'],
        cannotSignIn,
      ),
  },
  mqtt: {
    env: 'SIDELAY_TEST_MQTT_URL',
    find: () =>
      server('MQTT broker', 'SIDELAY_TEST_MQTT_URL', ['mqtt://127.0.0.1:1883'], (url) =>
        unreachable(url, 1883),
      ),
  },
  chromium: {
    env: 'SIDELAY_TEST_CHROMIUM',
    find: () =>
      place('Chromium', 'SIDELAY_TEST_CHROMIUM', ['/usr/bin/chromium', '/usr/bin/chromium-browser']),
  },
  standards: {
    env: 'SIDELAY_STANDARDS_DIR',
    find: () => place("folder of the standard's schemas and samples", 'SIDELAY_STANDARDS_DIR'),
  },
  checkdata: {
    env: 'SIDELAY_CHECKDATA_DIR',
    find: () => place('folder of published values', 'SIDELAY_CHECKDATA_DIR'),
  },
  xmllint: {
    find: () =>
      spawnSync('xmllint', ['--version']).status === 0
        ? { value: 'xmllint' }
        : { why: 'xmllint is not installed (Debian: libxml2-utils)' },
  },
  embedded: {
    env: 'SIDELAY_TEST_EMBEDDED_URL',
    find: async () => {
      try {
        const { url, stop } = await startTestDatabase();
        stops.push(stop);
        return { value: url };
      } catch (cause) {
        return { why: `the embedded PostgreSQL does not start: ${cause?.message ?? cause}` };
      }
    },
  },
};

const found = new Map();

/** Looks once for each service; the embedded database is started by the first lane that asks for it. */
export function findService(name) {
  if (!found.has(name)) found.set(name, Promise.resolve(services[name].find()));
  return found.get(name);
}

/** Ends what looking has started. */
export async function stopServices() {
  await Promise.all(stops.splice(0).map((stop) => stop()));
}
