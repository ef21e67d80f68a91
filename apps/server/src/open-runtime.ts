import { join } from 'node:path';
import type { Plant } from '#libs/craft';
import {
  checkHandlers,
  checkMachines,
  checkProcesses,
  type EnginePorts,
  instantOf,
  type Log,
} from '#libs/flow';
import { type ClockSetting, codes, Fault, systemRandom, uuidV7Source, wallClock } from '#libs/kernel';
import { openQueue, openStore, startEmbeddedPostgres } from '#libs/store';
import { makeDeviceLink } from '#libs/wire';
import { documentDoor } from './intake/fetch-document.js';
import { readCostOf } from './intake/read-cost.js';
import { readingPool } from './intake/reading-pool.js';
import { ticketDocument } from './intake/ticket-document.js';
import { makeMetrics } from './metrics.js';
import { loadPlant, projectPath } from './plant-file.js';
import { clockOf, openPlantClock, realSetting } from './plant-time.js';
import type { Runtime } from './runtime.js';
import type { Settings } from './settings.js';
import { version } from './version.js';

/** Threads that read and plan. */
const READERS = 2;

/** Plant seconds to a real one in the demo. */
const DEMO_SPEED = 60;

/** Whether time runs by the plant clock (demo or a stated speed) and not by real UTC. */
export function runsOnPlantTime(settings: Settings): boolean {
  return settings.DEMO || settings.DEMO_SPEED !== undefined;
}

type Closing = () => Promise<void>;

export interface OpenRuntime {
  readonly runtime: Runtime;
  /** Closes what was opened, last first. */
  close(): Promise<void>;
}

/** Opens database, queue, plant and ports in their order, with start-up checks first. Throws a Fault that says what is wrong. */
export async function openRuntime(settings: Settings, log: Log): Promise<OpenRuntime> {
  checkMachines();
  checkProcesses();
  checkHandlers();
  const plant = plantOf(settings);
  const closings: Closing[] = [];
  const close = async (): Promise<void> => {
    for (const step of closings.splice(0).reverse()) {
      await step().catch((cause) => log('warn', 'closing failed', { cause: String(cause) }));
    }
  };
  try {
    const databaseUrl = settings.DATABASE_URL ?? (await embedded(settings, log, closings));
    const store = await openStore({
      url: databaseUrl,
      onTrouble: (message, cause) => log('warn', message, { cause: String(cause) }),
    });
    closings.push(() => store.close());
    const clockSetting: ClockSetting = runsOnPlantTime(settings)
      ? await openPlantClock(store, settings.DEMO_SPEED ?? DEMO_SPEED, openingTime(plant))
      : realSetting;
    const clock = clockOf(clockSetting);
    const ids = uuidV7Source(clock, systemRandom);
    const queue = await openQueue({
      url: settings.QUEUE_URL ?? databaseUrl,
      onTrouble: (message, cause) => log('warn', message, { cause: String(cause) }),
    });
    closings.push(() => queue.close());
    const documents = documentDoor(store, {
      fileRoots: settings.FILE_ROOTS,
      allowedHosts: settings.ALLOWED_HOSTS,
      maxBytes: settings.BODY_LIMIT_MB * 1024 * 1024,
    });
    const reading = readingPool(
      plant,
      READERS,
      new URL('./intake/read-worker.js', import.meta.url),
      readCostOf(settings),
    );
    closings.push(() => reading.close());
    const ports: EnginePorts = {
      read: (document, presses) => reading.read(document, presses),
      store,
      queue,
      clock,
      ids,
      plant,
      log,
      ticketDocument: (file) => ticketDocument(store, file),
      deviceId: settings.DEVICE_ID,
      jmfUrl: `${publicUrl(settings)}/jmf`,
      link: makeDeviceLink({
        guard: documents.guard,
        clock,
        ids,
        senderId: settings.DEVICE_ID,
        documentUrl: (parcel) => `${publicUrl(settings)}/jmf/tickets/${parcel.ticketId}/${parcel.entryId}`,
      }),
    };
    const runtime: Runtime = {
      settings,
      version,
      ports,
      store,
      clock,
      clockSetting,
      documents,
      metrics: makeMetrics(),
      readiness: () => readiness(ports),
    };
    return { runtime, close };
  } catch (cause) {
    await close();
    throw cause;
  }
}

function plantOf(settings: Settings): Plant {
  const path = settings.PLANT ?? projectPath('demo-data', 'plant.yaml');
  const plant = loadPlant(path);
  if (plant.ok) return plant.value;
  const lines = plant.problems.map(
    (p) => `${path}${p.line === null ? '' : `:${p.line}`} ${p.path ?? ''} ${p.message}`,
  );
  throw new Fault('PLANT_DEFINITION', `${codes.PLANT_DEFINITION.title}:\n${lines.join('\n')}`);
}

async function embedded(settings: Settings, log: Log, closings: Closing[]): Promise<string> {
  const database = await startEmbeddedPostgres({
    dataDir: join(settings.DATA_DIR, 'postgres'),
    log: (message) => log('info', message),
  });
  closings.push(() => database.stop());
  return database.url;
}

/** The address under which devices reach this server; an unspecified host is not one. */
export function publicUrl(settings: Settings): string {
  if (settings.PUBLIC_URL !== undefined) return settings.PUBLIC_URL.replace(/\/$/, '');
  const host = ['0.0.0.0', '::', ''].includes(settings.HOST) ? '127.0.0.1' : settings.HOST;
  const scheme = settings.TLS_CERT === undefined ? 'http' : 'https';
  return `${scheme}://${host.includes(':') ? `[${host}]` : host}:${settings.PORT}`;
}

/** Seven in the morning of today or, at the weekend, of the Monday after: the demo's plant day begins at opening. */
function openingTime(plant: Plant): number {
  const day = new Date(wallClock.now());
  while (day.getUTCDay() === 0 || day.getUTCDay() === 6) day.setUTCDate(day.getUTCDate() + 1);
  const date = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth(), day.getUTCDate()));
  return instantOf(date, '07:00', plant.timeZone);
}

async function readiness(ports: EnginePorts): Promise<readonly string[]> {
  try {
    await ports.store.head();
    return [];
  } catch {
    return ['The database does not answer. Is it running, and SIDELAY_DATABASE_URL right?'];
  }
}
