import type { Plant } from '#libs/craft';
import type { Reading } from '#libs/flow';
import { type ReadingPool, readingPool } from './reading-pool.js';

/** A worker that answers with the text it was sent, dies of "die", and never answers "hang". */
const ECHO = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort } from 'node:worker_threads';
    parentPort.on('message', ({ number, document }) => {
      const text = new TextDecoder().decode(document.bytes);
      if (text === 'die') throw new Error('died of it');
      while (text === 'hang');
      parentPort.postMessage({ number, reading: { name: text } });
    });`)}`,
);

describe('reading beside the thread that serves', () => {
  let pool: ReadingPool;
  const open = (size: number, budgetMs?: number): void => {
    pool = readingPool({} as Plant, size, ECHO, budgetMs);
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
