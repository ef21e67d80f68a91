import { type WallClock, wallClock } from '#libs/kernel';

const LOOK_MS = 500;

export interface Watched {
  /** Whether it is still ours to keep running. */
  isOurs(): boolean;
  isUp(): boolean;
  startAgain(): Promise<unknown>;
  log(text: string): void;
}

/** Looks after a server: one that is gone unasked is started again, as often as need be. */
export function keepUp(watched: Watched, wall: WallClock = wallClock): { end(): Promise<void> } {
  let isOver = false;
  let starting: Promise<void> = Promise.resolve();
  let cancel = (): void => undefined;
  const look = (): void => {
    if (isOver || !watched.isOurs()) return;
    if (watched.isUp()) later();
    else starting = again();
  };
  const later = (): void => {
    cancel = wall.setTimeout(look, LOOK_MS);
  };
  const again = async (): Promise<void> => {
    watched.log('PostgreSQL ended unasked; starting it again');
    try {
      await watched.startAgain();
    } catch (cause) {
      watched.log(`PostgreSQL could not be started again: ${String(cause)}`);
    }
    if (!isOver) later();
  };
  later();
  return {
    async end() {
      isOver = true;
      cancel();
      await starting;
    },
  };
}
