import { setImmediate } from 'node:timers/promises';
import type { Plant } from '#libs/craft';
import type { Reading } from '#libs/flow';
import { budgetMs, usualReadCost } from './read-cost.js';
import { type ReadingPool, readingPool } from './reading-pool.js';

/** A worker that answers with the text it was sent, dies of "die", never answers "hang" and keeps all of "eat". */
const ECHO = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads';
    parentPort.on('message', ({ number, document }) => {
      parentPort.postMessage({ number, begun: true });
      const text = new TextDecoder().decode(document.bytes);
      if (text === 'die') throw new Error('died of it');
      while (text === 'hang');
      for (const kept = []; text === 'eat'; ) kept.push({ n: kept.length });
      parentPort.postMessage({ number, reading: { name: text } });
    });`)}`,
);

describe('reading beside the thread that serves', () => {
  let pool: ReadingPool;
  const open = (size: number, baseMs = usualReadCost.baseMs): void => {
    pool = readingPool({} as Plant, size, ECHO, { ...usualReadCost, baseMs, memoryMb: 64 });
  };
  const read = (text: string): Promise<Reading> =>
    pool.read({ bytes: Buffer.from(text), part: null, beside: null }, new Map());
  afterEach(() => pool.close());

  it('answers each document with its own reading, however many wait', async () => {
    open(2);
    const texts = Array.from({ length: 40 }, (_, n) => `document ${n}`);
    const readings = await Promise.all(texts.map(read));
    expect(readings.map(({ name }) => name)).toEqual(texts);
  });

  it('refuses what takes longer than the budget, and reads on with another worker', async () => {
    open(1, 400);
    const [hung, next] = await Promise.all([read('hang'), read('next')]);
    expect(hung.problems.map(({ code }) => code)).toEqual(['PLAN_TOO_LONG']);
    expect(next.name).toBe('next');
  });

  it('gives a document more time the longer it is', () => {
    const cost = { ...usualReadCost, baseMs: 5000, msPerMb: 1000 };
    expect([0, 1024 * 1024, 16 * 1024 * 1024].map((bytes) => budgetMs(cost, bytes))).toEqual([
      5000, 6000, 21000,
    ]);
  });

  it('refuses what needs more memory than a worker has, and reads on', async () => {
    open(1, 60_000);
    const [eaten, next] = await Promise.all([read('eat'), read('next')]);
    expect(eaten.problems).toMatchObject([
      { code: 'XML_LIMIT', hint: expect.stringContaining('SIDELAY_READ_MEMORY_MB') },
    ]);
    expect(next.name).toBe('next');
  });

  it('leaves the thread that serves free while every worker hangs', async () => {
    open(2, 400);
    let hanging = true;
    const hung = Promise.all([read('hang'), read('hang')]).then(() => {
      hanging = false;
    });
    let turns = 0;
    for (; hanging; turns++) await setImmediate();
    await hung;
    // A thread that was held would have had a handful of turns.
    expect(turns).toBeGreaterThan(1000);
  });

  it('lets a fault be a fault of that document alone', async () => {
    open(1);
    const [dead, next] = await Promise.allSettled([read('die'), read('next')]);
    expect([dead.status, next.status]).toEqual(['rejected', 'fulfilled']);
  });

  it('leaves nobody waiting when it closes', async () => {
    open(1);
    const left = Promise.allSettled([read('hang'), read('next')]);
    await pool.close();
    expect((await left).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });
});
