import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type Glances, lookOnce } from './look-once.js';
import type { HotFolderSettings } from './settings.js';

export interface HotFolderWatch {
  /** Looks now, without waiting for the next turn. */
  look(): Promise<void>;
  /** No more looks; resolves when the one that is running is over. */
  stop(): Promise<void>;
}

/**
 * Watches a hot folder (JDF specification: a ticket put into the input folder is an implicit submission). A finished file
 * goes to `onFile`, then to accepted/ or, with NAME.reasons.json beside it, to rejected/. Hidden files, folders and names
 * that end in .tmp or .part are left alone; links, pipes and devices are rejected unread. No file is ever deleted.
 */
export async function watchHotFolder(settings: HotFolderSettings): Promise<HotFolderWatch> {
  const { folder, clock } = settings;
  for (const place of ['accepted', 'rejected']) await mkdir(join(folder, place), { recursive: true });
  const glances: Glances = new Map();
  const everyS = (settings.everyS ?? 1) * (Number.isFinite(clock.factor) ? clock.factor : 1);
  let stopped = false;
  let cancel = (): void => undefined;
  let running: Promise<void> = Promise.resolve();

  // Looks never overlap: each waits for the one before.
  const look = (): Promise<void> => {
    running = running.then(() => (stopped ? undefined : lookOnce(settings, glances)));
    return running;
  };
  const turn = async (): Promise<void> => {
    await look();
    if (!stopped) cancel = clock.after(everyS, turn);
  };
  cancel = clock.after(everyS, turn);
  return {
    look,
    async stop() {
      stopped = true;
      cancel();
      await running;
    },
  };
}
