import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync, gzipSync } from 'node:zlib';
import { ticketDocument } from '../../apps/server/src/intake/ticket-document.js';
import { exportTicket, sentenceOf, ticketView } from '../../libs/flow/src/index.js';
import { convertDocument, writeXml } from '../../libs/jdf/src/index.js';
import { exportDatabase, importDatabase, openStore } from '../../libs/store/src/index.js';
import { type OwnDatabase, ownDatabase } from '../kit/own-database.js';
import { parsedXml, valueIn } from '../kit/value-in.js';
import { virtualPlant } from '../kit/virtual-plant.js';

const MONDAY = Date.UTC(2026, 0, 5, 7);
/** The versions that left a run, oldest first; the last is this one's. */
const versions = ['0.1.0', '0.2.0', '0.3.0'] as const;
const pathOf = (version: string): string =>
  fileURLToPath(new URL(`../fixtures/run-${version}.jsonl.gz`, import.meta.url));

/** The brochure of a ticket as a job of its own in the second generation. */
function inSecondGeneration(ticket: Uint8Array): Buffer {
  const doc = parsedXml(Buffer.from(ticket).toString('utf8').replaceAll('T-300', 'T-301'));
  return Buffer.from(writeXml(valueIn(convertDocument(doc, 'xjdf')).doc));
}

/** What this version leaves after two brochures, one in each generation, one poster, one leaflet and one refused document. */
async function makeFixture(database: OwnDatabase): Promise<void> {
  const plant = await virtualPlant({
    databaseUrl: database.url,
    schema: 'made',
    seed: 1,
    start: MONDAY,
    sweepEveryS: 300,
  });
  await plant.submit(plant.demoFile('tickets/paper-boat-300.jdf'), 'boat');
  await plant.submit(inSecondGeneration(plant.demoFile('tickets/paper-boat-300.jdf')), 'boat-again');
  await plant.submit(plant.demoFile('orders/04-festival-poster.json'), 'poster');
  await plant.submit(plant.demoFile('orders/11-workshops-leaflet.json'), 'leaflet');
  await plant.submit(Buffer.from('<JDF xmlns="urn:other"/>'), 'refused');
  await plant.clock.runUntil(MONDAY + 30 * 3_600_000);
  await plant.close();
  writeFileSync(pathOf(versions.at(-1)!), gzipSync(await exportDatabase(database.url, 'made'), { level: 9 }));
}

describe('the database that an earlier version left after a real run', () => {
  let database: OwnDatabase;
  beforeAll(async () => {
    database = await ownDatabase();
    if (process.env.SIDELAY_UPDATE_FIXTURE === '1') await makeFixture(database);
  }, 120_000);
  afterAll(() => database.drop());

  it.each(versions)(
    'opens with this version: jobs, counts, books, story and the ticket that leaves (%s)',
    async (version) => {
      const schema = `from_${version.replaceAll('.', '_')}`;
      await importDatabase(database.url, gunzipSync(readFileSync(pathOf(version))).toString('utf8'), schema);
      const store = await openStore({ url: database.url, schema });
      try {
        const { items } = await store.tickets({ limit: 10 });
        const done = { '0.1.0': 2, '0.2.0': 3, '0.3.0': 4 }[version];
        const expected = [...Array<string>(done).fill('Completed'), 'Rejected'];
        expect(items.map((file) => file.ticket.status).sort()).toEqual(expected);
        const boat = items.find((file) => file.ticket.jobId === 'T-300')!;
        expect(ticketView(boat)).toMatchObject({ progressPct: 100, quantity: 300 });
        expect(boat.steps.find((step) => step.id === 'stitch')).toMatchObject({
          status: 'Completed',
          good: 300,
        });
        const leaving = exportTicket(boat, await ticketDocument(store, boat), {
          now: MONDAY,
          version,
        });
        expect(leaving.ok && leaving.value).toContain('<ProcessRun');
        const story = await store.eventsAfter(0, 10_000, { ticketId: boat.ticket.id });
        expect(story.map(sentenceOf)).toContain('The ticket is Completed.');
        for (const { item, accounts } of await store.stock()) {
          expect([
            item,
            Math.abs(Object.values(accounts).reduce((sum, amount) => sum + amount, 0)) < 1e-6,
          ]).toEqual([item, true]);
        }
      } finally {
        await store.close();
      }
    },
  );
});
