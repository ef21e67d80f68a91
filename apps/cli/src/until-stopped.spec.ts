import { untilStopped } from './until-stopped.js';

const signals = ['SIGINT', 'SIGTERM'] as const;
const listeners = (): number => signals.reduce((sum, signal) => sum + process.listenerCount(signal), 0);

describe('what runs until it is stopped', () => {
  it.each(signals)('is stopped once by %s, and leaves no listener behind', async (signal) => {
    const before = listeners();
    const story: string[] = [];
    await untilStopped(
      async () => ({
        stop: async () => {
          story.push('stopped');
        },
      }),
      () => {
        story.push('ready');
        process.emit(signal);
      },
    );
    expect(story).toEqual(['ready', 'stopped']);
    expect(listeners()).toBe(before);
  });

  it('is stopped as soon as it has started when it was asked to while it started', async () => {
    const story: string[] = [];
    await untilStopped(
      async () => {
        process.emit('SIGTERM');
        story.push('started');
        return {
          stop: async () => {
            story.push('stopped');
          },
        };
      },
      () => story.push('ready'),
    );
    expect(story).toEqual(['started', 'stopped']);
  });

  it('leaves no listener behind when it cannot start', async () => {
    const before = listeners();
    const broken = untilStopped(
      () => Promise.reject(new Error('no database')),
      () => undefined,
    );
    await expect(broken).rejects.toThrow('no database');
    expect(listeners()).toBe(before);
  });
});
