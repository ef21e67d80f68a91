import type { WallClock } from '#libs/kernel';
import { keepUp } from './keep-up.js';

/** Time that passes when told: the next task, if one waits, and whatever follows from it at once. */
function steppedWall(): WallClock & { step(): Promise<boolean> } {
  let next: (() => void) | null = null;
  return {
    now: () => 0,
    setTimeout(task) {
      next = task;
      return () => {
        next = null;
      };
    },
    async step() {
      const task = next;
      next = null;
      task?.();
      for (let turn = 0; turn < 5; turn++) await Promise.resolve();
      return task !== null;
    },
  };
}

describe('a server that is kept running', () => {
  const watched = () => {
    const state = { isOurs: true, isUp: true, starts: 0, said: [] as string[], fails: false };
    return {
      state,
      watched: {
        isOurs: () => state.isOurs,
        isUp: () => state.isUp,
        async startAgain() {
          state.starts++;
          if (state.fails) throw new Error('no room');
          state.isUp = true;
        },
        log: (text: string) => void state.said.push(text),
      },
    };
  };

  it('is started again when it is gone, as often as it goes', async () => {
    const wall = steppedWall();
    const { state, watched: server } = watched();
    keepUp(server, wall);
    await wall.step();
    expect(state.starts).toBe(0);
    for (let time = 1; time <= 2; time++) {
      state.isUp = false;
      await wall.step();
      expect(state.starts).toBe(time);
    }
  });

  it('is tried again after a start that failed, and the reason is told', async () => {
    const wall = steppedWall();
    const { state, watched: server } = watched();
    keepUp(server, wall);
    Object.assign(state, { isUp: false, fails: true });
    await wall.step();
    await wall.step();
    expect(state.starts).toBe(2);
    expect(state.said.join()).toContain('no room');
  });

  it('is left alone once it is no longer ours, or the watch has ended', async () => {
    const wall = steppedWall();
    const { state, watched: server } = watched();
    const watch = keepUp(server, wall);
    state.isUp = false;
    await watch.end();
    expect(await wall.step()).toBe(false);
    keepUp(server, wall);
    state.isOurs = false;
    await wall.step();
    expect(await wall.step()).toBe(false);
    expect(state.starts).toBe(0);
  });
});
