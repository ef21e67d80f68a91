import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { type ClockSetting, Fault, type Instant } from '#libs/kernel';
import type { DeviceState } from '../device/state.js';

/** What a device finds when it is switched on again. */
export interface KeptState {
  readonly device: DeviceState;
  /** The plant clock by which the times in it count, and what it showed last. */
  readonly clock: ClockSetting;
  readonly at: Instant;
  /** How many times it was switched on. */
  readonly starts: number;
}

/** Null when there is none. A file that is there and makes no sense is a Fault: better no machine than a wrong one. */
export function readState(file: string): KeptState | null {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw new Fault('BROKEN', `The state of a device cannot be read from ${file}.`, { cause });
  }
  try {
    const kept = JSON.parse(text) as KeptState;
    if (kept.device.version === 1) return kept;
  } catch (cause) {
    throw new Fault('BROKEN', `${file} does not hold the state of a device.`, { cause });
  }
  throw new Fault('BROKEN', `${file} is of another version; remove it to start afresh.`);
}

/** Written beside and renamed, so that whoever is killed in between leaves the old state or the new one. */
export function writeState(file: string, kept: KeptState): void {
  mkdirSync(dirname(file), { recursive: true });
  const fresh = `${file}.new`;
  writeFileSync(fresh, JSON.stringify(kept), { mode: 0o600 });
  renameSync(fresh, file);
}
