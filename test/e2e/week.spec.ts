import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { projectPath } from '../../apps/server/src/plant-file.js';
import type { LoggedEvent, Step } from '../../libs/flow/src/index.js';
import { type OwnDatabase, ownDatabase } from '../kit/own-database.js';
import { virtualPlant } from '../kit/virtual-plant.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** A Monday, seven in the morning UTC. */
const MONDAY = Date.UTC(2026, 0, 5, 7);

interface Week {
  readonly log: readonly LoggedEvent[];
  readonly statuses: readonly string[];
  readonly stock: ReadonlyMap<string, number>;
  readonly counts: readonly Pick<Step, 'good' | 'waste' | 'inAmount' | 'inUnit' | 'unit'>[];
}

/** Six orders a day from Monday to Friday, with a press that breaks down, a folder that jams and one that repeats itself. */
async function liveThrough(database: OwnDatabase, schema: string, seed: number, days = 7): Promise<Week> {
  const plant = await virtualPlant({
    databaseUrl: database.url,
    schema,
    seed,
    start: MONDAY,
    sweepEveryS: 300,
    faults: { 'press-full': ['breakdown@3'], 'folder-large': ['jam@2'], stitcher: ['resend'] },
  });
  try {
    const orders = readdirSync(projectPath('demo-data', 'orders'))
      .filter((name) => name.endsWith('.json'))
      .sort();
    let n = 0;
    for (let day = 0; day < 5; day++) {
      for (let hour = 0; hour < 6; hour++) {
        const order = orders[n % orders.length]!;
        const key = `order-${n++}`;
        plant.clock.after((day * DAY + hour * HOUR) / 1000, () =>
          plant.submit(plant.demoFile(`orders/${order}`), key).then(() => undefined),
        );
      }
    }
    await plant.clock.runUntil(MONDAY + days * DAY);
    const tickets = (await plant.store.tickets({ limit: 1000 })).items;
    const stock = new Map(
      (await plant.store.stock()).map((row) => [
        row.item,
        Object.values(row.accounts).reduce((sum, amount) => sum + amount, 0),
      ]),
    );
    return {
      log: await plant.log(),
      statuses: tickets.map((file) => file.ticket.status),
      stock,
      counts: tickets.flatMap((file) => file.steps),
    };
  } finally {
    await plant.close();
  }
}

const digest = (log: readonly LoggedEvent[]): string =>
  createHash('sha256').update(JSON.stringify(log)).digest('hex');

describe('a week of the plant in virtual time', () => {
  let database: OwnDatabase;
  let weeks: readonly Week[];

  beforeAll(async () => {
    database = await ownDatabase();
    weeks = [
      await liveThrough(database, 'first', 7),
      await liveThrough(database, 'second', 7),
      await liveThrough(database, 'third', 8, 0.25),
    ];
  }, 900_000);
  afterAll(() => database.drop());

  it('brings every job to its end, breakdowns and jams and repeats notwithstanding', () => {
    expect(weeks[0]!.statuses).toHaveLength(30);
    expect(new Set(weeks[0]!.statuses)).toEqual(new Set(['Completed']));
  });

  it('tells the same story twice with one seed, event for event', () => {
    expect(weeks[1]!.log.length).toBe(weeks[0]!.log.length);
    expect(digest(weeks[1]!.log)).toBe(digest(weeks[0]!.log));
  });

  it('tells another story with another seed', () => {
    const { length } = weeks[2]!.log;
    expect(length).toBeGreaterThan(100);
    expect(digest(weeks[2]!.log)).not.toBe(digest(weeks[0]!.log.slice(0, length)));
  });

  it('leaves no gap in the positions of the log', () => {
    expect(weeks[0]!.log.map((event) => event.position)).toEqual(weeks[0]!.log.map((_, n) => n + 1));
  });

  it('balances the books: what went somewhere came from somewhere', () => {
    for (const [item, sum] of weeks[0]!.stock)
      expect({ item, sum: Math.abs(sum) < 1e-6 }).toEqual({ item, sum: true });
  });

  it('counts no more pieces than were fed, and never none', () => {
    for (const { good, waste, inAmount, inUnit, unit } of weeks[0]!.counts) {
      expect(good).toBeGreaterThan(0);
      if (inUnit === unit) expect(good + waste).toBeLessThanOrEqual(inAmount);
    }
  });
});
