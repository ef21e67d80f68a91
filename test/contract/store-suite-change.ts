import {
  type Decision,
  ReceiptTaken,
  type Slice,
  type Store,
  type Ticket,
  type TicketFile,
} from '#libs/flow';
import {
  aDevice,
  aDocument,
  aFile,
  anEntry,
  anEvent,
  aPhase,
  aResource,
  aStep,
  aTicket,
  aUse,
  NOON,
} from './store-rows.js';
import { freshStore, type MakeStore } from './store-suite.js';

/** A ticket with one step and what belongs to it. */
export const aJob = (id: string, more: Partial<Ticket> = {}): TicketFile =>
  aFile(aTicket(id, more), {
    steps: [
      aStep(id, 'print'),
      aStep(id, 'cut', { ordinal: 2, deviceId: 'guillotine-1', inputs: ['sheets'] }),
    ],
    resources: [
      aResource(id, 'plates', { name: 'ExposedMedia', status: 'Available' }),
      aResource(id, 'sheets'),
    ],
    entries: [anEntry(id, 'print', `entry-${id}`)],
    uses: [aUse(id, 'print', 'paper-a')],
  });

export async function accept(store: Store, ...files: readonly TicketFile[]): Promise<void> {
  await store.change({}, () => ({
    result: null,
    documents: files.map((file) => aDocument(file.ticket.documentId)),
    tickets: files,
    events: files.map((file) => anEvent(file.ticket.id)),
  }));
}

const only = (slice: Slice, id: string): TicketFile => slice.tickets.get(id)!;

/** Decides on one ticket that is there. */
export const changeTicket = <R = null>(
  store: Store,
  id: string,
  decide: (file: TicketFile) => Omit<Decision<R>, 'result'> & { result?: R },
) => store.change({ tickets: [id] }, (slice) => ({ result: null as R, ...decide(only(slice, id)) }));

