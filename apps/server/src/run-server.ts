import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { doWork, keepSweeping, type Log, takeIn } from '#libs/flow';
import { Fault } from '#libs/kernel';
import { closeConnections, watchHotFolder } from '#libs/wire';
import { sendDemoOrders } from './demo/demo-orders.js';
import { startDemoPlant } from './demo/demo-plant.js';
import { serveWeb } from './http/web-server.js';
import { sha256, unpack } from './intake/unpack.js';
import { makeLog } from './logger.js';
import { openRuntime, runsOnPlantTime } from './open-runtime.js';
import { projectPath } from './plant-file.js';
import { notePlantTime } from './plant-time.js';
import { preparePlant } from './prepare-plant.js';
import type { Runtime } from './runtime.js';
import { readSettings, type Settings } from './settings.js';

export interface RunningServer {
  readonly url: string;
  /** Stops everything cleanly: no new requests, running work to its end, connections closed, database stopped. */
  stop(): Promise<void>;
}

/** Settings from the environment, or a Fault with one line for each wrong one. Warnings go to the log. */
export function settingsOrFault(env: Readonly<Record<string, string | undefined>>): {
  settings: Settings;
  log: Log;
} {
  const { settings, errors, warnings } = readSettings(env);
  if (settings === null) throw new Fault('SETTING', errors.join('\n'));
  const log = makeLog(settings.LOG_LEVEL);
  for (const text of warnings) log('warn', text);
  return { settings, log };
}

/** Starts the server in the roles that the environment asks for. Resolves when it can serve. */
export async function runServer(env: Readonly<Record<string, string | undefined>>): Promise<RunningServer> {
  const { settings, log } = settingsOrFault(env);
  await mkdir(settings.DATA_DIR, { recursive: true });
  const { runtime, close } = await openRuntime(settings, log);
  const stops: (() => void | Promise<void>)[] = [close];
  const stop = async (): Promise<void> => {
    for (const step of stops.splice(0).reverse()) await step();
    closeConnections();
  };
  try {
    const { ports } = runtime;
    if (runsOnPlantTime(settings)) stops.push(notePlantTime(runtime.store, runtime.clock));
    await preparePlant(ports);
    const web = await serveWeb(runtime, projectPath('dist', 'console'));
    stops.push(() => web.close());
    if (settings.ROLE !== 'hub') {
      stops.push(keepSweeping(ports));
      await ports.queue.serve((work) => doWork(ports, work));
    }
    if (settings.ROLE !== 'worker') {
      const watch = await watchInbox(runtime);
      stops.push(() => watch.stop());
    }
    if (settings.DEMO && settings.ROLE === 'all') {
      stops.push(startDemoPlant({ hub: web.url, plant: ports.plant, dataDir: settings.DATA_DIR, log }));
      stops.push(sendDemoOrders(ports, [projectPath('demo-data', 'orders')]));
    }
    return { url: web.url, stop };
  } catch (cause) {
    await stop();
    throw cause;
  }
}

/** A file dropped into the inbox is a ticket submitted. */
function watchInbox(runtime: Runtime): ReturnType<typeof watchHotFolder> {
  const { settings, ports } = runtime;
  return watchHotFolder({
    folder: settings.INBOX ?? join(settings.DATA_DIR, 'inbox'),
    clock: runtime.clock,
    maxBytes: settings.BODY_LIMIT_MB * 1024 * 1024,
    onTrouble: (name, cause) =>
      ports.log('warn', 'a file in the inbox could not be taken in; it is tried again', {
        name,
        cause: String(cause),
      }),
    async onFile({ name, bytes, key }) {
      const taken = await takeIn(ports, {
        bytes,
        sha256: sha256(bytes),
        mediaType: 'application/octet-stream',
        name,
        intake: 'hotFolder',
        ...(await unpack(bytes, null)),
        key: { scope: 'hotFolder', key },
      });
      if (!taken.ok) return { rejected: taken.problems };
      const { ticket } = taken.value.file;
      runtime.metrics.ticketsTakenIn.inc({
        intake: 'hotFolder',
        outcome: ticket.status === 'Rejected' ? 'rejected' : 'accepted',
      });
      return ticket.status === 'Rejected' ? { rejected: ticket.problems } : { accepted: ticket.id };
    },
  });
}
