import type { WallClock } from '#libs/kernel';
import type { Answer, Ask } from '../server/ask.js';
import type { StreamEars } from '../server/stream.js';
import { openPlantLive } from './plant-live.js';

interface Timer {
  readonly task: () => void;
  readonly ms: number;
}

const HEALTH = {
  status: 'ready',
  because: [],
  version: '0',
  demo: true,
  plantTime: '2026-03-12T10:00:00Z',
  clock: { factor: 60 },
};

/** Waits until all answers that are due have been taken. */
const settled = async (): Promise<void> => {
  for (let n = 0; n < 20; n += 1) await Promise.resolve();
};

function stage() {
  const timers: Timer[] = [];
  const asked: string[] = [];
  const revisions = new Map<string, number>();
  let ears: StreamEars | undefined;
  let closed = false;
  const clock: WallClock = {
    now: () => 1000,
    setTimeout: (task, ms) => {
      const timer = { task, ms };
      timers.push(timer);
      return () => {
        timers.splice(timers.indexOf(timer), 1);
      };
    },
  };
  const answerTo = (path: string): unknown => {
    if (path === '/health/ready') return HEALTH;
    const id = /tickets\/(\w+)$/.exec(path)?.[1];
    return id === undefined
      ? { items: [], next: null }
      : { id, revision: revisions.get(id) ?? 1, status: 'Waiting' };
  };
  const ask: Ask = async <T>(path: string) => {
    asked.push(path);
    return { ok: true, status: 200, value: answerTo(path) as T, location: null } satisfies Answer<T>;
  };
  const live = openPlantLive({
    ask,
    clock,
    stream: (given) => {
      ears = given;
      return () => {
        closed = true;
      };
    },
  });
  const run = (ms: number): void => {
    const at = timers.findIndex((timer) => timer.ms === ms);
    timers.splice(at, 1)[0]!.task();
  };
  const news = (ticket: string | null, device: string | null = null, type = 'step.counted') =>
    ears!.heard({ id: '1', type, ticket, device });
  return { live, asked, revisions, timers, run, news, ears: ears!, isClosed: () => closed };
}

const GATHER_MS = 300;
const BEAT_MS = 10_000;

describe('what the console knows of the plant', () => {
  it('asks once for a ticket, however many events of it come together', async () => {
    const { asked, run, news } = stage();
    await settled();
    asked.length = 0;
    for (let n = 0; n < 50; n += 1) news('a');
    run(GATHER_MS);
    await settled();
    expect(asked).toEqual(['/api/v1/tickets/a']);
  });

  it('reads the lists instead when very many tickets have changed', async () => {
    const { asked, run, news } = stage();
    await settled();
    asked.length = 0;
    for (let n = 0; n < 30; n += 1) news(`t${n}`);
    run(GATHER_MS);
    await settled();
    expect(asked.every((path) => path.startsWith('/api/v1/tickets?status='))).toBe(true);
  });

  it('looks again for what came in while it was asking', async () => {
    const { asked, run, news } = stage();
    await settled();
    news('a');
    run(GATHER_MS);
    news('b');
    await settled();
    asked.length = 0;
    run(GATHER_MS);
    await settled();
    expect(asked).toEqual(['/api/v1/tickets/b']);
  });

  it('never lets an older answer replace a newer one', async () => {
    const { live, revisions } = stage();
    revisions.set('a', 5);
    await live.watch('a');
    revisions.set('a', 4);
    await live.watch('a');
    expect(live.tickets.value.get('a')?.revision).toBe(5);
  });

  it('takes plant time and its speed from the server, and again when the clock is set', async () => {
    const { live, asked, news } = stage();
    await settled();
    expect(live.clockFix.value).toEqual({ plantMs: Date.parse(HEALTH.plantTime), heardMs: 1000, factor: 60 });
    asked.length = 0;
    news(null, null, 'clock.set');
    await settled();
    expect(asked).toEqual(['/health/ready']);
  });

  it('reads everything anew when the stream opens, and says when it is cut', async () => {
    const { live, ears, asked } = stage();
    await settled();
    asked.length = 0;
    ears.opened();
    await settled();
    expect(live.link.value).toBe('live');
    expect(asked).toContain('/api/v1/devices');
    ears.cut();
    expect(live.link.value).toBe('cut');
  });

  it('asks the devices from time to time, for a sign of life is no event', async () => {
    const { asked, run, timers, ears } = stage();
    ears.opened();
    await settled();
    asked.length = 0;
    run(BEAT_MS);
    await settled();
    expect(asked).toEqual(['/health/ready', '/api/v1/devices']);
    expect(timers.map(({ ms }) => ms)).toEqual([BEAT_MS]);
  });

  it('reads the tickets as well while the stream is cut, so that the picture is as old as it says', async () => {
    const { asked, run, ears } = stage();
    ears.opened();
    ears.cut();
    await settled();
    asked.length = 0;
    run(BEAT_MS);
    await settled();
    expect(asked).toContain('/api/v1/tickets?status=InProgress&limit=300');
  });

  it('asks nothing any more once it is stopped', async () => {
    const { live, news, timers, isClosed } = stage();
    await settled();
    live.stop();
    news('a');
    expect([timers, isClosed()]).toEqual([[], true]);
  });
});