export function exerciseChange(make: MakeStore): void {
  describe('a change', () => {
    const current = freshStore(make);

    it('keeps every row exactly as it was decided', async () => {
      const { store } = current();
      const plan = {
        jobId: 'job-a',
        sheets: [{ name: 'S1', front: [{ xMm: 12.25 }] }],
      } as unknown as Ticket['plan'];
      const file: TicketFile = {
        ...aJob('a', {
          plan,
          customer: 'Players’ Guild „Ü“ 𝄞',
          due: NOON + 1,
          problems: [
            {
              severity: 'warning',
              code: 'DEFAULT_TAKEN',
              line: 3,
              path: '/JDF',
              message: 'no ink',
              hint: null,
            },
          ],
        }),
        phases: [
          aPhase('a', 'print', NOON, { good: 10.5 }),
          aPhase('a', 'print', NOON + 5, { end: NOON + 9 }),
        ],
      };
      await accept(store, file);
      expect(await store.ticketFile('a')).toEqual({ ...file, ticket: { ...file.ticket, revision: 1 } });
      expect(await store.document('doc-a')).toEqual(aDocument('doc-a'));
      expect(await store.ticketFile('b')).toBeNull();
    });

    it('keeps bytes of a document as they came, whatever they are', async () => {
      const { store } = current();
      const bytes = Buffer.from(Array.from({ length: 70_000 }, (_, at) => (at * 7) % 256));
      await store.change({}, () => ({ result: null, documents: [{ ...aDocument('d'), bytes, name: null }] }));
      const found = await store.document('d');
      expect(Buffer.compare(Buffer.from(found!.bytes), bytes)).toBe(0);
      expect(found!.name).toBeNull();
    });

    it('returns what was decided and the hints for the queues', async () => {
      const work = [{ kind: 'instruct', ticketId: 'a', entryId: 'e' }] as const;
      const answer = await current().store.change({}, () => ({ result: 42, work }));
      expect(answer).toEqual({ result: 42, work });
    });

    it('is there for another server as soon as it returned', async () => {
      const { store, another } = current();
      const second = await another();
      await accept(store, aJob('a'));
      expect((await second.ticketFile('a'))?.ticket.revision).toBe(1);
    });

    it('writes nothing at all when the decision throws', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const before = await store.ticketFile('a');
      const decided = changeTicket(store, 'a', () => {
        throw new RangeError('the decision broke');
      });
      await expect(decided).rejects.toThrow(RangeError);
      expect(await store.ticketFile('a')).toEqual(before);
      await changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, ticket: { ...file.ticket, name: 'New' } }],
      }));
      expect((await store.ticketFile('a'))?.ticket.name).toBe('New');
    });

    it('writes nothing at all when one of its rows is refused', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const broken = changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, ticket: { ...file.ticket, name: 'Half' } }],
        events: [anEvent('a', { type: 'ticket.held' })],
        documents: [aDocument('doc-a')],
      }));
      await expect(broken).rejects.toMatchObject({ name: 'Fault', code: 'BROKEN' });
      await store.sequence();
      expect((await store.ticketFile('a'))?.ticket.name).toBe('Festival programme');
      expect((await store.eventsAfter(0, 10)).map((event) => event.type)).toEqual(['ticket.accepted']);
    });

    it('counts the revision up by one when any row of the file changed, and else not', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const revision = async (): Promise<number | undefined> =>
        (await store.ticketFile('a'))?.ticket.revision;
      await changeTicket(store, 'a', (file) => ({ tickets: [file] }));
      expect(await revision()).toBe(1);
      await changeTicket(store, 'a', (file) => ({ tickets: [{ ...file, steps: [...file.steps] }] }));
      expect(await revision()).toBe(1);
      await changeTicket(store, 'a', (file) => ({
        tickets: [
          { ...file, phases: [aPhase('a', 'print', NOON)], ticket: { ...file.ticket, revision: 77 } },
        ],
      }));
      expect(await revision()).toBe(2);
    });

    it('adds, changes and takes out rows of a file together', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      await changeTicket(store, 'a', (file) => ({
        tickets: [
          {
            ...file,
            steps: [{ ...file.steps[0]!, good: 7 }, aStep('a', 'fold', { ordinal: 3 })],
            entries: [
              { ...file.entries[0]!, status: 'Aborted', end: NOON + 1 },
              anEntry('a', 'print', 'entry-new', { submitted: NOON + 1 }),
            ],
          },
        ],
      }));
      const file = await store.ticketFile('a');
      expect(file?.steps.map((step) => [step.id, step.good])).toEqual([
        ['print', 7],
        ['fold', 0],
      ]);
      expect(file?.entries.map((entry) => [entry.id, entry.status])).toEqual([
        ['entry-a', 'Aborted'],
        ['entry-new', 'Waiting'],
      ]);
      expect(file?.resources).toHaveLength(2);
    });

    it('refuses a second live entry for one step', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const second = changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, entries: [...file.entries, anEntry('a', 'print', 'entry-two')] }],
      }));
      await expect(second).rejects.toMatchObject({ code: 'BROKEN' });
    });

    it('replaces a plan, and another server that read the old one sees the new one', async () => {
      const { store, another } = current();
      const second = await another();
      const planOf = (name: string): Ticket['plan'] => ({ jobId: name }) as unknown as Ticket['plan'];
      await accept(store, aJob('a', { plan: planOf('one') }));
      expect((await second.ticketFile('a'))?.ticket.plan).toEqual({ jobId: 'one' });
      await changeTicket(store, 'a', (file) => ({
        tickets: [{ ...file, ticket: { ...file.ticket, plan: planOf('two') } }],
      }));
      expect((await second.ticketFile('a'))?.ticket.plan).toEqual({ jobId: 'two' });
      await changeTicket(second, 'a', (file) => ({
        tickets: [{ ...file, ticket: { ...file.ticket, plan: null } }],
      }));
      expect((await store.ticketFile('a'))?.ticket.plan).toBeNull();
    });

    it('serialises two changes of one ticket, on two servers, so that none is lost', async () => {
      const { store, another } = current();
      const second = await another();
      await accept(store, aJob('a'));
      const count = (server: Store): Promise<unknown> =>
        changeTicket(server, 'a', (file) => ({
          tickets: [{ ...file, steps: file.steps.map((step) => ({ ...step, good: step.good + 1 })) }],
        }));
      await Promise.all(Array.from({ length: 30 }, (_, at) => count(at % 2 === 0 ? store : second)));
      const file = await store.ticketFile('a');
      expect(file?.steps.map((step) => step.good)).toEqual([30, 30]);
      expect(file?.ticket.revision).toBe(31);
    });

    it('shows child rows as they are after the lock was waited for', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const seen: number[] = [];
      const add = (at: number): Promise<unknown> =>
        changeTicket(store, 'a', (file) => {
          seen.push(file.phases.length);
          return { tickets: [{ ...file, phases: [...file.phases, aPhase('a', 'print', NOON + at)] }] };
        });
      await Promise.all([0, 1, 2, 3, 4, 5].map(add));
      expect(seen).toEqual([0, 1, 2, 3, 4, 5]);
    });

    it('calls the decision once for each change, also under contention in opposite orders', async () => {
      const { store, another } = current();
      const second = await another();
      await accept(store, aJob('a'), aJob('b'));
      await store.change({}, () => ({ result: null, devices: [aDevice('press-1')] }));
      let calls = 0;
      const both = (server: Store, tickets: readonly string[]): Promise<unknown> =>
        server.change({ tickets, devices: ['press-1'] }, (slice) => {
          calls++;
          const device = slice.devices.get('press-1')!;
          return { result: null, devices: [{ ...device, speed: (device.speed ?? 0) + 1 }] };
        });
      await Promise.all(
        Array.from({ length: 20 }, (_, at) =>
          at % 2 === 0 ? both(store, ['a', 'b']) : both(second, ['b', 'a']),
        ),
      );
      expect(calls).toBe(20);
      expect((await store.device('press-1'))?.speed).toBe(20);
    });

    it('lets two servers register one device at once, and the second sees the first', async () => {
      const { store, another } = current();
      const second = await another();
      const register = (server: Store): Promise<{ result: string }> =>
        server.change({ devices: ['press-9'] }, (slice): Decision<string> => {
          const there = slice.devices.get('press-9');
          return there === undefined
            ? { result: 'new', devices: [aDevice('press-9', { speed: 1 })] }
            : { result: 'known', devices: [{ ...there, speed: (there.speed ?? 0) + 1 }] };
        });
      const answers = await Promise.all([store, second, store, second].map(register));
      expect(answers.map((answer) => answer.result).sort()).toEqual(['known', 'known', 'known', 'new']);
      expect((await store.device('press-9'))?.speed).toBe(4);
    });

    it('fails as a whole when a request with the same key was answered before', async () => {
      const { store } = current();
      const receipt = { scope: 'tickets', key: 'k1', bodyHash: 'h', ticketId: 'a', createdAt: NOON };
      const submit = (id: string): Promise<unknown> =>
        store.change({}, () => ({
          result: null,
          documents: [aDocument(`doc-${id}`)],
          tickets: [aJob(id)],
          receipts: [{ ...receipt, ticketId: id }],
        }));
      const outcomes = await Promise.allSettled([submit('a'), submit('b'), submit('c')]);
      const refused = outcomes.flatMap((outcome) => (outcome.status === 'rejected' ? [outcome.reason] : []));
      expect(refused).toHaveLength(2);
      for (const reason of refused) expect(reason).toBeInstanceOf(ReceiptTaken);
      const kept = await store.receipt('tickets', 'k1');
      expect((await store.tickets({ limit: 10 })).items.map((file) => file.ticket.id)).toEqual([
        kept?.ticketId,
      ]);
      expect(await store.receipt('tickets', 'k2')).toBeNull();
      expect(await store.receipt('jmf', 'k1')).toBeNull();
    });

    it('refuses a new ticket under an id that is taken, when it was not asked for by that id', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      await expect(accept(store, { ...aJob('a'), entries: [] })).rejects.toMatchObject({ code: 'BROKEN' });
    });

    it('refuses two versions of one ticket in one change', async () => {
      const { store } = current();
      await accept(store, aJob('a'));
      const twice = changeTicket(store, 'a', (file) => ({ tickets: [file, { ...file }] }));
      await expect(twice).rejects.toMatchObject({ code: 'BROKEN' });
    });

    it('keeps text that holds NUL or half a character, with a sign in its place', async () => {
      const { store } = current();
      await accept(store, aJob('a', { name: 'A\u0000B\ud800C\\u0000' }));
      expect((await store.ticketFile('a'))?.ticket.name).toBe('A\ufffdB\ufffdC\\u0000');
    });
  });
}
