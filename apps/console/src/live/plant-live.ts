import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { WallClock } from '#libs/kernel';
import type { Ask } from '../server/ask.js';
import type { Device, Health, Listing, Ticket } from '../server/shapes.js';
import type { News, StreamEars } from '../server/stream.js';
import type { ClockFix } from '../time/plant-time.js';

export type LinkState = 'opening' | 'live' | 'cut';

/** What the screens read: the plant as far as the server has told it. */
export interface PlantLive {
  readonly tickets: ReadonlySignal<ReadonlyMap<string, Ticket>>;
  readonly devices: ReadonlySignal<readonly Device[]>;
  readonly health: ReadonlySignal<Health | null>;
  readonly clockFix: ReadonlySignal<ClockFix | null>;
  readonly link: ReadonlySignal<LinkState>;
  /** Browser clock of the last answer or event, in milliseconds. */
  readonly lastWordMs: ReadonlySignal<number>;
  /** The lists have been read once. */
  readonly loaded: ReadonlySignal<boolean>;
  /** Asks for one ticket, whatever its status, and keeps it up to date from then on. */
  watch(ticketId: string): Promise<boolean>;
  /** Takes a ticket that an answer brought. */
  take(ticket: Ticket): void;
  stop(): void;
}

export interface LivePorts {
  readonly ask: Ask;
  readonly clock: WallClock;
  /** Opens the event stream; the returned function closes it. */
  readonly stream: (ears: StreamEars) => () => void;
}

/** Statuses of tickets that still have work before them; each is one listing. */
const LIVE_STATUSES = ['Waiting', 'Ready', 'Setup', 'InProgress', 'Cleanup', 'Stopped', 'Suspended'];
const LISTINGS: readonly (readonly [status: string, limit: number])[] = [
  ...LIVE_STATUSES.map((status) => [status, 300] as const),
  ['Completed', 12],
  ['Aborted', 4],
  ['Rejected', 8],
];
/** News is gathered this long before anything is asked, so that a burst costs one request a ticket. */
const GATHER_MS = 300;
/** More changed tickets than this: the lists are read anew instead. */
const MANY = 12;
/** Between looks at the server's health and at the devices, whose sign of life is no event. */
const BEAT_MS = 10_000;

export function openPlantLive({ ask, clock, stream }: LivePorts): PlantLive {
  const tickets = signal<ReadonlyMap<string, Ticket>>(new Map());
  const devices = signal<readonly Device[]>([]);
  const health = signal<Health | null>(null);
  const clockFix = signal<ClockFix | null>(null);
  const link = signal<LinkState>('opening');
  const lastWordMs = signal(clock.now());
  const loaded = signal(false);

  const dirty = new Set<string>();
  let dirtyDevices = false;
  let gathering = false;
  let stopped = false;
  let cancelGather = (): void => undefined;
  let cancelBeat = (): void => undefined;

  const heardNow = (): void => {
    lastWordMs.value = clock.now();
  };

  /** An older answer never replaces a newer one: answers may overtake each other. */
  const merge = (news: readonly Ticket[]): void => {
    const next = new Map(tickets.value);
    for (const ticket of news) {
      const known = next.get(ticket.id);
      if (known === undefined || known.revision <= ticket.revision) next.set(ticket.id, ticket);
    }
    tickets.value = next;
  };

  const readHealth = async (): Promise<void> => {
    const askedMs = clock.now();
    const answer = await ask<Health>('/health/ready');
    const told = answer.ok ? answer.value : (answer.problem as unknown as Health);
    if (typeof told?.plantTime !== 'string') return;
    batch(() => {
      heardNow();
      health.value = told;
      // Half the way there and back: what the server said is already that old.
      const heardMs = (askedMs + clock.now()) / 2;
      clockFix.value = { plantMs: Date.parse(told.plantTime), heardMs, factor: told.clock.factor };
    });
  };

  const readDevices = async (): Promise<void> => {
    const answer = await ask<Listing<Device>>('/api/v1/devices');
    if (!answer.ok) return;
    devices.value = answer.value.items;
    heardNow();
  };

  const readTickets = async (): Promise<void> => {
    const answers = await Promise.all(
      LISTINGS.map(([status, limit]) =>
        ask<Listing<Ticket>>(`/api/v1/tickets?status=${status}&limit=${limit}`),
      ),
    );
    batch(() => {
      merge(answers.flatMap((answer) => (answer.ok ? answer.value.items : [])));
      if (answers.every((answer) => answer.ok)) loaded.value = true;
      if (answers.some((answer) => answer.ok)) heardNow();
    });
  };

  const readAll = async (): Promise<void> => {
    await Promise.all([readHealth(), readDevices(), readTickets()]);
  };

  const readOne = async (id: string): Promise<boolean> => {
    const answer = await ask<Ticket>(`/api/v1/tickets/${encodeURIComponent(id)}`);
    if (answer.ok) {
      merge([answer.value]);
      heardNow();
    }
    return answer.ok;
  };

  const flush = async (): Promise<void> => {
    const ids = [...dirty];
    dirty.clear();
    const jobs: Promise<unknown>[] = ids.length > MANY ? [readTickets()] : ids.map(readOne);
    if (dirtyDevices) jobs.push(readDevices());
    dirtyDevices = false;
    await Promise.all(jobs);
    gathering = false;
    if (dirty.size > 0 || dirtyDevices) gather();
  };

  const gather = (): void => {
    if (gathering || stopped) return;
    gathering = true;
    cancelGather = clock.setTimeout(() => void flush(), GATHER_MS);
  };

  const ears: StreamEars = {
    opened: () => {
      batch(() => {
        link.value = 'live';
        heardNow();
      });
      // What happened while the stream was closed and is older than its start is in the lists.
      void readAll();
    },
    heard: (news: News) => {
      heardNow();
      if (news.type === 'clock.set') void readHealth();
      if (news.ticket !== null) dirty.add(news.ticket);
      if (news.device !== null) dirtyDevices = true;
      gather();
    },
    cut: () => {
      link.value = 'cut';
    },
  };

  const beat = (): void => {
    cancelBeat = clock.setTimeout(() => {
      // Without the stream nothing says what has changed: everything is read, and the picture's age stays true.
      const read = link.value === 'live' ? Promise.all([readHealth(), readDevices()]) : readAll();
      void read.then(() => {
        if (!stopped) beat();
      });
    }, BEAT_MS);
  };

  const closeStream = stream(ears);
  beat();
  void readAll();
  return {
    tickets,
    devices,
    health,
    clockFix,
    link,
    lastWordMs,
    loaded,
    watch: readOne,
    take: (ticket) => merge([ticket]),
    stop: () => {
      stopped = true;
      cancelGather();
      cancelBeat();
      closeStream();
    },
  };
}
