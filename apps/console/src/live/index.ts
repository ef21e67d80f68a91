import { computed, signal } from '@preact/signals';
import { ask } from '../server/ask.js';
import { keepStream } from '../server/stream.js';
import { browserClock } from '../time/browser-clock.js';
import { plantMsAt } from '../time/plant-time.js';
import { openPlantLive, type PlantLive } from './plant-live.js';

const TICK_MS = 1000;

/** The browser clock, read once a second: every age and the now edge follow it. */
const wallMs = signal(browserClock.now());

function tick(): void {
  browserClock.setTimeout(() => {
    wallMs.value = browserClock.now();
    tick();
  }, TICK_MS);
}

const open = signal<PlantLive | null>(null);

/** Opens the plant for the screens; again after a sign-in, since a refused stream does not come back by itself. */
export function openPlant(): void {
  open.value?.stop();
  open.value = openPlantLive({ ask, clock: browserClock, stream: (ears) => keepStream(ears, browserClock) });
}

export function startTicking(): void {
  tick();
}

/** The plant as it is known now. */
export function plant(): PlantLive {
  if (open.value === null) openPlant();
  return open.value!;
}

/** Plant time in milliseconds, or null before the server told it. */
export const plantNow = computed<number | null>(() => {
  const fix = open.value?.clockFix.value ?? null;
  return fix === null ? null : plantMsAt(fix, Math.max(wallMs.value, fix.heardMs));
});

/** Real seconds since the server's last word. */
export const pictureAgeS = computed(() =>
  open.value === null ? 0 : Math.max(0, (wallMs.value - open.value.lastWordMs.value) / 1000),
);
