import type { StockAccount, Store } from '#libs/flow';
import { seededRandom } from '#libs/kernel';
import { aMove, NOON } from './store-rows.js';
import { freshStore, type MakeStore } from './store-suite.js';

const paper = { item: 'paper-a', name: 'Coated 115 g', unit: 'sheets' };

export function exerciseStock(make: MakeStore): void {
  describe('the book of stock', () => {
    const current = freshStore(make);

    it('has double entries: all accounts of an item add up to nothing', async () => {
      const { store } = current();
      const random = seededRandom(7);
      const accounts: StockAccount[] = ['supplier', 'store', 'reserved', 'process', 'good', 'scrap'];
      const pick = (): StockAccount => accounts[Math.floor(random.next() * accounts.length)]!;
      const moves = Array.from({ length: 120 }, (_, at) =>
        aMove(`m${at}`, at % 2 === 0 ? 'paper-a' : 'ink-c', {
          // Tenths and thousandths: sums of binary fractions would not come out even.
          amount: Math.floor(random.next() * 1000) / (at % 2 === 0 ? 10 : 1000),
          from: pick(),
          to: pick(),
          lot: at % 3 === 0 ? 'lot-1' : '',
        }),
      );
      for (let at = 0; at < moves.length; at += 10) {
        await store.change({}, () => ({ result: null, moves: moves.slice(at, at + 10) }));
      }
      const lines = await store.stock();
      expect(lines.map((line) => line.item)).toEqual(['ink-c', 'paper-a']);
      for (const line of lines) {
        const thousandths = Object.values(line.accounts).map((amount) => Math.round(amount * 1000));
        expect(thousandths.reduce((sum, amount) => sum + amount, 0)).toBe(0);
        const booked = (account: StockAccount): number =>
          moves
            .filter((m) => m.item === line.item)
            .reduce(
              (sum, m) =>
                sum +
                (m.to === account ? Math.round(m.amount * 1000) : 0) -
                (m.from === account ? Math.round(m.amount * 1000) : 0),
              0,
            );
        expect(Math.round((line.accounts.store ?? 0) * 1000)).toBe(booked('store'));
      }
    });

    it('shows items by lot, what is set aside for a step included', async () => {
      const { store } = current();
      await store.change({}, () => ({
        result: null,
        stockItems: [paper],
        moves: [
          aMove('m1', 'paper-a', { amount: 1000, lot: 'L1' }),
          aMove('m2', 'paper-a', { amount: 500, lot: 'L2' }),
          aMove('m3', 'paper-a', { amount: 200, lot: 'L2', from: 'store', to: 'reserved' }),
          aMove('m4', 'paper-a', { amount: 50, lot: 'L1', from: 'store', to: 'process' }),
        ],
      }));
      expect(await store.stock()).toEqual([
        {
          ...paper,
          accounts: { supplier: -1500, store: 1250, reserved: 200, process: 50 },
          lots: [
            { lot: 'L1', onHand: 950 },
            { lot: 'L2', onHand: 500 },
          ],
        },
      ]);
    });

    it('shows a decision what the store and the reservations hold, and nothing for what was never booked', async () => {
      const { store } = current();
      await store.change({}, () => ({
        result: null,
        stockItems: [paper],
        moves: [
          aMove('m1', 'paper-a', { amount: 10.5, lot: 'L1' }),
          aMove('m2', 'paper-a', { amount: 4, lot: 'L2' }),
          aMove('m3', 'paper-a', { amount: 3, lot: 'L1', from: 'store', to: 'reserved' }),
        ],
      }));
      const { result } = await store.change({ stock: ['paper-a', 'paper-z'] }, (slice) => ({
        result: [...slice.balances.values()],
      }));
      expect(result).toEqual([{ item: 'paper-a', store: 11.5, reserved: 3 }]);
    });

    it('books what nobody registered under its own name, and keeps the name that somebody gave', async () => {
      const { store } = current();
      const book = (id: string): Promise<unknown> =>
        store.change({}, () => ({ result: null, moves: [aMove(id, 'plate-x', { unit: 'plates' })] }));
      await book('m1');
      expect((await store.stock())[0]).toMatchObject({ item: 'plate-x', name: 'plate-x', unit: 'plates' });
      const plate = { item: 'plate-x', name: 'Plate, thermal', unit: 'plates' };
      await store.change({}, () => ({ result: null, stockItems: [plate] }));
      await book('m2');
      expect((await store.stock())[0]).toMatchObject({ ...plate, accounts: { store: 2 } });
    });

    it('never gives away the same sheets twice when two decisions reserve at once', async () => {
      const { store, another } = current();
      const second = await another();
      await store.change({}, () => ({
        result: null,
        stockItems: [paper],
        moves: [aMove('m0', 'paper-a', { amount: 100 })],
      }));
      const reserve = (server: Store, id: string): Promise<{ result: number }> =>
        server.change({ stock: ['paper-a'] }, (slice) => {
          const there = slice.balances.get('paper-a')?.store ?? 0;
          const amount = Math.min(30, there);
          const move = aMove(id, 'paper-a', { amount, from: 'store', to: 'reserved' });
          return { result: amount, moves: amount > 0 ? [move] : [] };
        });
      const answers = await Promise.all(
        Array.from({ length: 6 }, (_, at) => reserve(at % 2 === 0 ? store : second, `r${at}`)),
      );
      expect(answers.map(({ result }) => result).sort((a, b) => b - a)).toEqual([30, 30, 30, 10, 0, 0]);
      expect((await store.stock())[0]?.accounts).toMatchObject({ store: 0, reserved: 100 });
    });

    it('lists moves newest first, by item and by ticket, and pages stay where they are', async () => {
      const { store } = current();
      const book = (id: string, at: number, more = {}): Promise<unknown> =>
        store.change({}, () => ({
          result: null,
          moves: [aMove(id, 'paper-a', { time: NOON + at, ...more })],
        }));
      for (let at = 0; at < 5; at++) await book(`m${at}`, at, at === 2 ? { ticketId: 't', item: 'ink' } : {});
      const first = await store.moves({ limit: 2 });
      expect(first.items.map((move) => move.id)).toEqual(['m4', 'm3']);
      await book('m9', 9);
      const next = await store.moves({ limit: 9, cursor: first.next! });
      expect(next.items.map((move) => move.id)).toEqual(['m2', 'm1', 'm0']);
      expect(next.next).toBeNull();
      expect((await store.moves({ limit: 9, item: 'ink' })).items.map((move) => move.id)).toEqual(['m2']);
      expect((await store.moves({ limit: 9, ticketId: 't' })).items[0]).toEqual(
        aMove('m2', 'ink', { time: NOON + 2, ticketId: 't' }),
      );
    });
  });
}
