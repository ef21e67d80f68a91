import { readFileSync } from 'node:fs';
import { type SimulatedDevice, simulatedDevice } from '../../apps/plant/src/index.js';
import { documentDoor } from '../../apps/server/src/intake/fetch-document.js';
import { receiveMessage } from '../../apps/server/src/intake/receive-message.js';
import { ticketDocument } from '../../apps/server/src/intake/ticket-document.js';
import { sha256 } from '../../apps/server/src/intake/unpack.js';
import { loadPlant, projectPath } from '../../apps/server/src/plant-file.js';
import { preparePlant } from '../../apps/server/src/prepare-plant.js';
import {
  doWork,
  type EnginePorts,
  keepSweeping,
  type LoggedEvent,
  readDocument,
  registerDevice,
  type TicketFile,
  takeIn,
} from '../../libs/flow/src/index.js';
import {
  type Instant,
  seededRandom,
  seedFrom,
  uuidV7Source,
  VirtualClock,
} from '../../libs/kernel/src/index.js';
import { inlineQueue, type OpenStore, openStore } from '../../libs/store/src/index.js';
import { makeDeviceLink } from '../../libs/wire/src/index.js';
import { valueIn } from './value-in.js';

const JMF = 'application/vnd.cip4-jmf+xml';
const SIMULATED = new Set(['platesetter', 'press', 'guillotine', 'folder', 'stitcher', 'binder']);

export interface VirtualPlant {
  readonly clock: VirtualClock;
  readonly ports: EnginePorts;
  readonly store: OpenStore;
  /** Sends a document in, as if it were posted. */
  submit(bytes: Uint8Array, key?: string): Promise<TicketFile>;
  /** A file of demo-data/. */
  demoFile(path: string): Uint8Array;
  log(): Promise<readonly LoggedEvent[]>;
  /** A device is switched off and another one of its name, with an empty memory, stands in its place. */
  replaceDevice(id: string, faults?: readonly string[]): Promise<void>;
  close(): Promise<void>;
}

/**
 * The whole server and the whole simulated plant in one process and in virtual time: real database, real messages as
 * bytes, the real driver; only sockets and clocks are replaced. One hub task runs at a time, so a seed repeats its story.
 */
export async function virtualPlant(options: {
  readonly databaseUrl: string;
  readonly schema: string;
  readonly seed: number;
  readonly start: Instant;
  readonly faults?: Readonly<Record<string, readonly string[]>>;
  readonly sweepEveryS?: number;
}): Promise<VirtualPlant> {
  const { databaseUrl, schema, seed, start } = options;
  const inFlight = new Set<Promise<unknown>>();
  const track = <T>(work: Promise<T>): Promise<T> => {
    inFlight.add(work);
    void work.catch(() => undefined).finally(() => inFlight.delete(work));
    return work;
  };
  let turn: Promise<unknown> = Promise.resolve();
  const oneAtATime = <T>(task: () => Promise<T>): Promise<T> => {
    const mine = turn.then(task, task);
    turn = mine.catch(() => undefined);
    return track(mine);
  };
  const queue = inlineQueue();
  const clock = new VirtualClock(start, async () => {
    do {
      await Promise.all(inFlight);
      await queue.idle();
    } while (inFlight.size > 0);
  });
  const ids = uuidV7Source(clock, seededRandom(seed));
  const store = await openStore({ url: databaseUrl, schema, sequencing: 'inline' });
  const plant = valueIn(loadPlant(projectPath('demo-data', 'plant.yaml')));
  const devices = new Map<string, SimulatedDevice>();
  const documents = documentDoor(store, { fileRoots: [], allowedHosts: [], maxBytes: 16e6 });
  const link = makeDeviceLink({
    guard: documents.guard,
    clock,
    ids,
    senderId: 'sidelay',
    async post(url, body, contentType) {
      const device = devices.get(new URL(url).hostname.split('.')[0]!);
      try {
        const answer = await device!.receive(body, contentType);
        return { kind: 'answered', status: 200, contentType: JMF, body: Buffer.from(answer) };
      } catch (cause) {
        return { kind: 'silent', reason: cause instanceof Error ? cause.message : String(cause) };
      }
    },
  });
  const ports: EnginePorts = {
    store,
    queue,
    link,
    clock,
    ids,
    plant,
    log: () => undefined,
    read: async ({ bytes }, presses) => readDocument(bytes, plant, presses),
    ticketDocument: (file) => ticketDocument(store, file),
    jmfUrl: 'http://hub.plant.invalid/jmf',
    deviceId: 'sidelay',
  };
  await preparePlant(ports);
  await queue.serve((work) => oneAtATime(() => doWork(ports, work)));
  const stopSweeping = keepSweeping(ports, options.sweepEveryS);
  const place = async (id: string, faults: readonly string[] | undefined): Promise<void> => {
    const { kind, name } = plant.devices.find((device) => device.id === id)!;
    const url = `http://${id}.plant.invalid/jmf`;
    const device = simulatedDevice({
      id,
      kind: kind as Exclude<typeof kind, 'bench'>,
      name,
      hubJmf: ports.jmfUrl,
      url,
      clock,
      random: seededRandom(seed ^ seedFrom(id)),
      ids: uuidV7Source(clock, seededRandom(seed ^ seedFrom(`${id} ids ${clock.now()}`))),
      heartbeatS: 4 * 3600,
      faults,
      transport: (_to, body, contentType) =>
        oneAtATime(() =>
          receiveMessage(
            ports,
            documents,
            typeof body === 'string' ? Buffer.from(body) : body,
            contentType,
            null,
            {},
          ),
        ),
    });
    devices.get(id)?.stop();
    devices.set(id, device);
    await registerDevice(ports, { id, kind, name, driver: 'jmf', url });
    device.start();
  };
  for (const { id, kind } of plant.devices) {
    if (SIMULATED.has(kind)) await place(id, options.faults?.[id]);
  }
  return {
    clock,
    ports,
    store,
    async submit(bytes, key) {
      const taken = valueIn(
        await oneAtATime(() =>
          takeIn(ports, {
            bytes,
            sha256: sha256(bytes),
            mediaType: 'application/octet-stream',
            name: null,
            intake: 'http',
            ticket: { bytes, part: null, beside: null },
            problems: [],
            key: key === undefined ? null : { scope: 'test', key },
          }),
        ),
      );
      return taken.file;
    },
    demoFile: (path) => readFileSync(projectPath('demo-data', path)),
    async log() {
      const all: LoggedEvent[] = [];
      for (;;) {
        const page = await store.eventsAfter(all.at(-1)?.position ?? 0, 5000);
        all.push(...page);
        if (page.length < 5000) return all;
      }
    },
    replaceDevice: place,
    async close() {
      stopSweeping();
      for (const device of devices.values()) device.stop();
      await Promise.allSettled(inFlight);
      await queue.close();
      await store.close();
    },
  };
}
