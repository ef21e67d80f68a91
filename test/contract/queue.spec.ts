import { spawn } from 'node:child_process';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';
import { fileURLToPath } from 'node:url';
import { Redis } from 'ioredis';
import { type InlineQueue, inlineQueue, openQueue, type QueuePolicies, queuePolicies } from '#libs/store';
import { exerciseQueue } from './queue-suite.js';
import { dropSchema, freshSchema, places } from './store-places.js';

const LOCK_MS = 1000;

/** The product's policies with waits that a test can sit out. */
const quick: QueuePolicies = {
  dispatch: { ...queuePolicies.dispatch, backoffMs: 20, lockMs: LOCK_MS, stalledCheckMs: 500 },
  instruct: { ...queuePolicies.instruct, backoffMs: 20, lockMs: LOCK_MS, stalledCheckMs: 500 },
};

const victim = fileURLToPath(new URL('queue-victim.mjs', import.meta.url));

/** Lets another process take one delivery, and kills it the hard way. */
function takeAndDie(where: object): Promise<void> {
  const child = spawn(
    process.execPath,
    [victim, JSON.stringify({ name: 'dispatch', lockMs: LOCK_MS, ...where })],
    { stdio: ['ignore', 'pipe', 'inherit'], env: { ...process.env, NODE_OPTIONS: '' } },
  );
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.stdout.once('data', () => child.kill('SIGKILL'));
    child.once('exit', () => resolve());
  });
}

/** A wire to a server that can be cut and mended. */
async function startWire(host: string, port: number) {
  const sockets = new Set<Socket>();
  const server = createServer((near) => {
    const far = connect(port, host);
    for (const [from, to] of [
      [near, far],
      [far, near],
    ] as const) {
      sockets.add(from);
      from.on('error', () => undefined);
      from.on('close', () => to.destroy());
      from.pipe(to);
    }
  });
  const listen = (at: number): Promise<void> =>
    new Promise((resolve) => void server.listen(at, '127.0.0.1', () => resolve()));
  await listen(0);
  const own = (server.address() as AddressInfo).port;
  return {
    port: own,
    mend: () => listen(own),
    cut: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        for (const socket of sockets) socket.destroy();
        sockets.clear();
      }),
  };
}

describe('the queue in memory', () => {
  exerciseQueue(async () => ({
    open: async (onTrouble) => inlineQueue(onTrouble),
    settle: (queue) => (queue as InlineQueue).idle(),
    drop: async () => undefined,
  }));

  it('handles one after another in the order offered, and is idle after the last', async () => {
    const queue = inlineQueue();
    const steps: string[] = [];
    await queue.serve(async (work) => {
      steps.push(`begin ${work.entryId}`);
      await new Promise((resolve) => setTimeout(resolve, 1));
      if (work.entryId === 'a') await queue.offer([{ kind: 'instruct', ticketId: 't', entryId: 'c' }]);
      steps.push(`end ${work.entryId}`);
    });
    await queue.offer(
      ['a', 'b'].map((entryId) => ({ kind: 'dispatch', ticketId: 't', entryId, attempt: 1 })),
    );
    await queue.idle();
    expect(steps).toEqual(['begin a', 'end a', 'begin b', 'end b', 'begin c', 'end c']);
  });
});

describe.each(places)('the queue on the $name', ({ url }) => {
  exerciseQueue(async () => {
    const schema = freshSchema();
    return {
      open: (onTrouble) => openQueue({ url, schema, policies: quick, onTrouble }),
      takeAndDie: () => takeAndDie({ postgres: { url, schema } }),
      drop: async () => void (await dropSchema(url, schema)),
    };
  });
});

const redisUrl = process.env.SIDELAY_TEST_REDIS_URL;
// The runner names Redis as left out when it is not there.
for (const url of redisUrl ? [redisUrl] : []) {
  describe('the queue on Redis', () => {
    const forget = async (prefix: string): Promise<void> => {
      const redis = new Redis(url);
      const keys = await redis.keys(`${prefix}:*`);
      if (keys.length > 0) await redis.del(...keys);
      await redis.quit();
    };

    exerciseQueue(async () => {
      const prefix = `sidelay-${freshSchema()}`;
      return {
        open: (onTrouble) => openQueue({ url, prefix, policies: quick, onTrouble }),
        takeAndDie: () => takeAndDie({ redis: { url, prefix } }),
        drop: () => forget(prefix),
      };
    });

    it('says so at once when Redis goes away, and takes work when it is back', async () => {
      const redis = new URL(url);
      const wire = await startWire(redis.hostname, Number(redis.port || 6379));
      const prefix = `sidelay-${freshSchema()}`;
      const queue = await openQueue({ url: `redis://127.0.0.1:${wire.port}`, prefix, policies: quick });
      const work = { kind: 'instruct', ticketId: 't', entryId: 'e1' } as const;
      await wire.cut();
      await expect(queue.offer([work])).rejects.toThrow();
      await wire.mend();
      const taken = new Promise((resolve) => void queue.serve(async (each) => resolve(each)));
      while ((await queue.offer([work]).catch(() => 'away')) === 'away') {
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      expect(await taken).toEqual(work);
      await queue.close();
      await wire.cut();
      await forget(prefix);
    });
  });
}

describe('opening a queue', () => {
  it('refuses a URL of another kind', async () => {
    await expect(openQueue({ url: 'amqp://127.0.0.1' })).rejects.toMatchObject({ code: 'SETTING' });
  });

  it('says at once when nothing answers there', async () => {
    for (const url of ['redis://127.0.0.1:9', 'postgres://nobody@127.0.0.1:9/none']) {
      await expect(openQueue({ url })).rejects.toMatchObject({ name: 'Fault', code: 'DATABASE' });
    }
  });
});
