/** What several benches stand on: a durable database of their own, the demo plant, an order, a crew of callers. */
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadPlant, projectPath } from '../../dist/apps/server/src/index.js';
import { readDocument } from '../../dist/libs/flow/src/index.js';
import { realClock, systemRandom, uuidV7Source } from '../../dist/libs/kernel/src/index.js';
import { openStore, startEmbeddedPostgres } from '../../dist/libs/store/src/index.js';

/** A PostgreSQL with fsync on, gone at the end: commits are compared, so they must be real ones. */
export async function durableDatabase() {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-bench-'));
  chmodSync(folder, 0o755);
  const database = await startEmbeddedPostgres({ dataDir: join(folder, 'postgres'), log: () => undefined });
  return {
    url: database.url,
    folder,
    async stop() {
      await database.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export const demoOrder = () =>
  JSON.parse(readFileSync(projectPath('demo-data', 'orders', '01-salt-harbour.json'), 'utf8'));

/** The engine's ports over a real store; `more` replaces what a bench needs otherwise. */
export async function enginePorts(url, schema, more = {}) {
  const plant = loadPlant(projectPath('demo-data', 'plant.yaml'));
  const clock = realClock();
  const store = await openStore({ url, schema });
  return {
    store,
    queue: {
      offer: async () => undefined,
      serve: async () => undefined,
      clear: async () => undefined,
      close: async () => undefined,
    },
    link: {
      submit: async (_device, parcel) => ({ outcome: 'taken', deviceEntryId: parcel.stepId }),
      instruct: async () => ({ outcome: 'taken', deviceEntryId: '' }),
      knownEntries: async () => null,
    },
    clock,
    ids: uuidV7Source(clock, systemRandom),
    plant: plant.value,
    log: () => undefined,
    read: async ({ bytes }, presses) => readDocument(bytes, plant.value, presses),
    ticketDocument: (file) => store.document(file.ticket.documentId),
    jmfUrl: 'http://127.0.0.1:7420/jmf',
    deviceId: 'sidelay',
    ...more,
  };
}

/** Runs `count` tasks, `atOnce` of them at a time. */
export async function crew(count, atOnce, task) {
  let next = 0;
  await Promise.all(
    Array.from({ length: atOnce }, async () => {
      while (next < count) await task(next++);
    }),
  );
}
