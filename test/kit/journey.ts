import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plan } from '../../libs/craft/src/index.js';
import { type OwnDatabase, ownDatabase } from './own-database.js';
import { freePort, type Running, startProgram, startServer, until } from './server-process.js';

export interface StepJson {
  readonly id: string;
  readonly types: readonly string[];
  readonly status: string;
  readonly statusDetails: string | null;
  readonly device: string | null;
  readonly good: number;
  readonly waste: number;
}

export interface TicketJson {
  readonly id: string;
  readonly jobId: string;
  readonly status: string;
  readonly quantity: number;
  readonly progressPct: number;
  readonly steps: readonly StepJson[];
}

export interface Journey {
  readonly ticket: TicketJson;
  readonly plan: Plan;
  readonly consumption: readonly {
    step: string;
    unit: string;
    planned: number;
    actual: number;
    waste: number;
    source: string;
  }[];
  readonly story: readonly { id: string; time: string; type: string; sentence: string }[];
  readonly document: string;
}

/** A server process with its own database and, beside it, the simulated plant as another process. */
export class Hub {
  server!: Running;
  plant: Running | null = null;
  readonly folder = mkdtempSync(join(tmpdir(), 'sidelay-hub-'));
  readonly #env: Record<string, string>;

  private constructor(
    readonly port: number,
    readonly database: OwnDatabase,
    queueUrl: string | undefined,
    speed: number,
    more: (folder: string) => Record<string, string>,
  ) {
    this.#env = {
      SIDELAY_PORT: String(port),
      SIDELAY_DATA_DIR: this.folder,
      SIDELAY_DATABASE_URL: database.url,
      // A speed alone gives the plant clock, without the demo's own orders and plant: those belong to the test.
      SIDELAY_DEMO_SPEED: String(speed),
      SIDELAY_LOG_LEVEL: 'warn',
      ...(queueUrl === undefined ? {} : { SIDELAY_QUEUE_URL: queueUrl }),
      ...more(this.folder),
    };
  }

  static async open(
    options: { queueUrl?: string; speed?: number; env?: (folder: string) => Record<string, string> } = {},
  ): Promise<Hub> {
    const hub = new Hub(
      await freePort(),
      await ownDatabase(),
      options.queueUrl,
      options.speed ?? 600,
      options.env ?? (() => ({})),
    );
    await hub.start();
    return hub;
  }

  async start(): Promise<void> {
    this.server = await startServer(this.#env);
  }

  /** Another server process over the same database. */
  async second(env: Record<string, string>): Promise<Running> {
    return startServer({ ...this.#env, SIDELAY_PORT: String(await freePort()), ...env });
  }

  /** The plant knows only the hub's address, and outlives any restart of it. */
  startPlant(
    devices: readonly { id: string; kind: string; name: string; faults?: readonly string[] }[],
  ): void {
    const args = [
      '--hub',
      this.server.url,
      '--devices',
      JSON.stringify(devices),
      '--state',
      join(this.folder, 'devices'),
      '--seed',
      '7',
    ];
    this.plant = startProgram('apps/plant/src/main.js', args);
  }

  async get<T>(path: string, accept = 'application/json'): Promise<T> {
    const answer = await fetch(`${this.server.url}${path}`, { headers: { accept } });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
    return (accept === 'application/json' ? answer.json() : answer.text()) as Promise<T>;
  }

  post(
    path: string,
    body: string | Uint8Array,
    contentType: string,
    headers: Record<string, string> = {},
  ): Promise<Response> {
    return fetch(`${this.server.url}${path}`, {
      method: 'POST',
      body: body as BodyInit,
      headers: { 'content-type': contentType, ...headers },
    });
  }

  /** Positions of the log behind one, up to where it stands now. */
  async events(after: number): Promise<readonly number[]> {
    const stop = new AbortController();
    const answer = await fetch(`${this.server.url}/api/v1/events?after=${after}`, { signal: stop.signal });
    const ids: number[] = [];
    let text = '';
    const reader = answer.body!.getReader();
    const decoder = new TextDecoder();
    for (;;) {
      // The stream stays open; once it has been still for a moment, everything that was there has come.
      const next = await Promise.race([
        reader.read(),
        new Promise<null>((settle) => setTimeout(() => settle(null), 1500)),
      ]);
      if (next === null || next.done) break;
      text += decoder.decode(next.value, { stream: true });
    }
    stop.abort();
    for (const [, id] of text.matchAll(/^id: (\d+)$/gm)) ids.push(Number(id));
    return ids;
  }

  async close(): Promise<void> {
    await this.plant?.kill('SIGTERM');
    await this.server.kill('SIGTERM');
    await this.database.drop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}

export const DEVICES = [
  { id: 'platesetter', kind: 'platesetter', name: 'Platesetter' },
  { id: 'press-full', kind: 'press', name: 'Full-size press' },
  { id: 'press-half', kind: 'press', name: 'Half-size press' },
  { id: 'guillotine', kind: 'guillotine', name: 'Guillotine' },
  { id: 'folder-large', kind: 'folder', name: 'Large folder' },
  { id: 'folder-small', kind: 'folder', name: 'Small folder' },
  { id: 'stitcher', kind: 'stitcher', name: 'Stitcher' },
] as const;

export const demoData = (path: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../demo-data/${path}`, import.meta.url)));

const JDF = 'application/vnd.cip4-jdf+xml';

export async function submitFile(hub: Hub, file: string): Promise<string> {
  const answer = await hub.post(
    '/api/v1/tickets',
    demoData(file),
    file.endsWith('.jdf') ? JDF : 'application/json',
  );
  const ticket = (await answer.json()) as { id: string };
  if (answer.status !== 201) throw new Error(`${file}: ${answer.status} ${JSON.stringify(ticket)}`);
  return ticket.id;
}

export async function untilEnded(hub: Hub, id: string, deadlineMs = 200_000): Promise<TicketJson> {
  return until(
    async () => {
      const ticket = await hub.get<TicketJson>(`/api/v1/tickets/${id}`);
      return ['Completed', 'Aborted'].includes(ticket.status) ? ticket : null;
    },
    `the end of ticket ${id}; the server said:\n${hub.server.output()}\nthe plant said:\n${hub.plant?.output()}`,
    deadlineMs,
  );
}

export async function journeyOf(hub: Hub, id: string): Promise<Journey> {
  const path = `/api/v1/tickets/${id}`;
  return {
    ticket: await hub.get<TicketJson>(path),
    plan: await hub.get<Plan>(`${path}/plan`),
    consumption: (await hub.get<{ items: Journey['consumption'] }>(`${path}/consumption`)).items,
    story: (await hub.get<{ items: Journey['story'] }>(`${path}/story?limit=1000`)).items,
    document: await hub.get<string>(`${path}/document`, JDF),
  };
}

/** Files in, plant on, until all are done and every device has given its ticket back. */
export async function runJourney(options: {
  files: readonly string[];
  queueUrl?: string;
}): Promise<{ hub: Hub; jobs: readonly Journey[] }> {
  const hub = await Hub.open(options);
  try {
    hub.startPlant(DEVICES);
    const ids: string[] = [];
    for (const file of options.files) ids.push(await submitFile(hub, file));
    for (const id of ids) await untilEnded(hub, id);
    await until(async () => {
      const stories = await Promise.all(ids.map((id) => journeyOf(hub, id)));
      // Our own workstation gives nothing back: it is no device on the wire.
      return stories.every(
        ({ story, ticket }) =>
          story.filter((event) => event.type === 'step.returned').length === ticket.steps.length - 1,
      );
    }, 'the returned tickets');
    return { hub, jobs: await Promise.all(ids.map((id) => journeyOf(hub, id))) };
  } catch (cause) {
    await hub.close();
    throw cause;
  }
}
