import { board } from './board/board.screen.js';
import { job } from './job/job.screen.js';
import { newJob } from './new-job/new-job.screen.js';
import type { Screen } from './screen.js';

/** All screens, in the order of the navigation. The first one answers an address that nobody knows. */
export const screens: readonly Screen[] = [board, job, newJob];

export interface Shown {
  readonly screen: Screen;
  readonly params: Readonly<Record<string, string>>;
}

export function screenAt(path: string): Shown {
  for (const screen of screens) {
    const params = screen.match(path);
    if (params !== null) return { screen, params };
  }
  return { screen: screens[0]!, params: {} };
}
