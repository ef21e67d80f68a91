import type { EnginePorts, Store, TokenStore } from '#libs/flow';
import type { Clock, ClockSetting } from '#libs/kernel';
import type { DocumentDoor } from './intake/fetch-document.js';
import type { Metrics } from './metrics.js';
import type { Settings } from './settings.js';

/** Everything the controllers are given, opened once at start and closed in reverse order. */
export interface Runtime {
  readonly settings: Settings;
  readonly version: string;
  readonly ports: EnginePorts;
  readonly store: Store & { readonly tokens: TokenStore };
  readonly clock: Clock;
  readonly clockSetting: ClockSetting;
  readonly documents: DocumentDoor;
  readonly metrics: Metrics;
  /** Why the server is not ready, in words; empty when it is. */
  readiness(): Promise<readonly string[]>;
}

/** Nest's name for it. */
export const RUNTIME = Symbol('runtime');
