import type { WallClock } from '#libs/kernel';
import { keepStream, newsOf, type Source } from './stream.js';

class FakeSource implements Source {
  onopen: (() => void) | null = null;
  onerror: (() => void) | null = null;
  readyState = 1;
  closed = false;
  readonly #listeners = new Map<string, (event: { data: string; lastEventId: string }) => void>();
  constructor(readonly url: string) {}
  addEventListener(type: string, listener: (event: { data: string; lastEventId: string }) => void): void {
    this.#listeners.set(type, listener);
  }
  close(): void {
    this.closed = true;
  }
  tell(type: string, id: string): void {
    this.#listeners.get(type)?.({
      data: JSON.stringify({ data: { ticket: 't', device: 'd' } }),
      lastEventId: id,
    });
  }
  fail(readyState: number): void {
    this.readyState = readyState;
    this.onerror?.();
  }
}

function stage() {
  const sources: FakeSource[] = [];
  const waiting: (() => void)[] = [];
  const log: string[] = [];
  const clock: WallClock = {
    now: () => 0,
    setTimeout: (task) => {
      waiting.push(task);
      return () => waiting.splice(waiting.indexOf(task), 1);
    },
  };
  const ears = {
    opened: () => log.push('opened'),
    heard: ({ type, id }: { type: string; id: string }) => log.push(`${type} ${id}`),
    cut: () => log.push('cut'),
  };
  const stop = keepStream(ears, clock, (url) => {
    const source = new FakeSource(url);
    sources.push(source);
    return source;
  });
  return { sources, waiting, log, stop };
}

describe('live stream', () => {
  it('passes on every event with its id', () => {
    const { sources, log } = stage();
    sources[0]!.onopen?.();
    sources[0]!.tell('step.counted', '7');
    expect(log).toEqual(['opened', 'step.counted 7']);
  });

  it('leaves it to the browser to try again as long as the browser does', () => {
    const { sources, waiting, log } = stage();
    sources[0]!.fail(0);
    expect([log, waiting.length, sources[0]!.closed]).toEqual([['cut'], 0, false]);
  });

  it('opens anew behind the last id once the browser has given up', () => {
    const { sources, waiting } = stage();
    sources[0]!.tell('step.counted', '41');
    sources[0]!.fail(2);
    waiting.shift()!();
    expect(sources.map(({ url }) => url)).toEqual(['/api/v1/events', '/api/v1/events?after=41']);
    expect(sources[0]!.closed).toBe(true);
  });

  it('stays closed after it was stopped', () => {
    const { sources, waiting, stop } = stage();
    sources[0]!.fail(2);
    stop();
    expect(waiting).toEqual([]);
    expect(sources[0]!.closed).toBe(true);
  });

  it('takes an event that cannot be read for news of nothing in particular', () => {
    expect(newsOf('{', '3', 'step.counted')).toEqual({
      id: '3',
      type: 'step.counted',
      ticket: null,
      device: null,
    });
  });
});
