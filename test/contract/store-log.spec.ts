import type pg from 'pg';
import { type OpenStore, openStore, type StoreOptions } from '#libs/store';
import { dropSchema, freshSchema, places, withClient } from './store-places.js';
import { aDevice, anEvent } from './store-rows.js';
import { accept, aJob, changeTicket } from './store-suite-change.js';

const note = (store: OpenStore, deviceId: string): Promise<unknown> =>
  store.change({}, () => ({ result: null, events: [anEvent(null, { deviceId })] }));

describe.each(places)('the log of the $name', ({ url }) => {
  const schema = freshSchema();
  const opened: OpenStore[] = [];
  const open = async (more: Partial<StoreOptions> = {}): Promise<OpenStore> => {
    const store = await openStore({ url, schema, connections: 4, ...more });
    opened.push(store);
    return store;
  };
  const insert = (client: pg.Client, deviceId: string): Promise<unknown> =>
    client.query(
      `INSERT INTO "${schema}".event (type, time, device_id, data) VALUES ('device.heard', 1, $1, '{}')`,
      [deviceId],
    );

  afterEach(async () => {
    await Promise.all(opened.splice(0).map((store) => store.close()));
    await dropSchema(url, schema);
  });

  it('shows a transaction that commits late behind what was read before, never below it', async () => {
    const store = await open({ sequencing: 'inline' });
    await withClient(url, async (slow) => {
      await slow.query('BEGIN');
      await insert(slow, 'inserted first, committed last');
      await note(store, 'inserted last, committed first');
      const first = await store.eventsAfter(0, 10);
      expect(first.map((event) => [event.position, event.deviceId])).toEqual([
        [1, 'inserted last, committed first'],
      ]);
      await slow.query('COMMIT');
      await store.sequence();
      const second = await store.eventsAfter(1, 10);
      expect(second.map((event) => [event.position, event.deviceId])).toEqual([
        [2, 'inserted first, committed last'],
      ]);
    });
  });

  it('leaves no gap where a transaction was rolled back', async () => {
    const store = await open({ sequencing: 'inline' });
    await withClient(url, async (client) => {
      await client.query('BEGIN');
      await insert(client, 'never');
      await note(store, 'a');
      await client.query('ROLLBACK');
    });
    await note(store, 'b');
    expect((await store.eventsAfter(0, 10)).map((event) => event.position)).toEqual([1, 2]);
  });

  it('gives positions at the next start to what a killed server left without', async () => {
    await open();
    await withClient(url, (client) => insert(client, 'left behind'));
    const next = await open();
    expect((await next.eventsAfter(0, 10)).map((event) => event.deviceId)).toEqual(['left behind']);
  });

  it('has the events of an inline change in place when it returns, and calls no one later', async () => {
    const store = await open({ sequencing: 'inline' });
    let calls = 0;
    store.onEvents(() => calls++);
    for (let at = 1; at <= 3; at++) {
      await note(store, `press-${at}`);
      expect(calls).toBe(at);
      expect(await store.head()).toBe(at);
    }
  });

  it('is sequenced in few passes for many commits', async () => {
    const store = await open();
    let wakes = 0;
    store.onEvents(() => wakes++);
    await Promise.all(Array.from({ length: 60 }, (_, at) => note(store, `press-${at}`)));
    await store.sequence();
    expect(await store.head()).toBe(60);
    expect(wakes).toBeLessThan(60);
  });

  it('is heard of again after the listening connection was cut, and what came meanwhile is not missed', async () => {
    const troubles: string[] = [];
    const listening = await open({ onTrouble: (message) => troubles.push(message) });
    const writing = await open();
    const cut = (): Promise<number> =>
      withClient(url, async (client) => {
        const { rows } = await client.query(
          `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
            WHERE application_name = 'sidelay log' AND query LIKE $1`,
          [`LISTEN%${schema}%`],
        );
        return rows.length;
      });
    // Both servers listen from the moment they are open, or shortly after.
    let count = 0;
    while (count < 2) count += await cut();
    await note(writing, 'while nobody heard');
    await writing.sequence();
    await new Promise<void>((resolve) => {
      const look = (): void => void listening.head().then((head) => head >= 1 && resolve());
      listening.onEvents(look);
    });
    await note(writing, 'heard again');
    await writing.sequence();
    await new Promise<void>((resolve) => {
      listening.onEvents(() => void listening.head().then((head) => head >= 2 && resolve()));
      void listening.head().then((head) => head >= 2 && resolve());
    });
    expect(troubles).toContain('the connection that hears of new events broke');
  });

  it('goes on after all connections were cut while idle', async () => {
    const store = await open();
    await accept(store, aJob('a'));
    await withClient(url, (client) =>
      client.query(
        `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
          WHERE application_name = 'sidelay' AND state LIKE 'idle%' AND pid <> pg_backend_pid()
            AND query LIKE $1`,
        [`%${schema}%`],
      ),
    );
    // At most what was under way fails, and says so; the next call has a new connection.
    for (let left = 5; left > 0; left--) {
      const outcome = await changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, ticket: { ...file.ticket, name: 'After the cut' } }],
      })).catch((cause: unknown) => cause);
      if (!(outcome instanceof Error)) break;
      expect(outcome).toMatchObject({ code: 'DATABASE' });
    }
    expect((await store.ticketFile('a'))?.ticket.name).toBe('After the cut');
  });

  it('has a change made again that lost a deadlock, with its decision made once', async () => {
    const store = await open();
    await accept(store, aJob('a'), aJob('b'));
    const lock = (client: pg.Client, id: string): Promise<unknown> =>
      client.query(`SELECT 1 FROM "${schema}".ticket WHERE id = $1 FOR UPDATE`, [id]);
    await withClient(url, async (other) => {
      // The other side waits longer before it looks for a ring, so that ours is the one that gives way.
      await other.query(`SET deadlock_timeout = '30s'`);
      await other.query('BEGIN');
      await lock(other, 'b');
      let calls = 0;
      const changed = store.change({ tickets: ['a', 'b'] }, () => {
        calls++;
        return { result: 'done', devices: [aDevice('press-1')] };
      });
      await withClient(url, async (watch) => {
        for (let waiting = 0; waiting === 0; ) {
          const { rows } = await watch.query(
            `SELECT count(*)::int AS n FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND query LIKE $1`,
            [`%"${schema}"."ticket"%`],
          );
          waiting = rows[0].n;
        }
      });
      await lock(other, 'a');
      await other.query('COMMIT');
      expect((await changed).result).toBe('done');
      expect(calls).toBe(1);
    });
  });
});
