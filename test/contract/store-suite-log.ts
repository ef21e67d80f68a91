import type { Store } from '#libs/flow';
import { anEvent, NOON } from './store-rows.js';
import { freshStore, type MakeStore } from './store-suite.js';

const note = (store: Store, deviceId: string, count = 1): Promise<unknown> =>
  store.change({}, () => ({
    result: null,
    events: Array.from({ length: count }, (_, at) =>
      anEvent(null, { type: 'notification.raised', deviceId, data: { at } }),
    ),
  }));

export function exerciseLog(make: MakeStore): void {
  describe('the log', () => {
    const current = freshStore(make);

    it('gives events positions from 1 without a gap, in the order in which one change wrote them', async () => {
      const { store } = current();
      expect(await store.head()).toBe(0);
      await note(store, 'press-1', 3);
      await note(store, 'press-2', 2);
      await store.sequence();
      const events = await store.eventsAfter(0, 100);
      expect(events.map((event) => event.position)).toEqual([1, 2, 3, 4, 5]);
      expect(events.map((event) => event.data.at)).toEqual([0, 1, 2, 0, 1]);
      expect(await store.head()).toBe(5);
      expect(await store.eventsAfter(2, 2)).toEqual(events.slice(2, 4));
    });

    it('keeps an event as it was made', async () => {
      const { store } = current();
      const event = anEvent('t', {
        type: 'step.counted',
        stepId: 'print',
        deviceId: 'press-1',
        data: { good: 12, list: [1, 'zwei', null], inner: { amountKg: 0.125 } },
      });
      await store.change({}, () => ({ result: null, events: [event] }));
      await store.sequence();
      expect(await store.eventsAfter(0, 1)).toEqual([{ ...event, position: 1 }]);
    });

    it('is filtered by ticket, device and type', async () => {
      const { store } = current();
      const events = [
        anEvent('a'),
        anEvent('b', { type: 'ticket.held' }),
        anEvent('a', { type: 'step.queued', deviceId: 'press-1' }),
        anEvent(null, { type: 'device.heard', deviceId: 'press-1' }),
      ];
      await store.change({}, () => ({ result: null, events }));
      await store.sequence();
      const found = async (filter: {
        ticketId?: string;
        deviceId?: string;
        type?: string;
      }): Promise<number[]> => (await store.eventsAfter(0, 9, filter)).map((event) => event.position);
      expect(await found({ ticketId: 'a' })).toEqual([1, 3]);
      expect(await found({ deviceId: 'press-1' })).toEqual([3, 4]);
      expect(await found({ type: 'ticket.held' })).toEqual([2]);
      expect(await found({ ticketId: 'a', deviceId: 'press-1', type: 'step.queued' })).toEqual([3]);
    });

    it('wakes who listens, on this server and on another, until it is told to stop', async () => {
      const { store, another } = current();
      const second = await another();
      const heard = { here: 0, there: 0 };
      const stop = store.onEvents(() => heard.here++);
      const reached = new Promise<void>((resolve) => {
        second.onEvents(() => {
          heard.there++;
          void second.head().then((head) => head > 0 && resolve());
        });
      });
      await note(store, 'press-1');
      await store.sequence();
      await reached;
      expect(heard.here).toBeGreaterThan(0);
      stop();
      const before = heard.here;
      await note(store, 'press-1');
      await store.sequence();
      expect(heard.here).toBe(before);
    });

    it('skips nothing and leaves no gap to a reader while two servers write at once', async () => {
      const { store, another } = current();
      const second = await another();
      const total = 200;
      const seen: number[] = [];
      let position = 0;
      let isDone = false;
      const read = async (): Promise<void> => {
        while (!isDone || position < (await second.head())) {
          const events = await second.eventsAfter(position, 50);
          for (const event of events) seen.push(event.position);
          position = events.at(-1)?.position ?? position;
        }
      };
      const reader = read();
      await Promise.all(
        Array.from({ length: total }, (_, at) => note(at % 2 === 0 ? store : second, `press-${at}`)),
      );
      await store.sequence();
      isDone = true;
      await reader;
      expect(seen).toEqual(Array.from({ length: total }, (_, at) => at + 1));
      const devices = new Set((await store.eventsAfter(0, 999)).map((event) => event.deviceId));
      expect(devices.size).toBe(total);
    });

    it('keeps the place of each consumer', async () => {
      const { store } = current();
      expect(await store.cursor('mqtt')).toBe(0);
      await store.moveCursor('mqtt', 7);
      await store.moveCursor('webhook', 3);
      await store.moveCursor('mqtt', 9);
      expect([await store.cursor('mqtt'), await store.cursor('webhook')]).toEqual([9, 3]);
    });

    it('keeps small facts of the installation', async () => {
      const { store } = current();
      expect(await store.fact('clock')).toBeNull();
      await store.setFact('clock', { plantStart: NOON, factor: 60 });
      await store.setFact('clock', { plantStart: NOON, factor: 1.5 });
      await store.setFact('words', 'text');
      expect(await store.fact('clock')).toEqual({ plantStart: NOON, factor: 1.5 });
      expect(await store.fact('words')).toBe('text');
    });
  });
}
