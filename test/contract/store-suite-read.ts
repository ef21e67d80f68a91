import type { Store } from '#libs/flow';
import { aDevice, aFile, anEntry, aPhase, aResource, aStep, aTicket, NOON } from './store-rows.js';
import { freshStore, type MakeStore } from './store-suite.js';
import { accept, aJob, changeTicket } from './store-suite-change.js';

const ids = (page: { items: readonly { ticket: { id: string } }[] }): string[] =>
  page.items.map(({ ticket }) => ticket.id);

export function exerciseRead(make: MakeStore): void {
  describe('a list of tickets', () => {
    const current = freshStore(make);

    it('has the newest first, and a page continues where the last one ended while new ones come in', async () => {
      const { store } = current();
      // Two of one instant: the id decides.
      for (const [id, at] of [
        ['a', 0],
        ['b', 1],
        ['c', 1],
        ['d', 2],
        ['e', 3],
      ] as const) {
        await accept(store, aJob(id, { createdAt: NOON + at }));
      }
      const first = await store.tickets({ limit: 2 });
      expect(ids(first)).toEqual(['e', 'd']);
      await accept(store, aJob('f', { createdAt: NOON + 9 }));
      const second = await store.tickets({ limit: 2, cursor: first.next! });
      expect(ids(second)).toEqual(['c', 'b']);
      const third = await store.tickets({ limit: 2, cursor: second.next! });
      expect(ids(third)).toEqual(['a']);
      expect(third.next).toBeNull();
    });

    it('is narrowed by status, by the start of id or job, and by a part of name or customer', async () => {
      const { store } = current();
      await accept(
        store,
        aJob('a-1', { jobId: 'F26-1', name: 'Programme 100%', status: 'Completed' }),
        aJob('a-2', { jobId: 'F26-2', name: 'Poster', customer: 'Stage_door Players', createdAt: NOON + 1 }),
        aJob('b-3', { jobId: 'G1', name: 'Ticket roll', createdAt: NOON + 2 }),
      );
      const found = async (q: string, status?: string): Promise<string[]> =>
        ids(await store.tickets({ q, status, limit: 9 }));
      expect(await found('')).toEqual(['b-3', 'a-2', 'a-1']);
      expect(await found('', 'Completed')).toEqual(['a-1']);
      expect(await found('a-')).toEqual(['a-2', 'a-1']);
      expect(await found('f26')).toEqual(['a-2', 'a-1']);
      expect(await found('OST')).toEqual(['a-2']);
      expect(await found('players')).toEqual(['a-2']);
      // Signs that mean something to LIKE stand for themselves.
      expect(await found('0%')).toEqual(['a-1']);
      expect(await found('e_d')).toEqual(['a-2']);
      expect(await found('%')).toEqual(['a-1']);
      expect(await found('F26', 'Aborted')).toEqual([]);
    });

    it('refuses a cursor that it never gave out', async () => {
      await expect(current().store.tickets({ limit: 1, cursor: 'nonsense' })).rejects.toMatchObject({
        code: 'REQUEST_INVALID',
      });
    });

    it('finds the tickets of a job, newest first', async () => {
      const { store } = current();
      await accept(
        store,
        aJob('a', { jobId: 'J' }),
        aJob('b', { jobId: 'J', createdAt: NOON + 1 }),
        aJob('c'),
      );
      expect((await store.ticketsByJob('J')).map((ticket) => ticket.id)).toEqual(['b', 'a']);
    });
  });

  describe('devices and what they do', () => {
    const current = freshStore(make);

    it('are kept as registered and changed', async () => {
      const { store } = current();
      const devices = [
        aDevice('press-2'),
        aDevice('press-1', { status: 'Running', speed: 9000.5, lastSeen: NOON }),
      ];
      await store.change({}, () => ({ result: null, devices }));
      expect(await store.devices()).toEqual([devices[1], devices[0]]);
      await store.change({ devices: ['press-2'] }, (slice) => ({
        result: null,
        devices: [{ ...slice.devices.get('press-2')!, status: 'Down', silentBecause: 'no answer' }],
      }));
      expect(await store.device('press-2')).toEqual({
        ...devices[0],
        status: 'Down',
        silentBecause: 'no answer',
      });
      expect(await store.device('press-3')).toBeNull();
    });

    it('queue live entries by priority and age, then the ended ones, latest first', async () => {
      const { store } = current();
      const steps = ['s1', 's2', 's3', 's4', 's5'];
      await accept(
        store,
        aFile(aTicket('a'), {
          steps: steps.map((id) => aStep('a', id)),
          entries: [
            anEntry('a', 's1', 'done-early', { status: 'Completed', end: NOON + 1 }),
            anEntry('a', 's2', 'done-late', { status: 'Aborted', end: NOON + 5 }),
            anEntry('a', 's3', 'second', { submitted: NOON + 2 }),
            anEntry('a', 's4', 'first', { submitted: NOON + 3, priority: 90 }),
            anEntry('a', 's5', 'elsewhere', { deviceId: 'press-2' }),
          ],
        }),
      );
      const names = async (limit: number): Promise<string[]> =>
        (await store.entries('press-1', limit)).map((entry) => entry.id);
      expect(await names(9)).toEqual(['first', 'second', 'done-late', 'done-early']);
      expect(await names(3)).toEqual(['first', 'second', 'done-late']);
    });

    it('show the phases that touch a stretch of time', async () => {
      const { store } = current();
      const phases = [
        aPhase('a', 'print', NOON, { end: NOON + 10 }),
        aPhase('a', 'print', NOON + 10, { end: NOON + 20, status: 'Stopped' }),
        aPhase('a', 'print', NOON + 20),
      ];
      await accept(store, aFile(aTicket('a'), { phases }));
      expect(await store.phases('press-1', NOON + 10, NOON + 20)).toEqual([phases[1]]);
      expect(await store.phases('press-1', NOON + 19, NOON + 999)).toEqual([phases[1], phases[2]]);
      expect(await store.phases('press-2', NOON, NOON + 999)).toEqual([]);
    });

    it('know until when they are planned, by steps that have not ended', async () => {
      const { store } = current();
      const step = (id: string, plannedEnd: number | null, more = {}) =>
        aStep('a', id, { plannedEnd, ...more });
      await accept(
        store,
        aFile(aTicket('a'), {
          steps: [
            step('s1', NOON + 10),
            step('s2', NOON + 30.4),
            step('s3', NOON + 90, { status: 'Completed' }),
            step('s4', NOON + 50, { deviceId: 'folder-1' }),
            step('s5', NOON + 60, { deviceId: null }),
          ],
        }),
        aFile(aTicket('b', { status: 'Aborted' }), { steps: [aStep('b', 's1', { plannedEnd: NOON + 99 })] }),
      );
      expect(await store.deviceHorizons()).toEqual(
        new Map([
          ['press-1', NOON + 30],
          ['folder-1', NOON + 50],
        ]),
      );
    });
  });

  describe('the step that a device speaks of', () => {
    const current = freshStore(make);
    const entries = async (store: Store): Promise<void> => {
      await accept(
        store,
        aFile(aTicket('old', { jobId: 'J1' }), {
          steps: [aStep('old', 'print')],
          entries: [
            anEntry('old', 'print', 'e-old', {
              deviceEntryId: 'Q1',
              status: 'Completed',
              submitted: NOON,
              end: NOON,
            }),
          ],
        }),
        aFile(aTicket('new', { jobId: 'J2' }), {
          steps: [aStep('new', 'print'), aStep('new', 'print-2')],
          entries: [
            anEntry('new', 'print', 'e-done', {
              status: 'Completed',
              submitted: NOON + 9,
              end: NOON + 9,
              deviceEntryId: 'Q7',
            }),
            anEntry('new', 'print-2', 'e-live', {
              submitted: NOON + 2,
              deviceEntryId: 'Q1',
              delivery: 'delivered',
            }),
          ],
        }),
      );
    };

    it('is found by job and part on the device that was given it', async () => {
      const { store } = current();
      await entries(store);
      const print = { ticketId: 'new', stepId: 'print' };
      expect(await store.findStep('press-1', { jobId: 'J2', jobPartId: 'print' })).toMatchObject(print);
      expect(await store.findStep('press-2', { jobId: 'J2', jobPartId: 'print' })).toBeNull();
      expect(await store.findStep('press-1', { jobId: 'J2', jobPartId: 'fold' })).toBeNull();
      expect(await store.findStep('press-1', {})).toBeNull();
    });

    it('is the live one rather than a later one that ended, when the job alone is named', async () => {
      const { store } = current();
      await entries(store);
      expect(await store.findStep('press-1', { jobId: 'J2' })).toEqual({
        ended: false,
        ticketId: 'new',
        stepId: 'print-2',
      });
      expect(await store.findStep('press-1', { jobId: 'J1' })).toEqual({
        ticketId: 'old',
        stepId: 'print',
        ended: true,
      });
    });

    it('is found by the queue entry, its own number or ours, and a number used twice means the live one', async () => {
      const { store } = current();
      await entries(store);
      const live = { ticketId: 'new', stepId: 'print-2' };
      expect(await store.findStep('press-1', { queueEntryId: 'Q1' })).toMatchObject(live);
      expect(await store.findStep('press-1', { queueEntryId: 'e-live' })).toMatchObject(live);
      expect(await store.findStep('press-1', { queueEntryId: 'Q9' })).toBeNull();
    });

    it('is never one of another job, whatever number the device gave the entry', async () => {
      const { store } = current();
      await entries(store);
      expect(await store.findStep('press-1', { jobId: 'J1', queueEntryId: 'Q1' })).toMatchObject({
        ticketId: 'old',
        stepId: 'print',
      });
      // A number that is no longer known does not hide the job.
      expect(await store.findStep('press-1', { jobId: 'J2', queueEntryId: 'Q99' })).toMatchObject({
        ticketId: 'new',
        stepId: 'print-2',
      });
      expect(await store.findStep('press-1', { jobId: 'J2', queueEntryId: 'Q7' })).toMatchObject({
        ended: true,
        ticketId: 'new',
        stepId: 'print',
      });
    });
  });

  describe('what is still open', () => {
    const current = freshStore(make);

    it('is every entry that waits for its delivery and may be tried now, in the order of the queue', async () => {
      const { store } = current();
      const withEntry = (id: string, entry = {}, ticket = {}, step = {}) =>
        aFile(aTicket(id, ticket), {
          steps: [aStep(id, 'print', step)],
          entries: [anEntry(id, 'print', `e-${id}`, { attempt: 3, ...entry })],
        });
      await accept(
        store,
        withEntry('plain', { submitted: NOON + 1 }),
        withEntry('urgent', { priority: 80, notBefore: NOON, submitted: NOON + 2 }),
        withEntry('later', { notBefore: NOON + 1 }),
        withEntry('held', { status: 'Held' }),
        withEntry('taken', { delivery: 'delivered' }),
        withEntry('refused', { delivery: 'refused' }),
        withEntry('ticket-held', {}, { activation: 'Held' }),
        withEntry('ticket-aborted', {}, { status: 'Aborted' }),
        withEntry('step-held', {}, {}, { activation: 'Held' }),
        withEntry('step-aborted', {}, {}, { status: 'Aborted' }),
      );
      expect(await store.openWork(NOON)).toEqual([
        { kind: 'dispatch', ticketId: 'urgent', entryId: 'e-urgent', attempt: 3 },
        { kind: 'dispatch', ticketId: 'plain', entryId: 'e-plain', attempt: 3 },
      ]);
      expect((await store.openWork(NOON + 1)).map((work) => work.ticketId)).toContain('later');
    });

    it('is also every word that a device with a delivered entry has still to be told', async () => {
      const { store } = current();
      await accept(
        store,
        aFile(aTicket('a', { activation: 'Held' }), {
          steps: [aStep('a', 's1'), aStep('a', 's2'), aStep('a', 's3')],
          entries: [
            anEntry('a', 's1', 'e1', { delivery: 'delivered', wanted: 'Held', status: 'Held' }),
            anEntry('a', 's2', 'e2', { delivery: 'pending', wanted: 'Held', status: 'Held' }),
            anEntry('a', 's3', 'e3', { delivery: 'delivered', wanted: 'Aborted', notBefore: NOON + 1 }),
          ],
        }),
      );
      expect(await store.openWork(NOON)).toEqual([{ kind: 'instruct', ticketId: 'a', entryId: 'e1' }]);
    });

    it('is a ticket with a step that waits without an entry, once something has dried', async () => {
      const { store } = current();
      const sheets = (id: string, usableFrom: number | null) =>
        aResource(id, 'sheets', { status: 'Available', usableFrom });
      const drying = (id: string, more = {}, entries = [] as ReturnType<typeof anEntry>[]) =>
        aFile(aTicket(id, more), {
          steps: [aStep(id, 'cut', { inputs: ['sheets'] })],
          resources: [sheets(id, NOON + 100)],
          entries,
        });
      await accept(
        store,
        drying('b', { createdAt: NOON + 1 }),
        drying('a'),
        drying('queued', {}, [anEntry('queued', 'cut', 'e1')]),
        drying('again', { createdAt: NOON + 2 }, [anEntry('again', 'cut', 'e2', { status: 'Aborted' })]),
        drying('held', { activation: 'Held' }),
        drying('ended', { status: 'Completed' }),
        aFile(aTicket('never'), { steps: [aStep('never', 'cut')], resources: [sheets('never', null)] }),
      );
      expect(await store.ticketsToWake(NOON + 99)).toEqual([]);
      expect(await store.ticketsToWake(NOON + 100)).toEqual(['a', 'b', 'again']);
      await changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, entries: [anEntry('a', 'cut', 'e3')] }],
      }));
      expect(await store.ticketsToWake(NOON + 100)).toEqual(['b', 'again']);
    });
  });
}
