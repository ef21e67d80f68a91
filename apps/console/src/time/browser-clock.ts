import type { WallClock } from '#libs/kernel';

/**
 * The browser's time source behind the kernel's port: the console takes only types from the kernel, so the port is
 * filled here and nowhere else. It never jumps, for only differences are taken from it; what time it is in the plant is
 * told by the server.
 */
export const browserClock: WallClock = {
  now: () => performance.now(),
  setTimeout: (task, ms) => {
    const timer = setTimeout(task, ms);
    return () => clearTimeout(timer);
  },
};
