import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Ticket } from '#libs/flow';
import { exportDatabase, importDatabase, type OpenStore, openStore } from '#libs/store';
import { dropSchema, freshSchema, places } from './store-places.js';
import { aDevice, aDocument, aMove, anEntry, anEvent, aPhase, NOON } from './store-rows.js';
import { aJob } from './store-suite-change.js';

/** The versions that left an export, oldest first; the last is this one's. */
const versions = ['0.1.0', '0.2.0', '0.3.0'] as const;
const fixtureOf = (version: string): string =>
  fileURLToPath(new URL(`../fixtures/db-${version}.jsonl.gz`, import.meta.url));

/** A little of everything, so that every table has rows. */
async function fill(store: OpenStore): Promise<void> {
  const plan = { jobId: 'F26-PROGRAMME', sheets: [{ name: 'S1' }] } as unknown as Ticket['plan'];
  const job = aJob('ticket-1', { jobId: 'F26-PROGRAMME', plan, status: 'InProgress' });
  await store.change({}, () => ({
    result: null,
    documents: [aDocument('doc-ticket-1', '<JDF Type="Product"/>\n')],
    tickets: [
      {
        ...job,
        entries: [
          anEntry('ticket-1', 'print', 'entry-1', {
            delivery: 'delivered',
            status: 'Running',
            deviceEntryId: 'Q1',
            start: NOON,
          }),
        ],
        phases: [aPhase('ticket-1', 'print', NOON, { good: 120, waste: 3 })],
      },
    ],
    devices: [
      aDevice('press-1', { status: 'Running', job: 'F26-PROGRAMME', ticketId: 'ticket-1', stepId: 'print' }),
    ],
    stockItems: [{ item: 'paper-a', name: 'Coated 115 g', unit: 'sheets' }],
    moves: [
      aMove('move-1', 'paper-a', { amount: 5000 }),
      aMove('move-2', 'paper-a', {
        amount: 420.5,
        from: 'store',
        to: 'reserved',
        ticketId: 'ticket-1',
        stepId: 'print',
      }),
    ],
    receipts: [{ scope: 'tickets', key: 'k1', bodyHash: 'h', ticketId: 'ticket-1', createdAt: NOON }],
    events: [
      anEvent('ticket-1'),
      anEvent('ticket-1', { type: 'step.counted', stepId: 'print', data: { good: 120 } }),
    ],
  }));
  await store.tokens.add(
    {
      id: 'token-1',
      kind: 'device',
      name: 'press-1',
      createdAt: NOON,
      expiresAt: null,
      revokedAt: null,
      lastUsedAt: null,
    },
    'hash-of-a-secret',
  );
  await store.setFact('clock', { plantStart: NOON, realStart: NOON, factor: 60 });
  await store.moveCursor('mqtt', 1);
}

describe.each(places)('a database carried to the $name', ({ url }) => {
  const schemas: string[] = [];
  const opened: OpenStore[] = [];
  const place = (): string => {
    const schema = freshSchema();
    schemas.push(schema);
    return schema;
  };
  const open = async (schema: string): Promise<OpenStore> => {
    const store = await openStore({ url, schema, sequencing: 'inline' });
    opened.push(store);
    return store;
  };

  afterEach(async () => {
    await Promise.all(opened.splice(0).map((store) => store.close()));
    for (const schema of schemas.splice(0)) await dropSchema(url, schema);
  });

  it('is there as it was exported, row by row, and goes on from there', async () => {
    const [from, to] = [place(), place()];
    await fill(await open(from));
    const text = await exportDatabase(url, from);
    const tables = text
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => JSON.parse(line).table as string);
    expect(new Set(tables).size).toBe(17);
    await importDatabase(url, text, to);
    expect(await exportDatabase(url, to)).toBe(text);
    const store = await open(to);
    await store.change({}, () => ({ result: null, events: [anEvent('ticket-1', { type: 'ticket.held' })] }));
    expect((await store.eventsAfter(0, 9)).map((event) => event.position)).toEqual([1, 2, 3]);
  });

  // Each export was made by its version (SIDELAY_UPDATE_FIXTURE=1 makes the last, never again after its release).
  it.each(versions)('of version %s is brought to this version and read', async (version) => {
    const schema = place();
    const fixture = fixtureOf(version);
    if (process.env.SIDELAY_UPDATE_FIXTURE === '1' && version === versions.at(-1)) {
      const source = place();
      await fill(await open(source));
      writeFileSync(fixture, gzipSync(await exportDatabase(url, source), { level: 9 }));
    }
    await importDatabase(url, gunzipSync(readFileSync(fixture)).toString(), schema);
    const store = await open(schema);
    const file = await store.ticketFile('ticket-1');
    expect(file?.ticket).toMatchObject({
      jobId: 'F26-PROGRAMME',
      status: 'InProgress',
      plan: { sheets: [{ name: 'S1' }] },
    });
    expect(file?.steps.map((step) => step.id)).toEqual(['print', 'cut']);
    expect(file?.phases[0]).toMatchObject({ good: 120, waste: 3, start: NOON });
    expect(await store.findStep('press-1', { queueEntryId: 'Q1' })).toMatchObject({
      ticketId: 'ticket-1',
      stepId: 'print',
    });
    expect(Buffer.from((await store.document('doc-ticket-1'))!.bytes).toString()).toBe(
      '<JDF Type="Product"/>\n',
    );
    expect((await store.stock())[0]?.accounts).toEqual({ supplier: -5000, store: 4579.5, reserved: 420.5 });
    expect(await store.head()).toBe(2);
    expect(await store.tokens.byHash('hash-of-a-secret')).toMatchObject({ name: 'press-1' });
    expect(await store.fact('clock')).toMatchObject({ factor: 60 });
  });

  it('is refused where it is none, of a later version, or where tables are already', async () => {
    const schema = place();
    const heading = (migrations: readonly string[]): string =>
      JSON.stringify({ format: 'sidelay-database', migrations });
    await expect(importDatabase(url, 'hello', schema)).rejects.toMatchObject({ code: 'REQUEST_INVALID' });
    await expect(importDatabase(url, `${heading([])}\n{"table":"x; --"}`, schema)).rejects.toMatchObject({
      code: 'REQUEST_INVALID',
    });
    await expect(importDatabase(url, heading(['Later0000000000999']), schema)).rejects.toThrow(
      'later version',
    );
    const used = place();
    await open(used);
    await expect(importDatabase(url, heading([]), used)).rejects.toMatchObject({ code: 'STATE_FORBIDS' });
  });
});
