import { type ClockSetting, plantClock, type WallClock } from '#libs/kernel';
import { HubClock } from './hub-clock.js';

/** A wall clock that is moved by hand. */
class Wall implements WallClock {
  time = 0;
  #timers = new Set<{ at: number; task: () => void }>();
  now = (): number => this.time;
  setTimeout = (task: () => void, ms: number): (() => void) => {
    const timer = { at: this.time + ms, task };
    this.#timers.add(timer);
    return () => this.#timers.delete(timer);
  };
  move(ms: number): void {
    this.time += ms;
    for (const timer of [...this.#timers]) {
      if (timer.at > this.time) continue;
      this.#timers.delete(timer);
      timer.task();
    }
  }
}

describe('the clock of the hub', () => {
  const setting: ClockSetting = { plantStart: 1_000_000, realStart: 0, factor: 60 };

  it('keeps appointments as far ahead in plant time as they were when it is set anew', () => {
    const wall = new Wall();
    const clock = new HubClock(setting, (to) => plantClock(to, wall));
    const rung: number[] = [];
    clock.after(120, () => {
      rung.push(wall.time);
    });
    wall.move(1000);
    expect(clock.now()).toBe(1_060_000);
    // 60 plant seconds are left: at the factor 30 that is two seconds more.
    expect(clock.set({ plantStart: 9_000_000, realStart: 1000, factor: 30 })).toBe(9_000_000 - 1_060_000);
    wall.move(1999);
    expect(rung).toEqual([]);
    wall.move(1);
    expect(rung).toEqual([3000]);
  });

  it('does not move when the same setting is read again', () => {
    const wall = new Wall();
    const clock = new HubClock(setting, (to) => plantClock(to, wall));
    wall.move(500);
    expect(clock.set({ ...setting })).toBe(0);
    expect(clock.now()).toBe(1_030_000);
  });

  it('calls off an appointment, also after it was set anew', () => {
    const wall = new Wall();
    const clock = new HubClock(setting, (to) => plantClock(to, wall));
    let rung = 0;
    const cancel = clock.after(60, () => {
      rung += 1;
    });
    clock.set({ plantStart: 0, realStart: 0, factor: 1 });
    cancel();
    wall.move(100_000);
    expect(rung).toBe(0);
  });
});
