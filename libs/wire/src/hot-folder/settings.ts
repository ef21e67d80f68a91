import type { Clock, Problem } from '#libs/kernel';
import type { DroppedFile } from './read-dropped.js';

export type HotFolderFile = DroppedFile;

export type HotFolderAnswer = { readonly accepted: string } | { readonly rejected: readonly Problem[] };

export interface HotFolderSettings {
  readonly folder: string;
  readonly clock: Clock;
  /** Real seconds between two looks: people and machines write in real time, whatever the plant clock does. */
  readonly everyS?: number;
  /** Looks in a row that must find a file unchanged (2). */
  readonly stableChecks?: number;
  /** Largest file that is read, in bytes. */
  readonly maxBytes: number;
  /**
   * Decides on one file. Must answer alike for a `key` it has answered before: after a crash between answer and move
   * the same file comes again. If it throws, the file stays where it is and comes again at the next look.
   */
  readonly onFile: (file: HotFolderFile) => Promise<HotFolderAnswer>;
  /** What stands in the way of a file (for the log); the file stays and is tried again. */
  readonly onTrouble: (name: string, cause: unknown) => void;
}
