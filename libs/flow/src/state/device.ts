import type { Instant } from '#libs/kernel';
import type { Source } from './ticket.js';

export type DeviceKind =
  | 'prepress'
  | 'platesetter'
  | 'press'
  | 'guillotine'
  | 'folder'
  | 'stitcher'
  | 'binder'
  | 'bench';

/** DeviceStatus of the standard. */
export type DeviceStatus = 'Unknown' | 'Idle' | 'Down' | 'Setup' | 'Running' | 'Cleanup' | 'Stopped';

export interface Device {
  readonly id: string;
  readonly kind: DeviceKind;
  readonly name: string;
  /** How it is spoken to: jmf, hotFolder, bench. */
  readonly driver: string;
  readonly url: string | null;
  readonly status: DeviceStatus;
  readonly statusDetails: string | null;
  /** JobID of what it works on, for people and other systems. */
  readonly job: string | null;
  readonly ticketId: string | null;
  readonly stepId: string | null;
  /** Pieces an hour, as the device says. */
  readonly speed: number | null;
  /** Since when it has this status. */
  readonly since: Instant;
  readonly source: Source;
  /** When it was last heard of; null before the first time. */
  readonly lastSeen: Instant | null;
  /** Set when it did not answer; the reason in words. */
  readonly silentBecause: string | null;
}
