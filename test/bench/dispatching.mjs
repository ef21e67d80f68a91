import { createHash } from 'node:crypto';
import { doWork, registerDevice, takeIn } from '../../dist/libs/flow/src/index.js';
import { openQueue } from '../../dist/libs/store/src/index.js';
import { alternate, perSecond } from './alternate.mjs';
import { crew, demoOrder, durableDatabase, enginePorts } from './ground.mjs';

const COUNT = 100;
const ROUNDS = 3;

/**
 * Steps dispatched a second through the queue at `queueUrl` (the bench's own database when null), to a device that takes
 * everything at once, against the same queue with a handler that does nothing.
 */
export async function measureDispatch(queueUrl) {
  const database = await durableDatabase();
  const url = queueUrl ?? database.url;
  const queues = [];
  const open = async (name) => {
    const queue = await openQueue({ url, schema: `queue_${name}`, prefix: `bench-${process.pid}-${name}` });
    queues.push(queue);
    return queue;
  };
  const ports = await enginePorts(database.url, 'ours');
  try {
    await registerDevice(ports, {
      id: 'prepress',
      kind: 'prepress',
      name: 'Bench',
      driver: 'bench',
      url: null,
    });
    const ready = await pendingWork(ports, COUNT * (ROUNDS + 1));
    let handled = 0;
    let done = () => undefined;
    const counted = () => {
      if (++handled === COUNT) done();
    };
    const through = (queue, work) => async () => {
      handled = 0;
      const finished = new Promise((settle) => {
        done = settle;
      });
      await queue.offer(work());
      await finished;
    };
    const ourQueue = await open('ours');
    await ourQueue.serve(async (work) => {
      await doWork(ports, work);
      counted();
    });
    const bareQueue = await open('bare');
    await bareQueue.serve(async () => counted());
    let n = 0;
    const ours = perSecond(
      COUNT,
      through(ourQueue, () => ready.splice(0, COUNT)),
    );
    const peer = perSecond(
      COUNT,
      through(bareQueue, () =>
        Array.from({ length: COUNT }, () => ({
          kind: 'dispatch',
          ticketId: 't',
          entryId: `e${n++}`,
          attempt: 1,
        })),
      ),
    );
    return await alternate({ ours, peer, rounds: ROUNDS });
  } finally {
    for (const queue of queues) {
      await queue.clear();
      await queue.close();
    }
    await ports.store.close();
    await database.stop();
  }
}

/** Tickets whose first step waits to be delivered. */
async function pendingWork(ports, count) {
  const work = [];
  await crew(count, 8, async (n) => {
    const bytes = Buffer.from(JSON.stringify({ ...demoOrder(), jobId: `B-${n}`, quantity: 50 }));
    const taken = await takeIn(ports, {
      bytes,
      sha256: createHash('sha256').update(bytes).digest('hex'),
      mediaType: 'application/json',
      name: null,
      intake: 'http',
      ticket: { bytes, part: null },
      problems: [],
      key: null,
    });
    const [entry] = taken.value.file.entries;
    work.push({ kind: 'dispatch', ticketId: entry.ticketId, entryId: entry.id, attempt: 1 });
  });
  return work;
}
