import type { Store } from '#libs/flow';
import { type Clock, type ClockSetting, type Instant, plantClock, wallClock } from '#libs/kernel';

const FACT = 'clock';
const SEEN = 'clock.seen';
/** A server that is back within so many real milliseconds goes on in the same plant time: the devices never stopped. */
const SAME_RUN_MS = 60_000;
const NOTE_EVERY_REAL_MS = 2_000;

/** Real UTC. */
export const realSetting: ClockSetting = { plantStart: 0, realStart: 0, factor: 1 };

interface Seen {
  readonly plant: Instant;
  readonly real: number;
}

/**
 * The plant clock of the demo: begins at opening time of a working day, goes on where the last run stopped, and never
 * goes back. A short absence (a crash and a restart) counts as no interruption.
 */
export async function openPlantClock(
  store: Pick<Store, 'fact' | 'setFact'>,
  factor: number,
  opening: Instant,
): Promise<ClockSetting> {
  const now = wallClock.now();
  const before = (await store.fact(FACT)) as ClockSetting | null | undefined;
  const seen = (await store.fact(SEEN)) as Seen | null | undefined;
  if (before != null && seen != null && before.factor === factor && now - seen.real < SAME_RUN_MS)
    return before;
  const plantStart = seen == null ? opening : seen.plant;
  const setting: ClockSetting = { plantStart, realStart: now, factor };
  await store.setFact(FACT, setting);
  return setting;
}

/** Notes from time to time how far plant time has come; returns the way to stop, which notes it once more. */
export function notePlantTime(store: Pick<Store, 'setFact'>, clock: Clock): () => Promise<void> {
  let cancel = (): void => undefined;
  const note = (): Promise<void> => {
    const seen: Seen = { plant: clock.now(), real: wallClock.now() };
    return store.setFact(SEEN, seen).catch(() => undefined);
  };
  const turn = (): void => {
    cancel = wallClock.setTimeout(() => void note().then(turn), NOTE_EVERY_REAL_MS);
  };
  void note();
  turn();
  return async () => {
    cancel();
    await note();
  };
}

/** A clock after a setting. */
export function clockOf(setting: ClockSetting): Clock {
  return plantClock(setting);
}
